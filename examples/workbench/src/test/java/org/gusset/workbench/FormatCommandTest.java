package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FormatCommandTest {
    private static final String LAID = "let a = 1  # one\n";

    @TempDir
    Path folder;

    @Test
    void filesAreLaidOutInTheirPlaceAndOnlyIfTheyChange() throws IOException {
        String untidy = CommandRun.file(folder, "untidy.gusset", "let a=1 # one");
        String tidy = CommandRun.file(folder, "tidy.gusset", LAID);
        var before = Files.getLastModifiedTime(Path.of(tidy));
        CommandRun run = CommandRun.standard("format", untidy, tidy);
        assertThat(run.code()).isZero();
        assertThat(run.out()).isEqualTo(String.format("laid out: %s%n", untidy));
        assertThat(run.err()).isEmpty();
        assertThat(Path.of(untidy)).hasContent(LAID);
        assertThat(Files.getLastModifiedTime(Path.of(tidy))).isEqualTo(before);
        assertThat(CommandRun.filesBelow(folder)).containsExactly("tidy.gusset", "untidy.gusset");
        assertThat(CommandRun.standard("format", "--check", untidy, tidy)).isEqualTo(new CommandRun(0, "", ""));
    }

    @Test
    void checkListsWhatWouldChangeAndWritesNothing() {
        String untidy = CommandRun.file(folder, "untidy.gusset", "let a=1");
        String tidy = CommandRun.file(folder, "tidy.gusset", LAID);
        CommandRun run = CommandRun.standard("format", untidy, tidy, "--check");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).isEqualTo(String.format("%s%n", untidy));
        assertThat(Path.of(untidy)).hasContent("let a=1");
    }

    @Test
    void whatCannotBeReadIsLeftAndTold() {
        String broken = CommandRun.file(folder, "broken.gusset", "let a=\nlet b=2\n");
        String untidy = CommandRun.file(folder, "untidy.gusset", "let a=1");
        CommandRun run = CommandRun.standard("format", broken, untidy);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("broken.gusset:", "SYN", "is left as it is: it has 1 error.");
        assertThat(Path.of(broken)).hasContent("let a=\nlet b=2\n");
        assertThat(Path.of(untidy)).hasContent("let a = 1\n");
    }

    @Test
    void aWrongNameLeavesAllFilesAsTheyWere() {
        String untidy = CommandRun.file(folder, "untidy.gusset", "let a=1");
        CommandRun run = CommandRun.standard(
                "format", untidy, folder.resolve("none.gusset").toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("There is no draft");
        assertThat(Path.of(untidy)).hasContent("let a=1");
        assertThat(CommandRun.standard("format").code()).isEqualTo(2);
    }

    @Test
    void aLinkStaysALink() throws IOException {
        String untidy = CommandRun.file(folder.resolve("real"), "untidy.gusset", "let a=1");
        Path link = Files.createSymbolicLink(folder.resolve("link.gusset"), Path.of(untidy));
        assertThat(CommandRun.standard("format", link.toString()).code()).isZero();
        assertThat(link).isSymbolicLink();
        assertThat(Path.of(untidy)).hasContent("let a = 1\n");
    }
}
