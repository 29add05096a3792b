package org.gusset.core.geometry;

import java.util.List;

/**
 * The area that segments enclose, exact by Green's theorem: half the integral of position cross way of travel. Positions count
 * from the start of the first segment, so that an unclosed path is closed by its chord and little is lost far from the origin.
 */
final class EnclosedArea {
    private EnclosedArea() {}

    /** In square mm, positive if the path runs anticlockwise as seen. */
    static double of(List<Segment> segments) {
        Point from = segments.get(0).start();
        double sum = 0;
        for (Segment segment : segments) {
            sum += swept(segment, from);
        }
        return sum;
    }

    private static double swept(Segment segment, Point from) {
        Vector start = segment.start().minus(from);
        Vector end = segment.end().minus(from);
        if (segment instanceof ArcSegment arc) {
            double sector = arc.radius() * arc.radius() * StrictMath.toRadians(arc.sweepDegrees());
            return 0.5 * (arc.centre().minus(from).cross(end.plus(start.opposite())) + sector);
        } else if (segment instanceof CubicSegment cubic) {
            Vector c1 = cubic.control1().minus(from);
            Vector c2 = cubic.control2().minus(from);
            return (6 * (start.cross(c1) + c2.cross(end))
                            + 3 * (start.cross(c2) + c1.cross(c2) + c1.cross(end))
                            + start.cross(end))
                    / 20;
        }
        return 0.5 * start.cross(end);
    }
}
