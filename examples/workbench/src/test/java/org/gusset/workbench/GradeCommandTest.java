package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GradeCommandTest {
    /** A chart of six sizes, in which the girths' steps change at 44. */
    static final String CHART = Path.of(System.getProperty("gusset.root", "../.."))
            .resolve("examples/workbench/src/test/resources/org/gusset/workbench/grade-chart.csv")
            .toString();

    @TempDir
    Path folder;

    private CommandRun grade(String chart, String... more) {
        List<String> args =
                new ArrayList<>(List.of("grade", Fitted.draftFile("skirt-block.gusset"), "--sizes", chart, "--out"));
        args.add(folder.resolve("out").toString());
        args.addAll(List.of(more));
        return CommandRun.standard(args.toArray(new String[0]));
    }

    private String written(String name) throws IOException {
        return Files.readString(folder.resolve("out").resolve(name));
    }

    private String chart(String rows) {
        return CommandRun.file(folder, "chart.csv", rows);
    }

    @Test
    void everySizeIsCheckedAndTheRulesTheDrawingAndTheNestAreWritten() throws IOException {
        CommandRun run = grade(CHART);
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(CommandRun.filesBelow(folder.resolve("out")))
                .containsExactly("skirt-block-grade-rules.csv", "skirt-block-grade.svg", "skirt-block-nest.svg");
        assertThat(run.out())
                .contains("Straight skirt block, 6 sizes: 36, 38, 40, 42, 44, 46")
                .containsPattern("waist +36 +69.19 cm +69 cm +0.19 cm\\n +38 +73.18 cm +73 cm +0.18 cm +-0.01 cm")
                .containsPattern(
                        "hip_round over hip +36 +95 cm +92 cm +3 cm +2 cm to 6 cm\\n +38 +99 cm +96 cm +3 cm +0 cm")
                .contains(
                        "Grade rules of 12 corners: 6 alike from size to size, 5 with breaks of the chart, 1 with bends")
                .contains(
                        "Back, hem_side breaks with the chart at 44: right 1 cm from 38 on; right 1.25 cm from 44 on");
        assertThat(written("skirt-block-grade-rules.csv"))
                .startsWith("piece,corner,size,right_mm,down_mm\n")
                .contains("Back,hem_side,36,0,0\nBack,hem_side,38,10,0\n")
                .contains("Back,hem_side,44,12.5,0\n");
        assertThat(written("skirt-block-grade.svg")).contains("breaks at 44", "class=\"grade-breaks\"");
        assertThat(written("skirt-block-nest.svg")).contains("size 36", "size 46");
    }

    @Test
    void sizesCanBeNamedAndLengthsShownInAnotherUnit() throws IOException {
        CommandRun run = grade(CHART, "--size", "38", "--size", "40", "--unit", "mm", "--stitching-line");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("2 sizes: 38, 40").contains("990 mm");
        assertThat(written("skirt-block-nest.svg")).contains("Drawn is the stitching line");
        assertThat(written("skirt-block-grade.svg")).contains("right 10 mm").doesNotContain("breaks");
        assertThat(grade(CHART, "--size", "39").err()).contains("There is no body `39`");
    }

    @Test
    void whatIsDoubtfulInTheChartIsToldAndGradedAllTheSame() {
        CommandRun run = grade(chart("measure, 36, 38, 40\nwaist, 68 cm, 76 cm, 72 cm\nhip, 92 cm, 96 cm, 100 cm\n"));
        assertThat(run.err())
                .contains(
                        "chart.csv, row 2, column 4: warning GRD001: The waist falls from 76 cm in 38 to 72 cm in 40.");
        assertThat(run.out()).contains("3 sizes: 36, 38, 40");
        assertThat(grade(chart("measure, 36, 38\nwaist, 68 cm, 72 cm\nhip, 92 cm, 96 cm\nspan, 9 cm,\n"))
                        .err())
                .doesNotContain("GRD007");
    }

    @Test
    void moreSizesThanLinesMakeSeveralNestsThatShareASize() throws IOException {
        StringBuilder rows = new StringBuilder("name, waist [cm], hip [cm]\n");
        for (int i = 0; i < 14; i++) {
            rows.append(30 + i)
                    .append(", ")
                    .append(60 + 2 * i)
                    .append(", ")
                    .append(86 + 2 * i)
                    .append('\n');
        }
        CommandRun run = grade(chart(rows.toString()));
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(CommandRun.filesBelow(folder.resolve("out")))
                .contains("skirt-block-nest-1.svg", "skirt-block-nest-2.svg")
                .doesNotContain("skirt-block-nest.svg");
        assertThat(written("skirt-block-nest-1.svg"))
                .contains("size 30<", "size 36<")
                .doesNotContain("size 37<");
        assertThat(written("skirt-block-nest-2.svg")).contains("size 36<", "size 43<");
        assertThat(run.err()).contains("GRD104").contains("no hip_depth for size 30");
    }

    @Test
    void sizesAreDealtOutEvenly() {
        for (int n = 1; n < 60; n++) {
            List<Integer> sizes = IntStream.range(0, n).boxed().toList();
            List<List<Integer>> sheets = NestSheets.of(sizes);
            List<Integer> joined = new ArrayList<>(sheets.get(0));
            for (List<Integer> sheet : sheets) {
                assertThat(sheet).hasSizeLessThanOrEqualTo(12);
                assertThat(sheet.get(0)).isIn(joined);
                sheet.stream().filter(s -> !joined.contains(s)).forEach(joined::add);
            }
            assertThat(joined).isEqualTo(sizes);
        }
    }

    @Test
    void aSizeThatCannotBeDrawnIsToldAndTheOthersAreGraded() throws IOException {
        CommandRun run = grade(
                chart("measure, 36, 38, 40, 42\nwaist, 68 cm, 7.2 cm, 76 cm, 80 cm\nhip, 92 cm, 96 cm, 100 cm, 104 cm\n"
                        + "hip_depth, 20 cm, 20 cm, 20 cm, 20 cm\n"));
        assertThat(run.code()).isEqualTo(ExitCodes.FAULTS);
        assertThat(run.err()).contains("38:").contains("MEA111").contains("Not in the nest: 38; --anyway");
        assertThat(written("skirt-block-nest.svg"))
                .contains("size 36", "size 42")
                .doesNotContain("size 38");
        assertThat(written("skirt-block-grade-rules.csv")).contains("Back,hem_side,42,10,0");
        assertThat(written("skirt-block-grade.svg")).contains("NOT PROVED: size 38");
    }

    @Test
    void aSizeWhoseCellCannotBeReadIsNotGradedAndTold() throws IOException {
        CommandRun run = grade(chart("measure, 36, 38, 40\nwaist, 68 cm, soft, 76 cm\nhip, 92 cm, 96 cm, 100 cm\n"
                + "hip_depth, 20 cm, 20 cm, 20 cm\n"));
        assertThat(run.code()).isEqualTo(ExitCodes.FAULTS);
        assertThat(run.err()).contains("Not graded: 38. The size after it is counted from the one before it.");
        assertThat(written("skirt-block-grade-rules.csv"))
                .contains("Back,hem_side,40,20,0")
                .doesNotContain(",38,");
    }

    @Test
    void aSeamThatDriftsApartIsToldWithTheFirstSizeThatFails() {
        String draft = CommandRun.file(folder, "drifts.gusset", """
                draft "Drifts"
                measure chest from 60 cm to 140 cm
                piece Back {
                  point a = origin
                  point b = a right 20 cm
                  point c = b down chest / 4 + 18 cm
                  line top = a to b
                  line side = b to c
                  line hem = c to (a down chest / 4 + 18 cm)
                  line centre = hem.end to a
                  outline top, side, hem, centre
                  allow 1 cm
                  cut 2
                  grain along centre
                }
                piece Front traced from Back { change point c = b down chest / 5 + 22.4 cm
                  change line hem = c to (a down chest / 5 + 22.4 cm)
                }
                seam sides = Front.side to Back.side within 3 mm
                """);
        CommandRun run = CommandRun.standard(
                "grade",
                draft,
                "--sizes",
                chart("measure, 84, 88, 92, 96, 102\nchest, 84 cm, 88 cm, 92 cm, 96 cm, 102 cm\n"),
                "--out",
                folder.resolve("out").toString());
        assertThat(run.code()).isEqualTo(ExitCodes.FAULTS);
        assertThat(run.err()).contains("error GRD101: The seam `sides` does not match in 2 of 5 sizes, in 96 first");
        assertThat(run.out())
                .containsPattern("96 +41.6 cm +42 cm +-0.4 cm +-0.2 cm +FAILED, the first size that does\\n")
                .containsPattern("102 +42.8 cm +43.5 cm +-0.7 cm +-0.3 cm +FAILED\\n");
        assertThat(run.err()).contains("Not in the nest: 96, 102");
    }

    @Test
    void nothingIsWrittenWhereNoSizeCanBeDrawn() {
        CommandRun run = grade(chart("measure, 36, 38\nhip, 92 cm, 96 cm\n"));
        assertThat(run.code()).isEqualTo(ExitCodes.FAULTS);
        assertThat(run.err()).contains("MEA101").contains("Nothing was graded: no size could be drawn.");
        assertThat(folder.resolve("out")).doesNotExist();
        assertThat(CommandRun.standard("grade", Fitted.draftFile("skirt-block.gusset"), "--out", "x")
                        .code())
                .isEqualTo(ExitCodes.WRONG_USE);
    }
}
