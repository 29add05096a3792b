package org.gusset.workbench.lesson;

import java.util.List;

/**
 * One step of a lesson.
 *
 * @param number counts the steps of the lesson from 1
 * @param piece the piece that is drawn; empty if the step is about the whole draft
 * @param title the step's title
 * @param says the teacher's words, values filled in
 * @param told how each thing that the step introduces comes about, in order
 * @param svg the picture, a whole SVG document, or empty for a step of words alone; each named thing in it is a {@code <g class="name" data-name="NAME">}
 */
public record LessonFrame(int number, String piece, String title, List<String> says, List<Told> told, String svg) {
    /** How one named thing came about. */
    public record Told(String name, String sentence) {}

    public LessonFrame {
        says = List.copyOf(says);
        told = List.copyOf(told);
    }
}
