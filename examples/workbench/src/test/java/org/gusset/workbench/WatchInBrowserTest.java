package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.gusset.core.draft.Choices;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A draft that is written to while headless Chromium shows it, driven by {@code src/test/browser/watch.mjs}; axe-core looks for what keeps
 * people out. {@code -Dgusset.watch.edits=200} times so many edits and moves of a measure.
 */
class WatchInBrowserTest {
    private static final Path SHOTS = Path.of("target", "watch-in-browser").toAbsolutePath();

    @Test
    void aDraftIsWatchedInABrowser(@TempDir Path folder) throws IOException, InterruptedException {
        InBrowser.needed();
        Path draft = Files.copy(Path.of(Smock.DRAFT), folder.resolve("smock.gusset"));
        Bodies cast = Bodies.open(Smock.CAST);
        List<Measurements> bodies =
                cast.names().stream().map(name -> cast.body(name).orThrow()).toList();
        try (Watching watching =
                Watching.start(Bench.standard(), draft.toString(), bodies, Choices.none(), LengthStyle.CM, 0)) {
            List<String> told = InBrowser.run(
                    "watch.mjs",
                    Files.createDirectories(SHOTS).resolve("told.txt"),
                    watching.address().toString(),
                    draft.toString(),
                    SHOTS.toString());
            assertThat(told.stream().filter(l -> l.startsWith("ok  ")).count())
                    .as(told.toString())
                    .isEqualTo(22);
        }
    }

    /** The draft with the most pieces and the one with the most lines, each with an edit on which most of it hangs. */
    @ParameterizedTest
    @CsvSource({"smock.gusset, down body_length, chest", "fitted-bodice.gusset, chest / 12 + 13.7 cm, chest"})
    void howLongAnEditTakes(String name, String words, String measure, @TempDir Path folder)
            throws IOException, InterruptedException {
        InBrowser.needed();
        int edits = Integer.getInteger("gusset.watch.edits", 0);
        assumeTrue(edits > 0, "-Dgusset.watch.edits=200 measures");
        Path drafts = Path.of(Smock.DRAFT).resolveSibling("");
        Path draft = Files.copy(drafts.resolve(name), folder.resolve(name));
        Path rules = Files.createDirectory(folder.resolve("rules"));
        Files.copy(drafts.resolve("rules/sleeves.gusset"), rules.resolve("sleeves.gusset"));
        Measurements maren = Bodies.open(Smock.MAREN).body("Maren Oddway").orThrow();
        try (Watching watching =
                Watching.start(Bench.standard(), draft.toString(), List.of(maren), Choices.none(), LengthStyle.CM, 0)) {
            List<String> told = InBrowser.run(
                    "watch-times.mjs",
                    folder.resolve("told.txt"),
                    watching.address().toString(),
                    draft.toString(),
                    Integer.toString(edits),
                    words,
                    measure);
            assertThat(told).hasSize(2);
            told.forEach(System.out::println);
        }
    }
}
