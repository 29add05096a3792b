package org.gusset.core.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The parallel of a cubic, fitted by cubics. With O(t) = B(t) + d N(t) the derivative O' has the way of B' and the signed speed
 * |B'| (1 - d kappa): negative where the curve turns tighter than d on that side, so that the parallel travels backwards
 * there. The fit is cut where the speed changes sign (radius of curvature equal to d), and halved until it is within 1e-4 mm of O
 * at all places tried. Each piece takes the ends and ways of O, and either its speeds (Hermite) or the handles that also pass
 * the middle, whichever is nearer.
 */
final class ParallelCurve {
    /** A fitted piece; {@code backward} if it travels against the original. */
    record Piece(Segment segment, boolean backward) {}

    private static final double FIT = 1e-4;
    private static final int DEEPEST = 14;
    private static final int LOOKS = 64;
    private static final int PROBES = 10;
    private static final double PHI = 0.5 * (Math.sqrt(5) - 1);

    private final CubicSegment curve;
    private final double distance;

    /** Speeds up to this count as none. */
    private final double still;

    private final List<Piece> pieces = new ArrayList<>();

    private ParallelCurve(CubicSegment curve, double distance) {
        this.curve = curve;
        this.distance = distance;
        this.still = 1e-9 * curve.polygonLength();
    }

    /** The pieces in order; {@code curve} has length and no cusp but perhaps at its ends. */
    static List<Piece> of(CubicSegment curve, double distance) {
        if (Path.of(curve).straight()
                && curve.turnsOfX().isEmpty()
                && curve.turnsOfY().isEmpty()) {
            Vector across = curve.end().minus(curve.start()).unit().left().times(distance);
            return List.of(new Piece(
                    new LineSegment(curve.start().plus(across), curve.end().plus(across)), false));
        }
        ParallelCurve parallel = new ParallelCurve(curve, distance);
        double from = 0;
        for (double cut : parallel.standstills()) {
            parallel.fit(from, cut, 0);
            from = cut;
        }
        parallel.fit(from, 1, 0);
        return parallel.pieces;
    }

    /** The largest curvature toward the side of the distance, as a radius in mm; infinite if it nowhere turns to it. */
    static double tightest(Segment segment, double distance) {
        double most = 0;
        for (int i = 0; i <= LOOKS; i++) {
            most = Math.max(most, segment.curvature((double) i / LOOKS) * StrictMath.signum(distance));
        }
        return 1 / most;
    }

    private Point offset(double t) {
        return curve.at(t).plus(curve.tangent(t).left().times(distance));
    }

    private double speed(double t) {
        Vector first = curve.derivative(t);
        double speed = first.length();
        if (speed <= still) {
            double aside = t < 0.5 ? t + 1e-4 : t - 1e-4;
            return speed(aside);
        }
        return speed - distance * first.cross(curve.secondDerivative(t)) / (speed * speed);
    }

    /** Where the parallel's speed changes sign, found between even steps and around its dips and rises. */
    private List<Double> standstills() {
        List<Double> looks = new ArrayList<>();
        double[] speeds = new double[LOOKS + 1];
        double step = 1.0 / LOOKS;
        for (int i = 0; i <= LOOKS; i++) {
            looks.add(i * step);
            speeds[i] = speed(i * step);
        }
        for (int i = 1; i < LOOKS; i++) {
            double before = speeds[i - 1];
            double here = speeds[i];
            double after = speeds[i + 1];
            boolean dip = here > 0 && here <= before && here <= after;
            boolean rise = here < 0 && here >= before && here >= after;
            if (dip || rise) {
                looks.add(extreme((i - 1) * step, (i + 1) * step, dip ? 1 : -1));
            }
        }
        looks.sort(null);
        List<Double> cuts = new ArrayList<>();
        boolean forward = speed(looks.get(0)) > 0;
        for (int i = 1; i < looks.size(); i++) {
            double t1 = looks.get(i);
            boolean before = forward;
            forward = speed(t1) > 0;
            if (before != forward) {
                double cut = change(looks.get(i - 1), t1);
                if (cut > 1e-9 && cut < 1 - 1e-9) {
                    cuts.add(cut);
                }
            }
        }
        return cuts;
    }

    /** Golden section for the least of sign times speed. */
    private double extreme(double low, double high, int sign) {
        double a = low;
        double b = high;
        for (int round = 0; round < 60; round++) {
            double c = b - PHI * (b - a);
            double d = a + PHI * (b - a);
            if (sign * speed(c) < sign * speed(d)) {
                b = d;
            } else {
                a = c;
            }
        }
        return 0.5 * (a + b);
    }

    private double change(double low, double high) {
        double a = low;
        double b = high;
        boolean positive = speed(a) > 0;
        for (int round = 0; round < 60; round++) {
            double mid = 0.5 * (a + b);
            if (speed(mid) > 0 == positive) {
                a = mid;
            } else {
                b = mid;
            }
        }
        return 0.5 * (a + b);
    }

    private void fit(double t0, double t1, int depth) {
        double h = t1 - t0;
        double mid = 0.5 * (t0 + t1);
        Point start = offset(t0);
        Point end = offset(t1);
        Vector leave = curve.tangent(t0);
        Vector arrive = curve.tangent(t1);
        double out = speed(t0) * h / 3;
        double in = speed(t1) * h / 3;
        CubicSegment best = handled(start, leave, out, end, arrive, in);
        double miss = miss(best, t0, t1, Double.POSITIVE_INFINITY);
        double sine = leave.cross(arrive);
        if (Math.abs(sine) > 1e-3) {
            Vector rise = offset(mid).minus(start.toward(end, 0.5)).times(8.0 / 3);
            double a = rise.cross(arrive) / sine;
            double b = rise.cross(leave) / sine;
            if (a * speed(mid) > 0 && b * speed(mid) > 0) {
                CubicSegment other = handled(start, leave, a, end, arrive, b);
                double otherMiss = miss(other, t0, t1, miss);
                if (otherMiss < miss) {
                    best = other;
                    miss = otherMiss;
                }
            }
        }
        if (miss <= FIT || depth >= DEEPEST) {
            pieces.add(new Piece(best, speed(mid) < 0));
        } else {
            fit(t0, mid, depth + 1);
            fit(mid, t1, depth + 1);
        }
    }

    private static CubicSegment handled(Point start, Vector leave, double out, Point end, Vector arrive, double in) {
        return new CubicSegment(start, start.plus(leave.times(out)), end.plus(arrive.times(-in)), end);
    }

    /** The largest distance of places of the true parallel from the fit, at most a little too large; not searched beyond enough. */
    private double miss(CubicSegment fit, double t0, double t1, double enough) {
        double most = 0;
        for (int i = 1; i < PROBES; i++) {
            double share = (double) i / PROBES;
            Point truth = offset(t0 + (t1 - t0) * share);
            most = Math.max(most, fit.at(foot(fit, truth, share)).distance(truth));
            if (most > enough) {
                return most;
            }
        }
        return most;
    }

    /** The foot of the perpendicular near a parameter, by Newton's rule; any place of the fit is a safe answer. */
    private static double foot(CubicSegment fit, Point to, double near) {
        double t = near;
        for (int round = 0; round < 4; round++) {
            Vector off = fit.at(t).minus(to);
            Vector way = fit.derivative(t);
            double slope = way.dot(way) + off.dot(fit.secondDerivative(t));
            if (!(slope > 0)) {
                break;
            }
            double next = Math.min(1, Math.max(0, t - off.dot(way) / slope));
            if (Math.abs(next - t) < 1e-9) {
                return next;
            }
            t = next;
        }
        return t;
    }
}
