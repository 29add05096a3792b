package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LintCommandTest {
    private static final String UNUSED = """
            piece Flag {
              point a = origin
              point b = a right 3 cm
              point c = b down 3 cm
              point spare = c
              line rim = a to b to c to a
              outline rim
            }
            """;

    @TempDir
    Path folder;

    @Test
    void adviceIsPrintedWithItsPlaceAndCounted() {
        String draft = CommandRun.file(folder, "flag.gusset", UNUSED);
        CommandRun run = CommandRun.standard("lint", draft);
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains(draft + ":5:9: warning LNT001: The point `spare` is never used.", "^~~~~", "hint: ")
                .endsWith(String.format("flag.gusset: 1 warning, no notes%n"));
        assertThat(run.err()).isEmpty();
    }

    @Test
    void strictEndsWithOneForWarningsButNotForNotes() {
        String warned = CommandRun.file(folder, "flag.gusset", UNUSED);
        String noted = CommandRun.file(
                folder, "noted.gusset", UNUSED.replace("point spare = c", "guide spare = across from c"));
        assertThat(CommandRun.standard("lint", "--strict", noted, warned).code())
                .isEqualTo(1);
        CommandRun run = CommandRun.standard("lint", "--strict", noted);
        assertThat(run.code()).isZero();
        assertThat(run.out()).endsWith(String.format("noted.gusset: no warnings, 1 note%n"));
    }

    @Test
    void whatCannotBeReadIsAFault() {
        String broken = CommandRun.file(folder, "broken.gusset", "let a =\n");
        CommandRun run = CommandRun.standard("lint", broken);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("SYN", "1 error, no warnings, no notes");
        assertThat(CommandRun.standard("lint").code()).isEqualTo(2);
    }
}
