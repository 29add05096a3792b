package org.gusset.core.cloth.packing;

import org.gusset.core.geometry.Point;

/**
 * How an item is turned: mirrored first, then turned about its origin.
 *
 * @param degrees the turn from the x axis toward the y axis; quarter turns are exact
 * @param mirrored whether x changes its sign before the turn
 */
public record Orientation(double degrees, boolean mirrored) {
    /** As the item's ring is given. */
    public static final Orientation AS_GIVEN = new Orientation(0, false);

    /**
     * An orientation.
     *
     * @throws IllegalArgumentException if the turn is not finite
     */
    public Orientation {
        if (!Double.isFinite(degrees)) {
            throw new IllegalArgumentException("a turn must be finite: " + degrees);
        }
        degrees += 0.0;
    }

    public static Orientation turned(double degrees) {
        return new Orientation(degrees, false);
    }

    /** Where a point of the item comes to lie, the item's origin being at (0, 0). */
    public Point apply(Point p) {
        double x = mirrored ? -p.x() : p.x();
        double cos = cos();
        double sin = sin();
        return new Point(cos * x - sin * p.y(), sin * x + cos * p.y());
    }

    double cos() {
        return sin(degrees + 90);
    }

    double sin() {
        return sin(degrees);
    }

    private static double sin(double degrees) {
        double within = degrees % 360;
        double positive = within < 0 ? within + 360 : within;
        if (positive % 90 == 0) {
            int quarter = (int) (positive / 90) % 4;
            return quarter == 1 ? 1 : quarter == 3 ? -1 : 0;
        }
        return StrictMath.sin(StrictMath.toRadians(positive));
    }
}
