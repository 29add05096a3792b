package org.gusset.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The folder for editors: its grammar of colours against the language's grammar and drafts, and its archive. Needs {@code node}. */
class ClientFolderTest {
    private static final Path CLIENT =
            Path.of(System.getProperty("gusset.root", "../../.."), "examples", "editor", "client");
    private static final int MINUTES = 2;

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    private static boolean isOnPath(String program) {
        return Arrays.stream(String.valueOf(System.getenv("PATH")).split(File.pathSeparator))
                .anyMatch(p -> Files.isExecutable(Path.of(p, program)));
    }

    private String run(String... command) throws IOException, InterruptedException {
        Path told = folder.resolve("told.txt");
        Process run = new ProcessBuilder(command)
                .directory(CLIENT.toFile())
                .redirectErrorStream(true)
                .redirectOutput(told.toFile())
                .start();
        boolean ended = run.waitFor(MINUTES, TimeUnit.MINUTES);
        run.destroy();
        String words = Files.readString(told);
        assertThat(ended).as(words).isTrue();
        assertThat(run.exitValue()).as(words).isZero();
        return words;
    }

    @Test
    void theGrammarOfColoursHasTheWordsOfTheLanguageAndColoursTheShippedDrafts()
            throws IOException, InterruptedException {
        assumeTrue(isOnPath("node"), "skipped: there is no executable named node on the PATH");
        assumeTrue(
                Files.isDirectory(CLIENT.resolve("node_modules/vscode-textmate")),
                "skipped: `npm ci` was not run in examples/editor/client");
        assertThat(run("node", "test/grammar.mjs")).contains("reserved words");
    }

    @Test
    void theArchiveHoldsWhatTheFolderNames() throws IOException, InterruptedException {
        assumeTrue(isOnPath("npm"), "skipped: there is no executable named npm on the PATH");
        assumeTrue(
                Files.isDirectory(CLIENT.resolve("node_modules/vscode-languageclient")),
                "skipped: `npm ci` was not run in examples/editor/client");
        String listed = run("npm", "pack", "--dry-run", "--offline");
        assertThat(listed)
                .contains(
                        "extension.js",
                        "language-configuration.json",
                        "syntaxes/gusset.tmLanguage.json",
                        "package.json",
                        "README.md",
                        "vscode-languageclient")
                .doesNotContain("test/grammar.mjs");
    }
}
