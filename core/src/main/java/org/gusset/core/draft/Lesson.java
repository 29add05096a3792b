package org.gusset.core.draft;

import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.pattern.Piece;

/**
 * A drawing as it is taught: the measures first, then each sound piece step by step, and at last what makes a piece of the lines.
 * Every name of the drawing's trace that belongs to the file or to a sound piece is introduced by one stage.
 *
 * @param stages in the order of teaching
 * @param refused the names of pieces that are not taught, because they could not be made
 */
public record Lesson(List<Stage> stages, List<String> refused) {
    public Lesson {
        stages = List.copyOf(stages);
        refused = List.copyOf(refused);
    }

    /** What a stage is. */
    public enum Kind {
        /** The measures, choices and values of the file. */
        MEASURES,
        /** A step of the draft. */
        STEP,
        /** What of a step could only be drawn later, because it rests on what a later one draws. */
        CONTINUED,
        /** Names that stand outside all steps. */
        GATHERED,
        /** Allowances, notches, grain and marks of a piece. */
        FINISH
    }

    /**
     * One picture of a lesson.
     *
     * @param piece the piece's name; empty for the measures
     * @param title what is done
     * @param before what of the piece stands already, in the order in which it was drawn, as changes have left it
     * @param introduced what is new
     * @param says the teacher's words, values filled in
     * @param finished the piece, where it is finished
     */
    public record Stage(
            Kind kind,
            String piece,
            String title,
            List<Standing> before,
            List<Introduced> introduced,
            List<String> says,
            Optional<Piece> finished) {
        public Stage {
            before = List.copyOf(before);
            introduced = List.copyOf(introduced);
            says = List.copyOf(says);
        }
    }

    /**
     * What is drawn for a name.
     *
     * @param points its points: one, or those of a row
     * @param lines its lines
     * @param guide true for a construction line without ends
     */
    public record Shape(List<Point> points, List<Path> lines, boolean guide) {
        public Shape {
            points = List.copyOf(points);
            lines = List.copyOf(lines);
        }
    }

    /** A name that stands in the picture already. */
    public record Standing(String name, Shape shape) {}

    /**
     * A new name.
     *
     * @param sentence how it came about, with the sum; empty if there is nothing to tell
     * @param shape what is drawn for it; empty for an amount
     * @param ways how it is found, in the order in which one goes
     * @param uses the names of the same piece that it rests on
     */
    public record Introduced(String name, String sentence, Optional<Shape> shape, List<Way> ways, List<String> uses) {
        public Introduced {
            ways = List.copyOf(ways);
            uses = List.copyOf(uses);
        }
    }

    /**
     * A stretch that one goes to find a point or line.
     *
     * @param along from where to where, in mm; straight unless it is measured along a curve
     * @param measured true if its length is set off with the tape, false if one goes until something is met
     */
    public record Way(Path along, boolean measured) {
        public double length() {
            return along.length();
        }
    }
}
