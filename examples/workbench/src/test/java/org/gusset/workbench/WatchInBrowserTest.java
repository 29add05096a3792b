package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.gusset.core.draft.Choices;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A draft that is written to while headless Chromium shows it, driven by {@code src/test/browser/watch.mjs}; axe-core looks for what keeps
 * people out. {@code -Dgusset.watch.edits=200} times so many edits.
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
                    folder.resolve("told.txt"),
                    watching.address().toString(),
                    draft.toString(),
                    SHOTS.toString(),
                    System.getProperty("gusset.watch.edits", "0"));
            assertThat(told.stream().filter(l -> l.startsWith("ok  ")).count())
                    .as(told.toString())
                    .isEqualTo(14);
            told.stream().filter(l -> l.startsWith("from saving")).forEach(System.out::println);
        }
    }
}
