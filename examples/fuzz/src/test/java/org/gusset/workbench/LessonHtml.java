package org.gusset.workbench;

import java.util.List;
import org.gusset.core.draft.Drawing;
import org.gusset.svg.lesson.LessonStep;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.workbench.lesson.LessonPage;

/** A lesson's page as the workbench writes it, without a file. */
public final class LessonHtml {
    private LessonHtml() {}

    public static String of(Drawing drawing, List<LessonStep> steps, SheetOptions options) {
        return LessonPage.of(LessonPages.content(drawing, steps, options));
    }
}
