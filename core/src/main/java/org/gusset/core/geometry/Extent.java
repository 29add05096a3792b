package org.gusset.core.geometry;

import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;

/**
 * How large anything in a draft may be. The bounds are far beyond every garment, and so far below those of a double that nothing made of
 * values within them overflows: a product of ten is finite still.
 */
public final class Extent {
    /** How far from its origin anything may be drawn, in mm: a kilometre. */
    public static final double FARTHEST = 1e6;

    /** The largest number, in powers of mm and degrees. */
    public static final double LARGEST = 1e15;

    /** The most turns of an arc. */
    private static final double MOST_DEGREES = 100 * 360.0;

    private Extent() {}

    /**
     * Passes a number, a point or a path that is within the bounds, and everything else.
     *
     * @throws Fault if it is beyond them, or no number
     */
    public static void check(Object value) {
        if (value instanceof Double number) {
            if (!holds(number)) {
                throw Fault.of(GeometryCode.TOO_LARGE);
            }
        } else if (value instanceof Point point) {
            check(point);
        } else if (value instanceof Path path) {
            path.segments().forEach(Extent::check);
        }
    }

    /** True for a number within the bounds. */
    public static boolean holds(double number) {
        return Math.abs(number) <= LARGEST;
    }

    private static void check(Point point) {
        checkDistance(point.x());
        checkDistance(point.y());
    }

    private static void check(Segment segment) {
        check(segment.start());
        check(segment.end());
        if (segment instanceof CubicSegment cubic) {
            check(cubic.control1());
            check(cubic.control2());
        } else if (segment instanceof ArcSegment arc) {
            check(arc.centre());
            checkDistance(arc.radius());
            if (!(Math.abs(arc.sweepDegrees()) <= MOST_DEGREES)) {
                throw Fault.of(GeometryCode.TOO_LARGE);
            }
        }
    }

    /**
     * Passes a distance that something may be drawn at.
     *
     * @throws Fault if it is beyond the bounds, or no number
     */
    public static void checkDistance(double distance) {
        // Not the other way round, so that what is no number is refused too.
        if (!(Math.abs(distance) <= FARTHEST)) {
            throw Fault.of(GeometryCode.TOO_FAR, "most", Fact.length(FARTHEST));
        }
    }
}
