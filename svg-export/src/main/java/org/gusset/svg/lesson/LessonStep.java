package org.gusset.svg.lesson;

import java.util.List;
import org.gusset.svg.scene.Scene;

/**
 * One step of a lesson.
 *
 * @param number counted from 1 through all pieces
 * @param piece the piece as it is read; empty for the measures
 * @param title what is done
 * @param says the teacher's words
 * @param told the names that the step introduces, each with its sentence
 * @param scale millimetres of the picture for one of the drawing; 1 where nothing is drawn
 * @param scene the picture with title and sentences; as large for all steps of a piece
 * @param picture the picture alone; the same frame for all steps of a piece. Every named thing in it is a group of its own
 */
public record LessonStep(
        int number,
        String piece,
        String title,
        List<String> says,
        List<Told> told,
        double scale,
        Scene scene,
        Scene picture) {
    public LessonStep {
        says = List.copyOf(says);
        told = List.copyOf(told);
    }
}
