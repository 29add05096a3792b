package org.gusset.workbench.watch;

import java.util.List;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.svg.Svg;
import org.gusset.svg.lesson.LessonStep;
import org.gusset.svg.lesson.Lessons;
import org.gusset.svg.sheet.SheetOptions;

/**
 * The pictures of a drawing: those of its lesson, in which every named thing is a group of its own.
 *
 * @param style how lengths are shown
 * @param options how it is drawn
 */
public record WatchPictures(LengthStyle style, SheetOptions options) {
    List<LessonStep> steps(Drawing drawing) {
        return Lessons.of(drawing, style, options);
    }

    String svg(LessonStep step) {
        return Svg.write(step.picture(), options.styles());
    }
}
