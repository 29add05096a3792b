package org.gusset.svg.scene;

import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;

/** Something drawn on a sheet. */
public sealed interface Ink {
    /**
     * A path drawn with a pen.
     *
     * @param id unique in its scene, if others may want to find this stroke
     */
    record Stroke(Optional<String> id, Role role, Path path) implements Ink {
        public static Stroke of(Role role, Path path) {
            return new Stroke(Optional.empty(), role, path);
        }

        public static Stroke of(String id, Role role, Path path) {
            return new Stroke(Optional.of(id), role, path);
        }
    }

    /** The inside of a closed path, such as the head of an arrow. */
    record Fill(Role role, Path outline) implements Ink {}

    /** A filled dot. */
    record Dot(Role role, Point centre, double radius) implements Ink {}

    /**
     * One line of words.
     *
     * @param at the point on the baseline that {@code anchor} speaks of
     * @param turn how far the line is turned about {@code at}, in degrees anticlockwise as seen
     * @param size the height of the type (its em) in mm
     */
    record TextLine(Role role, Point at, Anchor anchor, double turn, double size, String text) implements Ink {
        /** An upright line that starts at a point. */
        public static TextLine upright(Role role, Point at, double size, String text) {
            return new TextLine(role, at, Anchor.START, 0, size, text);
        }
    }

    /**
     * Marks that belong together.
     *
     * @param id unique in its scene
     * @param kind what it holds, for class attributes: {@code piece}, {@code label}; {@link #NAMED} for what is drawn for a name of
     *     the draft, which then is the title and can be looked up in the file
     * @param title what it is called; empty for a group that needs no name
     * @param description more about it; may be empty
     * @param shift how far the group's own frame lies from that around it
     */
    record Group(String id, String kind, String title, String description, Vector shift, List<Ink> items)
            implements Ink {
        /** The kind of a group that is drawn for one name of the draft. */
        public static final String NAMED = "name";

        public Group {
            items = List.copyOf(items);
        }

        /** This group, moved to another place. */
        public Group shifted(Vector by) {
            return new Group(id, kind, title, description, shift.plus(by), items);
        }
    }

    /**
     * Marks seen through an upright window; what lies outside it is not shown.
     *
     * @param id unique in its scene
     * @param frame the window, in the frame around it
     */
    record Window(String id, Box frame, List<Ink> items) implements Ink {
        public Window {
            items = List.copyOf(items);
        }
    }

    /** Which part of a line of words lies at its point. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }
}
