package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands with the language itself. */
class StandardBenchTest {
    @TempDir
    Path folder;

    @Test
    void aMistakeIsShownInItsLine() {
        String file = CommandRun.file(
                folder, "hem.gusset", "draft \"Hem\"\nlet depth = 4 cm\nlet turned_hem = depht + 1 cm\n");
        CommandRun run = CommandRun.standard("check", file);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).startsWith(file + """
                        :3:18: error NAM001: There is nothing called `depht` here.
                            let turned_hem = depht + 1 cm
                                             ^~~~~
                          hint: Did you mean `depth`?
                        """);
    }

    @Test
    void valuesOfASmallDraftAreThoseWorkedByHand() {
        String draft = CommandRun.file(
                folder,
                "quarter.gusset",
                "draft \"Quarter\"\nmeasure hip from 30 in to 60 in \"round the hip\"\nlet quarter = hip / 4 + 2 1/2 in\n");
        String body = CommandRun.file(folder, "one.csv", "measure,Maren Oddway\nhip,41 in\n");
        CommandRun run = CommandRun.standard("values", draft, "--measures", body, "--unit", "in");
        // A quarter of 41 in and 2 1/2 in is 12 3/4 in = 323.85 mm; common practice, no source.
        assertThat(run.out().lines().map(l -> l.strip().replaceAll(" {2,}", " | ")))
                .contains("quarter | 323.85 mm | 12 3/4 in");
        assertThat(run.code()).isZero();
    }
}
