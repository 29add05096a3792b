package org.gusset.core.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Points along a path such that the straight lines between them stray at most a stated distance; further, if that would take more than
 * {@value #MOST} points, as on outlines of many metres.
 */
final class Flattening {
    private static final int MOST = 200_000;

    private Flattening() {}

    static List<Point> of(List<Segment> segments, double tolerance) {
        if (!(tolerance > 0)) {
            throw new IllegalArgumentException("the tolerance must be positive: " + tolerance);
        }
        double wanted = 0;
        for (Segment segment : segments) {
            wanted += wanted(segment, tolerance);
        }
        double share = Math.min(1, MOST / wanted);
        List<Point> out = new ArrayList<>();
        out.add(segments.get(0).start());
        for (Segment segment : segments) {
            int pieces = (int) Math.max(1, StrictMath.ceil(share * wanted(segment, tolerance)));
            for (int i = 1; i <= pieces; i++) {
                out.add(segment.at(i == pieces ? 1 : (double) i / pieces));
            }
        }
        return out;
    }

    /** The sagitta rule for arcs; for cubics the chord error of even parameter steps, a eighth of B'' times the step squared. */
    private static double wanted(Segment segment, double tolerance) {
        double wanted = 1;
        if (segment instanceof ArcSegment arc && arc.radius() > 0) {
            double step = 2 * StrictMath.acos(Math.max(0, 1 - tolerance / arc.radius()));
            wanted = StrictMath.toRadians(Math.abs(arc.sweepDegrees())) / step;
        } else if (segment instanceof CubicSegment cubic) {
            wanted = Math.sqrt(cubic.strays() / tolerance);
        }
        return wanted > 1 ? Math.min(MOST, wanted) : 1;
    }
}
