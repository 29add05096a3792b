package org.gusset.workbench.lesson;

import java.util.List;

/**
 * What a page teaches.
 *
 * @param title the draft's title
 * @param body for whom it is drawn; empty to leave that unsaid
 * @param note the draft's note; empty if it has none
 * @param fingerprint what the draft's text, the choices and the version are known by
 * @param frames the steps, in the order of teaching
 */
public record LessonContent(String title, String body, String note, String fingerprint, List<LessonFrame> frames) {
    public LessonContent {
        frames = List.copyOf(frames);
    }
}
