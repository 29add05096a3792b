package org.gusset.core.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The places of a segment that may lie nearest to a point: both ends and every foot of a perpendicular. Exact for lines and
 * arcs; for a cubic the feet are all roots of the quintic (B(t) - P) . B'(t), so that no minimum is missed.
 */
final class Nearest {
    private Nearest() {}

    /** The parameters of the candidates in order, 0 and 1 among them. */
    static List<Double> candidates(Segment segment, Point to) {
        List<Double> out = new ArrayList<>();
        out.add(0.0);
        if (segment instanceof LineSegment line) {
            double t = foot(line, to);
            if (t > 0 && t < 1) {
                out.add(t);
            }
        } else if (segment instanceof ArcSegment arc) {
            Vector way = to.minus(arc.centre());
            if (way.length() > 0) {
                out.addAll(parametersAt(arc, way.degrees()));
            }
        } else if (segment instanceof CubicSegment cubic) {
            for (double t : BernsteinRoots.of(footPolynomial(cubic, to))) {
                out.add(t);
            }
        }
        out.add(1.0);
        return out;
    }

    /** The parameter of the nearest place; the first one of several equally near. */
    static double on(Segment segment, Point to) {
        double best = 0;
        double nearest = Double.POSITIVE_INFINITY;
        for (double t : candidates(segment, to)) {
            double distance = segment.at(t).distance(to);
            if (distance < nearest) {
                nearest = distance;
                best = t;
            }
        }
        return best;
    }

    /** The parameter of the perpendicular's foot on the line's unbounded prolongation; 0 if it has no length. */
    static double foot(LineSegment line, Point to) {
        Vector along = line.end().minus(line.start());
        double square = along.dot(along);
        return square == 0 ? 0 : to.minus(line.start()).dot(along) / square;
    }

    /** The parameters between 0 and 1 at which an arc passes the angle in degrees, in order. */
    static List<Double> parametersAt(ArcSegment arc, double degrees) {
        List<Double> out = new ArrayList<>();
        double sweep = Math.abs(arc.sweepDegrees());
        if (sweep == 0) {
            return out;
        }
        double turn = (arc.sweepDegrees() < 0 ? arc.fromDegrees() - degrees : degrees - arc.fromDegrees()) % 360;
        if (turn < 0) {
            turn += 360;
        }
        for (double reached = turn; reached <= sweep; reached += 360) {
            out.add(reached / sweep);
        }
        return out;
    }

    /** The Bernstein coefficients of (B(t) - P) . B'(t), degree 5. */
    static double[] footPolynomial(CubicSegment c, Point to) {
        Vector[] off = {
            c.start().minus(to),
            c.control1().minus(to),
            c.control2().minus(to),
            c.end().minus(to)
        };
        Vector[] way = {
            c.control1().minus(c.start()),
            c.control2().minus(c.control1()),
            c.end().minus(c.control2())
        };
        double[] x = BernsteinRoots.product(
                new double[] {off[0].dx(), off[1].dx(), off[2].dx(), off[3].dx()},
                new double[] {3 * way[0].dx(), 3 * way[1].dx(), 3 * way[2].dx()});
        double[] y = BernsteinRoots.product(
                new double[] {off[0].dy(), off[1].dy(), off[2].dy(), off[3].dy()},
                new double[] {3 * way[0].dy(), 3 * way[1].dy(), 3 * way[2].dy()});
        for (int i = 0; i < x.length; i++) {
            x[i] += y[i];
        }
        return x;
    }
}
