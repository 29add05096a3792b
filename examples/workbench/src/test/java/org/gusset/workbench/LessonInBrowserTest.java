package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
 * keeps people out.
 */
class LessonInBrowserTest {
    private static final Path SHOTS = Path.of("target", "lesson-in-browser").toAbsolutePath();
    private static final Pattern NAMED = Pattern.compile("<g[^>]*\\sdata-name=\"([^\"]*)\"");

    @Test
    void theLessonOfTheSmockIsWalkedInABrowser(@TempDir Path folder) throws IOException, InterruptedException {
        InBrowser.needed();
        Drawing drawing = Smock.drawing();
        LessonContent lesson = teaching(drawing);
        CommandRun written =
                CommandRun.standard("lesson", Smock.DRAFT, "--measures", Smock.MAREN, "--out", folder.toString());
        assertThat(written.code()).as(written.err()).isZero();
        Path page = folder.resolve("lesson.html");
        Path expected = Files.writeString(folder.resolve("expected.json"), JSON.std.asString(expected(lesson)));
        try (LessonServer server =
                LessonServing.start(LessonServing.session(drawing, LengthStyle.CM, LessonInBrowserTest::teaching), 0)) {
            List<String> told = InBrowser.run(
                    "lesson.mjs",
                    Files.createDirectories(SHOTS).resolve("told.txt"),
                    page.toUri().toString(),
                    expected.toString(),
                    server.address().toString(),
                    SHOTS.toString());
            assertThat(told.stream().filter(l -> l.startsWith("ok  ")).count())
                    .as(told.toString())
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
}
