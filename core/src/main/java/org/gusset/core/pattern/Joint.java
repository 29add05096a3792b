package org.gusset.core.pattern;

import java.util.List;
import org.gusset.core.geometry.LineSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;

/**
 * How the cutting lines of two neighbouring bands are joined.
 *
 * @param before where the earlier band's cutting line ends, as a place on its {@link Arm} at this corner
 * @param after where the later one begins, likewise
 * @param link what lies between, in outline order; empty where they meet in a point
 */
record Joint(double before, double after, List<Segment> link) {
    Joint {
        link = List.copyOf(link);
    }

    /** The cutting lines end square off the corner and are joined by a straight step. */
    static Joint step(Arm before, Arm after) {
        return between(0, 0, before.foot(), after.foot());
    }

    /** A straight link between two points, none if they are one. */
    static Joint between(double before, double after, Point from, Point to) {
        boolean one = from.distance(to) <= Path.COINCIDE / 2;
        return new Joint(before, after, one ? List.of() : List.of(new LineSegment(from, to)));
    }

    /** The same joint as seen against the outline's order. */
    Joint backwards() {
        return new Joint(
                after, before, link.isEmpty() ? link : Path.of(link).reversed().segments());
    }
}
