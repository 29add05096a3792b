package org.gusset.core.geometry;

import java.util.OptionalDouble;

/**
 * A point that a smooth curve passes, with what is known of it there.
 *
 * @param point the point
 * @param heading the way of travel as an angle in degrees, anticlockwise as seen, the same before and after the point
 * @param curl at an end without a heading: 1 for the curvature of a circle, 0 for a straight run-out
 */
public record Knot(Point point, OptionalDouble heading, double curl) {
    public static Knot at(Point point) {
        return new Knot(point, OptionalDouble.empty(), 1);
    }

    public static Knot at(Point point, double headingDegrees) {
        return new Knot(point, OptionalDouble.of(headingDegrees), 1);
    }
}
