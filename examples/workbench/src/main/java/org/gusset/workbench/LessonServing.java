package org.gusset.workbench;

import java.util.Optional;
import java.util.function.Function;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.workbench.lesson.LessonContent;
import org.gusset.workbench.lesson.LessonServer;
import org.gusset.workbench.lesson.LessonSession;

/** A lesson to be served, read as the workbench reads. */
final class LessonServing {
    private LessonServing() {}

    /** A session whose measures are read as those of a table. */
    static LessonSession session(Drawing drawing, LengthStyle style, Function<Drawing, LessonContent> teaching) {
        return new LessonSession(
                drawing,
                style,
                (body, measure, text, place) -> MeasureText.read(body, measure, text, Optional.empty(), place),
                teaching);
    }

    /** Starts to serve; refuses a port that is taken. */
    static LessonServer start(LessonSession session, int port) {
        return Serving.start("The lesson", port, p -> LessonServer.start(session, p));
    }
}
