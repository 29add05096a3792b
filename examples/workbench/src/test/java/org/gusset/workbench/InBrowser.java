package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;

/** Runs a script of {@code src/test/browser} with headless Chromium. Needs {@code node}, {@code chromium} and, once, {@code npm ci} there. */
final class InBrowser {
    private static final Path BROWSER = Path.of(System.getProperty("gusset.root", "../.."))
            .resolve("examples/workbench/src/test/browser")
            .toAbsolutePath();
    private static final int MINUTES = 5;

    private InBrowser() {}

    /** Skips the test where something is missing. */
    static void needed() {
        assumeTrue(onPath("node").isPresent(), "skipped: there is no executable named node on the PATH");
        assumeTrue(onPath("chromium").isPresent(), "skipped: there is no executable named chromium on the PATH");
        assumeTrue(
                Files.isDirectory(BROWSER.resolve("node_modules/playwright-core"))
                        && Files.isDirectory(BROWSER.resolve("node_modules/axe-core")),
                "skipped: `npm ci` was not run in examples/workbench/src/test/browser");
    }

    /**
     * Runs a script to its end; what it tells.
     *
     * @param told where its words are kept
     */
    static List<String> run(String script, Path told, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                onPath("node").orElseThrow().toString(),
                BROWSER.resolve(script).toString(),
                onPath("chromium").orElseThrow().toString()));
        command.addAll(Arrays.asList(arguments));
        Process run = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(told.toFile())
                .start();
        boolean ended = run.waitFor(MINUTES, TimeUnit.MINUTES);
        run.destroy();
        String words = Files.readString(told, StandardCharsets.UTF_8);
        assertThat(ended).as("it ends in time: " + words).isTrue();
        assertThat(run.exitValue()).as(words).isZero();
        return words.lines().toList();
    }

    private static Optional<Path> onPath(String name) {
        String path = System.getenv("PATH");
        if (path != null) {
            for (String folder : path.split(Pattern.quote(File.pathSeparator), -1)) {
                Path program = Path.of(folder, name);
                if (Files.isExecutable(program)) {
                    return Optional.of(program);
                }
            }
        }
        return Optional.empty();
    }
}
