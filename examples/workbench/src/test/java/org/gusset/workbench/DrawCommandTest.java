package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawCommandTest {
    @TempDir
    Path folder;

    private Path out;
    private String draft = "";
    private String cast = "";

    @BeforeEach
    void writeFiles() {
        out = folder.resolve("my paper");
        draft = CommandRun.file(folder, "square smock.gusset", "good");
        cast = CommandRun.file(
                folder, "cast.csv", "measure,Pip & Co,Maren\nchest,72 cm,38 1/2 in\nscye_depth,,8 7/8 in\n");
    }

    private CommandRun draw(String draftFile, String measures, String... more) {
        List<String> args =
                new java.util.ArrayList<>(List.of("draw", draftFile, "--measures", measures, "--out", out.toString()));
        args.addAll(List.of(more));
        return CommandRun.of(args.toArray(new String[0]));
    }

    @Test
    void oneBodyGivesASheetAndAFileForEachPiece() throws IOException {
        CommandRun run = draw(draft, cast + "#Maren");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(CommandRun.filesBelow(out))
                .containsExactly(
                        "square-smock-maren-front.svg",
                        "square-smock-maren-pocket.svg",
                        "square-smock-maren-sheet.svg");
        assertThat(run.out())
                .isEqualTo("Square <smock> for Maren: a sheet and 2 pieces in " + out + System.lineSeparator());
        String front = Files.readString(out.resolve("square-smock-maren-front.svg"));
        assertThat(front).contains("Maren").contains("Square &lt;smock&gt;").doesNotContain("NOT PROVED");
        // (38 1/2 in + 12 cm) / 4 = 274.475 mm, worked by hand with 1 in = 25.4 mm.
        assertThat(front).containsPattern("274\\.475");
    }

    @Test
    void theDrawingIsAlsoWrittenAsJson() throws IOException {
        CommandRun run = draw(draft, cast + "#Maren", "--json", "--unit", "in");
        assertThat(run.err()).isEmpty();
        assertThat(CommandRun.filesBelow(out)).hasSize(4).contains("square-smock-maren-drawing.json");
        String json = Files.readString(out.resolve("square-smock-maren-drawing.json"));
        assertThat(json)
                .startsWith("{\"form\":\"gusset-drawing\",\"formVersion\":1,")
                .endsWith("}\n");
        assertThat(json).contains("\"body\":\"Maren\"").contains("38 1/2 in").contains("\"proved\":true");
    }

    @Test
    void theJsonLeavesTheNameOutToo() throws IOException {
        draw(draft, cast + "#Maren", "--json", "--unnamed");
        String json = Files.readString(out.resolve("square-smock-drawing.json"));
        assertThat(json).contains("\"body\":\"\"").doesNotContain("Maren");
    }

    @Test
    void aDraftWithErrorsIsNotProvedInTheJsonEither() throws IOException {
        draw(CommandRun.file(folder, "faulty.gusset", "faulty"), cast + "#Maren", "--json", "--anyway");
        assertThat(Files.readString(out.resolve("faulty-maren-drawing.json")))
                .contains("\"proved\":false")
                .contains("\"code\":\"SYN999\"");
    }

    @Test
    void jsonGoesWithNeitherNestNorToile() {
        for (String other : List.of("--nest", "--toile")) {
            CommandRun run = draw(draft, cast, "--json", other);
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err()).contains("leave --nest and --toile out");
        }
    }

    @Test
    void severalBodiesGetAFolderEach() {
        CommandRun run = draw(draft, cast);
        assertThat(run.code()).isZero();
        assertThat(CommandRun.filesBelow(out))
                .containsExactly(
                        "maren/square-smock-maren-front.svg",
                        "maren/square-smock-maren-pocket.svg",
                        "maren/square-smock-maren-sheet.svg",
                        "pip-co/square-smock-pip-co-front.svg",
                        "pip-co/square-smock-pip-co-pocket.svg",
                        "pip-co/square-smock-pip-co-sheet.svg");
        assertThat(run.out()).contains("estimated, not measured: scye_depth");
    }

    @Test
    void namesMayBeLeftOffThePaperAndOffTheFiles() throws IOException {
        CommandRun run = draw(draft, cast + "#Maren", "--unnamed");
        assertThat(run.code()).isZero();
        assertThat(CommandRun.filesBelow(out))
                .containsExactly("square-smock-front.svg", "square-smock-pocket.svg", "square-smock-sheet.svg");
        assertThat(run.out()).doesNotContain("Maren");
        for (String file : CommandRun.filesBelow(out)) {
            assertThat(Files.readString(out.resolve(file))).doesNotContain("Maren");
        }
        out = folder.resolve("several");
        draw(draft, cast, "--unnamed");
        assertThat(CommandRun.filesBelow(out))
                .hasSize(6)
                .contains("body-1/square-smock-body-1-sheet.svg", "body-2/square-smock-body-2-sheet.svg");
        for (String file : CommandRun.filesBelow(out)) {
            assertThat(Files.readString(out.resolve(file)))
                    .doesNotContain("Maren")
                    .doesNotContain("Pip");
        }
    }

    @Test
    void choicesReachTheDrawing() throws IOException {
        CommandRun run = draw(draft, cast + "#Maren", "--set", "ease = 10 cm", "--set=neckline=round", "--unit", "in");
        assertThat(run.err()).isEmpty();
        // (38 1/2 in + 10 cm) / 4 = 269.475 mm, worked by hand.
        assertThat(Files.readString(out.resolve("square-smock-maren-front.svg")))
                .containsPattern("269\\.475");
    }

    @Test
    void aDraftWithErrorsDrawsNothing() {
        String faulty = CommandRun.file(folder, "faulty.gusset", "faulty");
        CommandRun run = draw(faulty, cast);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err())
                .contains("SYN999")
                .contains("Nothing was drawn: the draft has 1 error; --anyway draws what can be drawn.");
        assertThat(out).doesNotExist();
        CommandRun none = draw(CommandRun.file(folder, "none.gusset", "hopeless"), cast, "--anyway");
        assertThat(none.code()).isEqualTo(1);
        assertThat(none.err()).contains("Nothing was drawn: the draft has 1 error.");
        assertThat(out).doesNotExist();
    }

    @Test
    void anywayEveryPaperSaysNotProvedAndWhy() throws IOException {
        String faulty = CommandRun.file(folder, "faulty.gusset", "faulty");
        CommandRun run = draw(faulty, cast + "#Maren", "--anyway");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("(NOT PROVED)");
        assertThat(CommandRun.filesBelow(out)).hasSize(3);
        for (String file : CommandRun.filesBelow(out)) {
            assertThat(Files.readString(out.resolve(file)))
                    .contains("NOT PROVED")
                    .containsPattern("does\\s+not|belong")
                    .doesNotContain("<here>");
        }
    }

    @Test
    void aFailedCheckStopsThatBodyOnly() {
        String strict = CommandRun.file(folder, "strict.gusset", "strict");
        String big = CommandRun.file(folder, "big.csv", "measure,Bartholo,Pip\nchest,152 cm,72 cm\n");
        CommandRun run = draw(strict, big);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("Bartholo:").contains("SEW002").contains("Drawn for 1 of 2 bodies");
        assertThat(CommandRun.filesBelow(out)).hasSize(3).allMatch(f -> f.startsWith("pip/"));
        CommandRun anyway = draw(strict, big, "--anyway");
        assertThat(anyway.code()).isEqualTo(1);
        assertThat(CommandRun.filesBelow(out)).hasSize(6);
    }

    @Test
    void bodiesOutOfRangeAndWithoutAMeasureAreTold() {
        String odd = CommandRun.file(
                folder, "odd.csv", "measure,a,b,c,d\nchest,38 cm,380 cm,,38\nwaist,1 cm,1 cm,1 cm,1 cm\n");
        CommandRun run = draw(draft, odd);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err())
                .contains("a:", "MEA111", "b:", "MEA112", "c:", "MEA101", "round the chest", "d:", "MEA208")
                .contains(
                        "odd.csv, row 2, column 5: error MEA208: `38`, the chest of d, has no unit.\n    38\n    ^~\n")
                .contains("Nothing was drawn");
        assertThat(out).doesNotExist();
    }

    @Test
    void aMisspeltChoiceIsToldOnceForAllBodies() {
        CommandRun run = draw(draft, cast, "--set", "esae=10 cm");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err().split("NAM101", -1)).hasSize(3);
        assertThat(run.err()).contains("Did you mean `ease`?").contains("Also for Maren: NAM101");
        assertThat(out).doesNotExist();
    }

    @Test
    void nothingHalfWrittenIsLeftAndOldDrawingsAreReplaced() throws IOException {
        draw(draft, cast + "#Maren");
        CommandRun.file(out, "square-smock-maren-yoke.svg", "old");
        CommandRun.file(out, "square-smock-maren-front.svg", "old");
        CommandRun run = draw(draft, cast + "#Maren");
        assertThat(run.code()).isZero();
        assertThat(run.err()).contains("Not of this run, and still in " + out + ": square-smock-maren-yoke.svg");
        assertThat(Files.readString(out.resolve("square-smock-maren-front.svg")))
                .startsWith("<?xml");
        assertThat(CommandRun.filesBelow(out)).hasSize(4).noneMatch(f -> f.endsWith(".part"));
    }

    @Test
    void aFolderInTheWayMeansThatNothingIsWritten() throws IOException {
        Files.createDirectories(out.resolve("square-smock-maren-pocket.svg"));
        CommandRun run = draw(draft, cast + "#Maren");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("stands in the way");
        assertThat(CommandRun.filesBelow(out)).isEmpty();
    }

    @Test
    void aFileInPlaceOfTheFolder() {
        CommandRun.file(folder, "my paper", "not a folder");
        CommandRun run = draw(draft, cast + "#Maren");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("cannot be written (a file of that name is in the way).");
    }

    @Test
    void hostileNamesStayInTheFolder() {
        String hostile = CommandRun.file(
                folder,
                "hostile.csv",
                "measure,../../up,..,/etc/x,\"<script>alert(\"\"1\"\")</script>\"\nchest,72 cm,72 cm,72 cm,72 cm\n");
        CommandRun run = draw(draft, hostile);
        assertThat(run.code()).isZero();
        assertThat(CommandRun.filesBelow(folder))
                .filteredOn(f -> f.endsWith(".svg"))
                .hasSize(12)
                .allMatch(f -> f.startsWith("my paper/"));
        assertThat(CommandRun.filesBelow(out))
                .contains(
                        "up/square-smock-up-sheet.svg",
                        "unnamed/square-smock-unnamed-sheet.svg",
                        "etc-x/square-smock-etc-x-sheet.svg");
        assertThat(CommandRun.filesBelow(out))
                .allSatisfy(f -> assertThat(Files.readString(out.resolve(f))).doesNotContain("<script"));
    }
}
