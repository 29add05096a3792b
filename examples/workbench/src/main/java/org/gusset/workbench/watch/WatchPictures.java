package org.gusset.workbench.watch;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.Lesson;
import org.gusset.core.measure.LengthStyle;
import org.gusset.svg.Svg;
import org.gusset.svg.lesson.Lessons;
import org.gusset.svg.sheet.SheetOptions;

/** A drawing with the pictures of its lesson, in which every named thing is a group of its own; each is made when it is first shown. */
final class WatchPictures {
    private final Drawing drawing;
    private final LengthStyle style;
    private final SheetOptions options;
    private final Lesson lesson;
    private final Map<Integer, String> made = new HashMap<>();

    WatchPictures(Drawing drawing, LengthStyle style, SheetOptions options) {
        this.drawing = drawing;
        this.style = style;
        this.options = options;
        this.lesson = drawing.lesson(style);
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
        return made.computeIfAbsent(
                number, n -> Svg.write(Lessons.picture(lesson, n, style, options), options.styles()));
    }
}
