package org.gusset.core.geometry;

import org.jspecify.annotations.Nullable;

/** A place in a piece's flat frame, in millimetres: x counts to the right, y counts down. */
public record Point(double x, double y) {
    /** Negative zero counts as zero, so that equal places are equal. */
    public Point {
        x += 0.0;
        y += 0.0;
    }

    /** The origin of the frame. */
    public static final Point ORIGIN = new Point(0, 0);

    public Point plus(Vector by) {
        return new Point(x + by.dx(), y + by.dy());
    }

    /** The way from {@code other} to this point. */
    public Vector minus(Point other) {
        return new Vector(x - other.x, y - other.y);
    }

    public double distance(Point other) {
        return minus(other).length();
    }

    /** The point that divides the way to {@code other}: this point at 0, the other at 1. */
    public Point toward(Point other, double share) {
        return new Point(x + (other.x - x) * share, y + (other.y - y) * share);
    }

    /** Written out for the start of short runs, see docs/decisions/0034. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof Point that && Double.compare(x, that.x) == 0 && Double.compare(y, that.y) == 0);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(x) + Double.hashCode(y);
    }
}
