package org.gusset.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The site opened from disk in headless Chromium, by {@code site.mjs} among the workbench's scripts for browsers; axe-core looks for what
 * keeps people out. Pictures of pages and what the script tells go to {@code target/site-in-browser}.
 */
class SiteInBrowserTest {
    private static final Path SCRIPTS = BuiltSite.ROOT.resolve("examples/workbench/src/test/browser");
    private static final Path SHOTS = Path.of("target", "site-in-browser").toAbsolutePath();
    private static final int MINUTES = 5;

    @Test
    void pagesAreReadAndSearchedInABrowser() throws IOException, InterruptedException {
        Optional<Path> node = onPath("node");
        Optional<Path> chromium = onPath("chromium");
        assumeTrue(node.isPresent(), "skipped: there is no executable named node on the PATH");
        assumeTrue(chromium.isPresent(), "skipped: there is no executable named chromium on the PATH");
        assumeTrue(
                Files.isDirectory(SCRIPTS.resolve("node_modules/playwright-core"))
                        && Files.isDirectory(SCRIPTS.resolve("node_modules/axe-core")),
                "skipped: `npm ci` was not run in examples/workbench/src/test/browser");
        Path told = Files.createDirectories(SHOTS).resolve("told.txt");
        Process run = new ProcessBuilder(
                        node.get().toString(),
                        SCRIPTS.resolve("site.mjs").toString(),
                        chromium.get().toString(),
                        BuiltSite.folder().toUri().toString(),
                        SHOTS.toString())
                .redirectErrorStream(true)
                .redirectOutput(told.toFile())
                .start();
        boolean ended = run.waitFor(MINUTES, TimeUnit.MINUTES);
        run.destroy();
        List<String> words = Files.readAllLines(told, StandardCharsets.UTF_8);
        assertThat(ended).as("it ends in time: " + words).isTrue();
        assertThat(run.exitValue()).as(String.join("\n", words)).isZero();
        assertThat(words.stream().filter(l -> l.startsWith("ok  "))).hasSizeGreaterThan(10);
    }

    private static Optional<Path> onPath(String name) {
        return Stream.of(Optional.ofNullable(System.getenv("PATH"))
                        .orElse("")
                        .split(Pattern.quote(File.pathSeparator), -1))
                .map(folder -> Path.of(folder, name))
                .filter(Files::isExecutable)
                .findFirst();
    }
}
