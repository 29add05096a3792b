package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SeamsCommandTest {
    private static final String SHIPPED =
            Path.of("..").toAbsolutePath().normalize().toString();

    @TempDir
    Path folder;

    private static CommandRun seams(String draft, String... more) {
        java.util.List<String> args = new java.util.ArrayList<>(java.util.List.of(
                "seams",
                SHIPPED + "/drafts/" + draft,
                "--measures",
                SHIPPED + "/measures/quillhaven.csv#Maren Oddway"));
        args.addAll(java.util.List.of(more));
        return CommandRun.standard(args.toArray(new String[0]));
    }

    @Test
    void theListIsInTheOrderOfSewingAndSaysWhatComesBefore() {
        CommandRun run = seams("smock.gusset");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .containsSubsequence("1. shoulder", "press toward Back", "2. armhole", "after shoulder", "3. underarm")
                .contains("allowance 1.5 cm", "notches at", "double");
    }

    @Test
    void stretchesAreToldWithTheirEase() {
        assertThat(seams("trouser-block.gusset").out())
                .contains("from the start to Front.hip_side", "from Front.hip_side to Front.knee_out", "ease");
    }

    /** 100 mm and 98 mm: the longer rod is as wide as the sheet allows, the other in proportion. */
    @Test
    void theRodsAreToScaleAndTheLongerSideIsHatched() throws IOException {
        String square = """
                piece %s {
                  point a = origin
                  point b = a right %s
                  point c = b down 30 cm
                  point d = a down 30 cm
                  line top = a to b
                  line side = b to c
                  line hem = c to d
                  line centre = d to a
                  outline top, side, hem, centre
                  allow 1 cm
                  cut 1
                  grain along centre
                }
                """;
        String draft = CommandRun.file(
                folder,
                "two.gusset",
                "gusset 1\ndraft \"Two\"\n" + square.formatted("One", "10 cm") + square.formatted("Other", "9.8 cm")
                        + "seam s = One.top to Other.top ease 0 cm to 3 mm\n");
        Path out = folder.resolve("out");
        CommandRun run = CommandRun.standard(
                "seams",
                draft,
                "--measures",
                SHIPPED + "/measures/quillhaven.csv#Maren Oddway",
                "--out",
                out.toString());
        assertThat(run.err()).isEmpty();
        String svg = Files.readString(out.resolve("two-maren-oddway-seams.svg"));
        Matcher rods = Pattern.compile("class=\"seam-rod\"[^>]* d=\"M0,?\\s?[\\d.]+\\s?[LH]\\s?([\\d.]+)")
                .matcher(svg);
        assertThat(svg).contains("upper longer by 0.2 cm", "seam-eased", "One.top", "Other.top");
        assertThat(rods.find()).as(svg).isTrue();
        assertThat(Double.parseDouble(rods.group(1))).isEqualTo(250);
        assertThat(rods.find()).isTrue();
        assertThat(Double.parseDouble(rods.group(1))).isEqualTo(245);
    }
}
