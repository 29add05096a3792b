package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.workbench.lesson.LessonContent;
import org.gusset.workbench.lesson.LessonFrame;
import org.gusset.workbench.lesson.LessonServer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The smock's lesson in headless Chromium, from disk and served, driven by {@code src/test/browser/lesson.mjs}; axe-core looks for what
 * keeps people out. Needs {@code node}, {@code chromium} and, once, {@code npm ci} in that folder.
 */
class LessonInBrowserTest {
    private static final Path BROWSER = Path.of(System.getProperty("gusset.root", "../.."))
            .resolve("examples/workbench/src/test/browser")
            .toAbsolutePath();
    private static final Path SHOTS = Path.of("target", "lesson-in-browser").toAbsolutePath();
    private static final Pattern NAMED = Pattern.compile("<g[^>]*\\sdata-name=\"([^\"]*)\"");
    private static final int MINUTES = 5;

    @Test
    void theLessonOfTheSmockIsWalkedInABrowser(@TempDir Path folder) throws IOException, InterruptedException {
        Optional<Path> node = onPath("node");
        Optional<Path> chromium = onPath("chromium");
        assumeTrue(node.isPresent(), "skipped: there is no executable named node on the PATH");
        assumeTrue(chromium.isPresent(), "skipped: there is no executable named chromium on the PATH");
        assumeTrue(
                Files.isDirectory(BROWSER.resolve("node_modules/playwright-core"))
                        && Files.isDirectory(BROWSER.resolve("node_modules/axe-core")),
                "skipped: `npm ci` was not run in examples/workbench/src/test/browser");
        Drawing drawing = Smock.drawing();
        LessonContent lesson = teaching(drawing);
        CommandRun written =
                CommandRun.standard("lesson", Smock.DRAFT, "--measures", Smock.MAREN, "--out", folder.toString());
        assertThat(written.code()).as(written.err()).isZero();
        Path page = folder.resolve("lesson.html");
        Path expected = Files.writeString(folder.resolve("expected.json"), JSON.std.asString(expected(lesson)));
        Path told = folder.resolve("told.txt");
        try (LessonServer server =
                LessonServing.start(LessonServing.session(drawing, LengthStyle.CM, LessonInBrowserTest::teaching), 0)) {
            Process run = new ProcessBuilder(
                            node.orElseThrow().toString(),
                            BROWSER.resolve("lesson.mjs").toString(),
                            chromium.orElseThrow().toString(),
                            page.toUri().toString(),
                            expected.toString(),
                            server.address().toString(),
                            SHOTS.toString())
                    .redirectErrorStream(true)
                    .redirectOutput(told.toFile())
                    .start();
            boolean ended = run.waitFor(MINUTES, TimeUnit.MINUTES);
            run.destroy();
            String words = Files.readString(told, StandardCharsets.UTF_8);
            assertThat(ended).as("it ends in time: " + words).isTrue();
            assertThat(run.exitValue()).as(words).isZero();
            assertThat(words.lines().filter(l -> l.startsWith("ok  ")).count())
                    .as(words)
                    .isGreaterThan(10);
        }
    }

    private static LessonContent teaching(Drawing drawing) {
        return LessonPages.content(drawing, LengthStyle.CM, SheetOptions.defaults());
    }

    /** What each step must show, taken from the frames and not from the page. */
    private static List<Map<String, Object>> expected(LessonContent lesson) {
        List<Map<String, Object>> steps = new ArrayList<>();
        for (LessonFrame frame : lesson.frames()) {
            Map<String, Object> step = new LinkedHashMap<>();
            step.put("piece", frame.piece());
            step.put("title", frame.title());
            step.put("says", frame.says());
            step.put("names", frame.told().stream().map(LessonFrame.Told::name).toList());
            step.put(
                    "sentences",
                    frame.told().stream().map(LessonFrame.Told::sentence).toList());
            Set<String> drawn = new LinkedHashSet<>();
            NAMED.matcher(frame.svg()).results().forEach(m -> drawn.add(m.group(1)));
            step.put("pictured", !frame.svg().isEmpty());
            step.put("drawn", List.copyOf(drawn));
            steps.add(step);
        }
        return steps;
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
