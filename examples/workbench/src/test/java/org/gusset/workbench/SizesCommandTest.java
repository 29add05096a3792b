package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.gusset.core.measure.FilledIn;
import org.gusset.core.measure.FillingIn;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.SizeChart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command on small charts and on the stock sizes of the Quillhaven wardrobe. */
class SizesCommandTest {
    private static final String STOCK =
            Fitted.EXAMPLES.resolve("measures/quillhaven-sizes.csv").toString();

    @TempDir
    Path folder;

    private String file(String name, String text) {
        return CommandRun.file(folder, name, text);
    }

    private String chart() {
        return file("stock.csv", """
                measure,     Wren,  Finch, Thrush
                chest,       84 cm, 88 cm, 92 cm
                waist,       66 cm, 70 cm, 75 cm
                hip,         91 cm, 95 cm, 99 cm
                back_length, 40 cm, 41 cm, 41 cm
                """);
    }

    @Test
    void theStepsAreTold() {
        CommandRun run = CommandRun.standard("sizes", "--sizes", chart());
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("3 sizes, 4 measures")
                .containsPattern("waist +66 cm +\\+4 cm +\\+5 cm")
                .containsPattern("back_length +40 cm +\\+1 cm +same")
                .endsWith("no errors, no warnings\n");
        assertThat(CommandRun.standard("sizes", "--sizes", chart(), "--unit", "in")
                        .out())
                .containsPattern("chest +33 1/16 in +\\+1 9/16 in");
    }

    @Test
    void whatIsDoubtfulIsToldWhereItStandsAndEndsWell() {
        String doubtful = file("doubtful.csv", "measure,A,B,C\nchest,84 cm,92 cm,88 cm\nneck,35 cm,,37 cm\n");
        CommandRun run = CommandRun.standard("sizes", "--sizes", doubtful);
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("row 2, column 4: warning GRD001: The chest falls from 92 cm in B to 88 cm in C.")
                .contains("warning GRD007: Not in B, though other sizes have it: neck.")
                .containsPattern("neck +35 cm +- +\\+2 cm")
                .endsWith("no errors, 2 warnings\n");
    }

    @Test
    void aCellThatIsNoAmountIsAnErrorAndTheRestIsTold() {
        String faulty = file("faulty.csv", "measure,A,B\nchest,84 cm,8x cm\nwaist,66 cm,70 cm\n");
        CommandRun run = CommandRun.standard("sizes", "--sizes", faulty);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).containsPattern("waist +66 cm +\\+4 cm").contains("1 error");
        CommandRun spoilt =
                CommandRun.standard("sizes", "--sizes", file("spoilt.csv", "measure,A,A\nchest,84 cm,88 cm\n"));
        assertThat(spoilt.code()).isEqualTo(1);
        assertThat(spoilt.out()).contains("The chart has to be mended first.");
    }

    @Test
    void theSizeOfABodyIsToldMeasureByMeasure() {
        String cast = file("cast.csv", "measure,Tansy,Hob\nchest,89 cm,\nwaist,70.5 cm,\nhip,99 cm,\nwrist,,18 cm\n");
        CommandRun run = CommandRun.standard("sizes", "--sizes", chart(), "--measures", cast);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out())
                .contains("Tansy: Thrush, and next to it Finch; by chest, waist, hip")
                .containsPattern("chest \\* +89 cm +92 cm +take in 3 cm +88 cm +let out 1 cm")
                .containsPattern("hip \\* +99 cm +99 cm +fits +95 cm +too small by 4 cm")
                .contains(
                        "note GRD022: The measures of Tansy are those of different sizes: chest, waist Finch; hip Thrush.")
                .contains("error GRD013: Hob and ")
                .doesNotContain("its step from the size before");
    }

    @Test
    void aDraftTellsWhichMeasuresMatter() {
        CommandRun skirt = CommandRun.standard(
                "sizes",
                Fitted.draftFile("skirt-block.gusset"),
                "--sizes",
                STOCK,
                "--measures",
                Fitted.castFile() + "#Maren Oddway");
        assertThat(skirt.code()).isZero();
        assertThat(skirt.out()).contains("Maren Oddway: Jay, and next to it Rook; by waist, hip\n");
        CommandRun bodice = CommandRun.standard(
                "sizes",
                Fitted.draftFile("fitted-bodice.gusset"),
                "--sizes",
                STOCK,
                "--measures",
                Fitted.castFile() + "#Maren Oddway");
        assertThat(bodice.out()).contains("; by chest, waist\n");
        String top = file("top.csv", "measure,Tansy\nchest,89 cm\nwaist,70 cm\nhip,104 cm\n");
        assertThat(CommandRun.standard("sizes", "--sizes", STOCK, "--measures", top, "--key", "chest")
                        .out())
                .contains("Tansy: Finch, and next to it Thrush; by chest\n");
    }

    /** A robe of a bodice and a skirt, each with a girth of its own. */
    @Test
    void piecesThatRestOnDifferentMeasuresHaveSizesOfTheirOwn() {
        String piece = """
                piece %s {
                  point a = origin
                  point b = a right %s / 4
                  point c = b down 40 cm
                  point d = a down 40 cm
                  line top = a to b
                  line side = b to c
                  line low = c to d
                  line centre = d to a
                  outline top, side, low, centre
                  allow 1 cm
                  cut 1 from shell
                  grain along centre
                }
                """;
        String robe = file(
                "robe.gusset",
                "draft \"Robe\"\nmeasure bust also chest from 60 cm to 170 cm \"round the bust\"\n"
                        + "measure hip from 60 cm to 180 cm \"round the hip\"\ncloth shell wide 140 cm\n"
                        + piece.formatted("Bodice", "bust") + piece.formatted("Skirt", "hip"));
        String cast = file("cast.csv", "measure,Tansy\nbust,88 cm\nhip,99 cm\n");
        CommandRun run = CommandRun.standard("sizes", robe, "--sizes", chart(), "--measures", cast);
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("Tansy: Thrush")
                // The draft knows the bust as the chart's chest.
                .containsPattern("chest \\* +88 cm +92 cm")
                .contains("By its own measures alone: Bodice in Finch.")
                .contains("By its own measures alone: Skirt in Thrush.");
    }

    @Test
    void aDraftWithErrorsChoosesNothing() {
        String broken = file("broken.gusset", "draft \"Broken\"\nlet a = b\n");
        CommandRun run = CommandRun.standard("sizes", broken, "--sizes", STOCK, "--measures", Fitted.castFile());
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("the draft has to be mended first");
    }

    @Test
    void measuresBetweenSizesAreATableThatDrawReads() throws Exception {
        String cast = file("cast.csv", "measure,\"Tansy, the elder\",#Hob\nchest,90 cm,109 cm\nhip,100 cm,112 cm\n");
        CommandRun run = CommandRun.standard(
                "sizes", "--sizes", STOCK, "--measures", cast, "--between", "--lead", "hip_depth=hip");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("# Tansy, the elder, between Finch and Thrush, by the chest: waist, neck,")
                .contains("# Tansy, the elder, between Thrush and Jay, by the hip: hip_depth\n")
                .contains("chest,900 mm,1090 mm\n");
        Path table = folder.resolve("whole.csv");
        Files.writeString(table, run.out());
        MeasureTable read = MeasureTable.read("whole.csv", Files.readAllBytes(table));
        assertThat(read.diagnostics()).isEmpty();
        assertThat(read.names()).containsExactly("Tansy, the elder", "#Hob");
        for (String draft : List.of("fitted-bodice", "smock", "trouser-block", "shirt", "skirt-block")) {
            CommandRun check =
                    CommandRun.standard("check", Fitted.draftFile(draft + ".gusset"), "--measures", table.toString());
            assertThat(check.out())
                    .contains("tried on 2 bodies: no errors, no warnings")
                    .doesNotContain("FAILED");
        }
        CommandRun drawn = CommandRun.standard(
                "draw",
                Fitted.draftFile("skirt-block.gusset"),
                "--measures",
                table + "#Tansy, the elder",
                "--out",
                folder.resolve("paper").toString());
        assertThat(drawn.code()).isZero();
        assertThat(CommandRun.filesBelow(folder.resolve("paper"))).anyMatch(f -> f.endsWith("sheet.svg"));
    }

    @Test
    void everyFigureOfTheTableComesBackToTheBit() {
        Measurements odd = Measurements.of("Tansy")
                .with("chest", Quantity.length(901.0000000001))
                .with("slope", Quantity.angle(1 / 3.0))
                .with("tiny", Quantity.length(1e-7))
                .with("thirteenth", Quantity.length(1000 / 13.0));
        SizeChart chart = new SizeChart(
                "two",
                List.of(
                        Measurements.of("A").with("chest", Quantity.length(880)).with("waist", Quantity.length(700)),
                        Measurements.of("B")
                                .with("chest", Quantity.length(933.3))
                                .with("waist", Quantity.length(741.7))));
        FilledIn filled = FillingIn.from(chart).fill(odd).value().orElseThrow();
        MeasureTable read = MeasureTable.read("again", FilledTable.of(chart, List.of(filled)));
        Measurements again = read.body("Tansy").orElseThrow().orThrow();
        assertThat(again.entries()).hasSize(5);
        filled.measurements()
                .entries()
                .forEach((name, entry) -> assertThat(
                                again.entry(name).orElseThrow().quantity())
                        .as(name)
                        .isEqualTo(entry.quantity()));
    }

    @Test
    void aBodyBeyondTheChartIsRefusedAndTheOthersAreWritten() {
        String cast = file("cast.csv", "measure,Tansy,Hob\nchest,90 cm,130 cm\n");
        CommandRun run = CommandRun.standard("sizes", "--sizes", STOCK, "--measures", cast, "--between");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("measure,Tansy\n").doesNotContain("Hob");
        assertThat(run.err())
                .contains("error GRD014: The chest of Hob, 130 cm, lies beyond")
                .contains("its sizes run from 84 cm in Wren to 110 cm in Heron.");
        CommandRun carried =
                CommandRun.standard("sizes", "--sizes", STOCK, "--measures", cast, "--between", "--carry-on");
        assertThat(carried.code()).isZero();
        assertThat(carried.out())
                .contains("# Hob, beyond Heron, by the chest: ")
                .contains("measure,Tansy,Hob\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--between",
                "--key chest",
                "smock.gusset",
                "--measures cast.csv --carry-on",
                "--measures cast.csv --lead chest",
                "--measures cast.csv --between --key chest",
                "--measures nobody.csv"
            })
    void whatDoesNotGoTogetherIsWrongUse(String options) {
        file("cast.csv", "measure,Tansy\nchest,90 cm\n");
        String all = "sizes --sizes " + STOCK + " "
                + options.replace("cast.csv", folder.resolve("cast.csv").toString());
        CommandRun run = CommandRun.standard(all.split(" ", -1));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).startsWith("gusset: ");
        assertThat(run.out()).isEmpty();
    }

    /** All sizes of the stock on the drafts that the wardrobe cuts to stock. */
    @ParameterizedTest
    @ValueSource(strings = {"skirt-block", "fitted-bodice", "trouser-block", "smock", "shirt"})
    void everySizeOfTheStockIsSound(String draft) {
        CommandRun run = CommandRun.standard("check", Fitted.draftFile(draft + ".gusset"), "--measures", STOCK);
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("tried on 6 bodies: no errors, no warnings")
                .doesNotContain("FAILED")
                .doesNotContain("estimated");
        assertThat(ChartFile.read(STOCK).diagnostics()).isEmpty();
    }
}
