package org.gusset.core.geometry;

/** One smooth stretch of a path. Its parameter t runs from 0 at the start to 1 at the end. Lengths are in millimetres. */
public sealed interface Segment permits LineSegment, ArcSegment, CubicSegment {
    Point start();

    Point end();

    Point at(double t);

    /** The derivative by t: the way of travel, its length being the speed. */
    Vector derivative(double t);

    /** The arc length, to 1e-10 relative. */
    double length();

    /** The arc length from the start to t. */
    double lengthTo(double t);

    /** The t at which the arc length from the start is {@code length}; clamped to 0 and 1. */
    double parameterAt(double length);

    /** The unit way of travel at t, also where the derivative vanishes at an end. */
    Vector tangent(double t);

    /** Signed curvature in 1/mm at t, positive where the path turns left as seen. */
    double curvature(double t);

    Segment reversed();

    Segment transformed(Transform by);

    /** The stretch between two parameters, t0 less than t1. */
    Segment part(double t0, double t1);

    Box bounds();
}
