package org.gusset.workbench;

import java.util.List;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.svg.Svg;
import org.gusset.svg.lesson.LessonStep;
import org.gusset.svg.lesson.Lessons;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.workbench.lesson.LessonContent;
import org.gusset.workbench.lesson.LessonFrame;

/** The steps of a lesson made ready for a page. */
final class LessonPages {
    private LessonPages() {}

    /** The content of the page for a drawing; the body's name only if the options show it. */
    static LessonContent content(Drawing drawing, LengthStyle lengths, SheetOptions options) {
        return content(drawing, Lessons.of(drawing, lengths, options), options);
    }

    /** The content of the page for a drawing whose steps were made before. */
    static LessonContent content(Drawing drawing, List<LessonStep> steps, SheetOptions options) {
        return new LessonContent(
                drawing.title(),
                options.showBody() ? drawing.measurements().body() : "",
                drawing.note(),
                drawing.fingerprint(),
                steps.stream().map(step -> frame(step, options)).toList());
    }

    /** What belongs to no piece is words alone, which the page shows beside each picture anyway. */
    private static LessonFrame frame(LessonStep step, SheetOptions options) {
        return new LessonFrame(
                step.number(),
                step.piece(),
                step.title(),
                step.says(),
                step.told().stream()
                        .map(t -> new LessonFrame.Told(t.name(), t.sentence()))
                        .toList(),
                step.piece().isEmpty() ? "" : Svg.write(step.picture(), options.styles()));
    }
}
