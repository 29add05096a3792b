package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LayCommandTest {
    /** Two pairs of oblongs of 60 cm by 40 cm: counted by hand. */
    private static final String OBLONGS = """
            gusset 1
            draft "Banner ends"
            measure wide from 10 cm to 90 cm "of the banner"
            cloth shell wide 150 cm folded lengthwise
            piece End {
              point a = origin
              point b = a right 35 cm
              point c = b down wide
              point d = a down wide
              line top = a to b
              line side = b to c
              line low = c to d
              line near = d to a
              outline top, side, low, near
              allow 0 cm
              grain along side
              cut 2 pairs
            }
            """;

    private static CommandRun lay(Path folder, String... more) throws IOException {
        Path draft = Files.writeString(folder.resolve("ends.gusset"), OBLONGS);
        Path table = Files.writeString(folder.resolve("banners.csv"), "measure,Procession\nwide,60 cm\n");
        List<String> words =
                new ArrayList<>(List.of("lay", draft.toString(), "--measures", table.toString(), "--seconds", "0"));
        words.addAll(List.of(more));
        return CommandRun.standard(words.toArray(new String[0]));
    }

    /** On the fold 75 cm take two of 35 cm side by side, 55 cm only one: the need jumps, and is no matter of area. */
    @ParameterizedTest
    @CsvSource({"150cm, 60 cm", "110cm, 120 cm"})
    void widthStepsJump(String width, String length, @TempDir Path folder) throws IOException {
        CommandRun run = lay(folder, "--cloth", width, "--folded", "lengthwise");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("needs " + length, "buy " + length);
    }

    @Test
    void whatOtherFoldingsTakeIsToldAsSuch(@TempDir Path folder) throws IOException {
        CommandRun run = lay(folder, "--cloth", "150cm");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out().lines().map(String::strip).filter(l -> l.startsWith("laid otherwise, ")))
                .isNotEmpty()
                .allMatch(l -> l.matches("laid otherwise, .*: [0-9.]+ cm"));
    }

    @Test
    void whatIsAtHandIsEnoughOrNot(@TempDir Path folder) throws IOException {
        CommandRun enough = lay(folder, "--folded", "lengthwise", "--have", "70cm");
        assertThat(enough.code()).as(enough.err()).isZero();
        CommandRun short1 = lay(folder, "--cloth", "110cm", "--folded", "lengthwise", "--have", "1m");
        assertThat(short1.code()).isEqualTo(ExitCodes.FAULTS);
        assertThat(short1.out()).contains("20 cm");
    }

    @Test
    void aPictureShowsEveryPiece(@TempDir Path folder) throws IOException {
        Path out = folder.resolve("paper");
        CommandRun run = lay(folder, "--folded", "open", "--out", out.toString());
        assertThat(run.code()).as(run.err()).isZero();
        Matcher named = Pattern.compile("[1-4] End").matcher(Files.readString(only(out)));
        assertThat(named.results().map(r -> r.group()).distinct().sorted())
                .containsExactly("1 End", "2 End", "3 End", "4 End");
    }

    /** A bolt of 70 m at hand does not make the sheet as long as the bolt. */
    @Test
    void whatIsLeftOfABoltIsNotDrawn(@TempDir Path folder) throws IOException {
        Path out = folder.resolve("paper");
        CommandRun run = lay(folder, "--folded", "lengthwise", "--have", "70m", "--out", out.toString());
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("yes: 7000 cm are enough");
        assertThat(Files.readString(only(out))).contains("width=\"210mm\"").doesNotContain("at hand:");
        Path again = folder.resolve("again");
        lay(folder, "--folded", "lengthwise", "--have", "50cm", "--out", again.toString());
        assertThat(Files.readString(only(again))).contains("at hand: 50 cm");
    }

    private static Path only(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            List<Path> all = files.toList();
            assertThat(all).hasSize(1);
            return all.get(0);
        }
    }

    @Test
    void clothWithANapIsNotFoldedAcross(@TempDir Path folder) throws IOException {
        CommandRun run = lay(folder, "--one-way", "--folded", "across");
        assertThat(run.code()).isEqualTo(ExitCodes.FAULTS);
        assertThat(run.out() + run.err()).contains("CLO");
    }

    @Test
    void wrongWordsAreSaid(@TempDir Path folder) throws IOException {
        for (List<String> wrong : List.of(
                List.of("--cloth", "shell=wide"),
                List.of("--cloth", "0cm"),
                List.of("--have", "silk=1m"),
                List.of("--folded", "sideways"),
                List.of("--tilt", "40"),
                List.of("--seconds", "-1"))) {
            CommandRun run = lay(folder, wrong.toArray(new String[0]));
            assertThat(run.code()).as(wrong + run.out()).isEqualTo(ExitCodes.WRONG_USE);
            assertThat(run.err()).as(wrong.toString()).startsWith("gusset: ").doesNotContain("Exception");
        }
    }
}
