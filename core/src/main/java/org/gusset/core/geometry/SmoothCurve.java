package org.gusset.core.geometry;

import java.util.List;

/** Smooth curves through knots by the spline rule of John D. Hobby (Smooth, easy to compute interpolating splines, 1986). */
public final class SmoothCurve {
    private SmoothCurve() {}

    /** The open curve through two or more knots with one tension (1 unless told; at least 3/4) for every stretch. */
    public static Path through(List<Knot> knots, double tension) {
        throw new UnsupportedOperationException();
    }

    /** The closed curve through two or more knots. */
    public static Path closedThrough(List<Knot> knots, double tension) {
        throw new UnsupportedOperationException();
    }
}
