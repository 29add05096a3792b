package org.gusset.workbench.watch;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.Lesson;
import org.gusset.core.measure.LengthStyle;
import org.gusset.svg.Svg;
import org.gusset.svg.lesson.Lessons;
import org.gusset.svg.sheet.SheetOptions;

/**
 * A drawing with the pictures of its lesson, in which every named thing is a group of its own; each is made when it is first shown, unless
 * the one of the drawing before shows the same. Several may be made at once.
 */
final class WatchPictures {
    private final Drawing drawing;
    private final LengthStyle style;
    private final SheetOptions options;
    private final Lesson lesson;
    private final Map<Integer, Made> earlier;
    private final Map<Integer, Made> made = new ConcurrentHashMap<>();

    /** A picture with what it shows: it depends on all stages of its piece, whose frame they share. */
    private record Made(List<Lesson.Stage> piece, String svg) {}

    /** @param before what was shown before, drawn in the same way */
    WatchPictures(Drawing drawing, LengthStyle style, SheetOptions options, Optional<WatchPictures> before) {
        this.drawing = drawing;
        this.style = style;
        this.options = options;
        this.lesson = drawing.lesson(style);
        this.earlier = before.map(b -> Map.copyOf(b.made)).orElse(Map.of());
    }

    Drawing drawing() {
        return drawing;
    }

    List<Lesson.Stage> stages() {
        return lesson.stages();
    }

    /** The number of the last stage of each piece, which shows all of it. */
    Map<String, Integer> wholes() {
        Map<String, Integer> last = new LinkedHashMap<>();
        for (int i = 0; i < stages().size(); i++) {
            if (!stages().get(i).piece().isEmpty()) {
                last.put(stages().get(i).piece(), i + 1);
            }
        }
        return last;
    }

    /** The picture of a stage as an SVG document. */
    String svg(int number) {
        return made.computeIfAbsent(number, this::make).svg();
    }

    private Made make(int number) {
        String name = stages().get(number - 1).piece();
        List<Lesson.Stage> piece =
                stages().stream().filter(stage -> stage.piece().equals(name)).toList();
        Made before = earlier.get(number);
        return before != null && before.piece().equals(piece)
                ? before
                : new Made(piece, Svg.write(Lessons.picture(lesson, number, style, options), options.styles()));
    }
}
