package org.gusset.core.build;

import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Heading;

/** The way that a curve heads at a point. */
public final class Way {
    /** Makes the heading, adding its inputs. */
    @FunctionalInterface
    private interface Made {
        Heading in(Inputs inputs);
    }

    private final Made made;

    private Way(Made made) {
        this.made = made;
    }

    public static Way right() {
        return new Way(in -> new Heading.To(Heading.Compass.RIGHT));
    }

    public static Way left() {
        return new Way(in -> new Heading.To(Heading.Compass.LEFT));
    }

    public static Way up() {
        return new Way(in -> new Heading.To(Heading.Compass.UP));
    }

    public static Way down() {
        return new Way(in -> new Heading.To(Heading.Compass.DOWN));
    }

    /** At an angle: 0 degrees is to the right, 90 up. */
    public static Way angle(Ang angle) {
        return new Way(in -> new Heading.Angle(in.formula(angle.term())));
    }

    /** Straight toward a point. */
    public static Way toward(Spot point) {
        return new Way(in -> new Heading.Toward(in.add(point.term())));
    }

    /** Along a line, at the place on it that is nearest. */
    public static Way along(Line line) {
        return new Way(in -> new Heading.Along(in.add(line.term())));
    }

    /** Square to a line, at the place on it that is nearest. */
    public static Way squareTo(Line line) {
        return new Way(in -> new Heading.SquareTo(in.add(line.term())));
    }

    /** One of two by a condition. */
    public static Way when(Truth condition, Way then, Way otherwise) {
        return new Way(in -> {
            int holds = in.add(condition.term());
            Heading first = then.heading(in);
            return new Heading.Choice(new Condition.Input(holds), first, otherwise.heading(in));
        });
    }

    Heading heading(Inputs in) {
        return made.in(in);
    }
}
