package org.gusset.core.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

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
    private static final double PHI = 0.5 * (Math.sqrt(5) - 1);

    /** Where a fit is tried, in tenths. One by speeds strays most in the middle, one through the middle half-way to it. */
    private static final int[] PROBES = {5, 2, 8, 3, 7};

    private final CubicSegment curve;
    private final CubicTerms terms;
    private final double distance;

    /** Speeds above this are more than none, whatever else. */
    private final double moving;

    /** Speeds up to this count as none. */
    private final double still;

    private final List<Piece> pieces = new ArrayList<>();

    private ParallelCurve(CubicSegment curve, double distance) {
        this.curve = curve;
        this.terms = new CubicTerms(curve);
        this.distance = distance;
        this.moving = 2 * CubicSegment.STANDSTILL * terms.bound();
        this.still = 1e-9 * curve.polygonLength();
    }

    /** The pieces in order; {@code curve} has length and no cusp but perhaps at its ends. */
    static List<Piece> of(CubicSegment curve, double distance) {
        if (curve.straight() && curve.turnsOfX().isEmpty() && curve.turnsOfY().isEmpty()) {
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
        return new Point(offsetX(t), offsetY(t));
    }

    private double offsetX(double t) {
        double dy = terms.dy(t);
        double speed = Hypotenuse.of(terms.dx(t), dy);
        double across = speed > moving ? dy / speed : curve.tangent(t).dy();
        return terms.x(t) + across * distance;
    }

    private double offsetY(double t) {
        double dx = terms.dx(t);
        double speed = Hypotenuse.of(dx, terms.dy(t));
        double across = speed > moving ? dx / speed : curve.tangent(t).dx();
        return terms.y(t) + -across * distance;
    }

    private double speed(double t) {
        double dx = terms.dx(t);
        double dy = terms.dy(t);
        double speed = Hypotenuse.of(dx, dy);
        if (speed <= still) {
            double aside = t < 0.5 ? t + 1e-4 : t - 1e-4;
            return speed(aside);
        }
        return speed - distance * (dy * terms.ddx(t) - dx * terms.ddy(t)) / (speed * speed);
    }

    /** Where the parallel's speed changes sign, found between even steps and around its dips and rises. */
    private List<Double> standstills() {
        double[] looks = new double[LOOKS + 1];
        double[] speeds = new double[LOOKS + 1];
        double step = 1.0 / LOOKS;
        for (int i = 0; i <= LOOKS; i++) {
            looks[i] = i * step;
            speeds[i] = speed(looks[i]);
        }
        List<Double> between = new ArrayList<>();
        for (int i = 1; i < LOOKS; i++) {
            double before = speeds[i - 1];
            double here = speeds[i];
            double after = speeds[i + 1];
            boolean dip = here > 0 && here <= before && here <= after;
            boolean rise = here < 0 && here >= before && here >= after;
            // Speeds that are much the same on three looks do not turn round between them.
            boolean flat = Math.abs(here) > 0.75 * Math.max(Math.abs(before), Math.abs(after));
            if ((dip || rise) && !flat) {
                between.add(extreme((i - 1) * step, (i + 1) * step, dip ? 1 : -1));
            }
        }
        if (!between.isEmpty()) {
            looks = DoubleStream.concat(DoubleStream.of(looks), between.stream().mapToDouble(d -> d))
                    .sorted()
                    .toArray();
            speeds = DoubleStream.of(looks).map(this::speed).toArray();
        }
        List<Double> cuts = new ArrayList<>();
        for (int i = 1; i < looks.length; i++) {
            if (speeds[i - 1] > 0 != speeds[i] > 0) {
                double cut = change(looks[i - 1], looks[i]);
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
        // What is halved anyway need not be measured to the end.
        double enough = depth < DEEPEST ? FIT : Double.POSITIVE_INFINITY;
        CubicSegment best = handled(start, leave, out, end, arrive, in);
        double miss = miss(best, t0, t1, enough);
        double sine = leave.cross(arrive);
        if (Math.abs(sine) > 1e-3) {
            Vector rise = offset(mid).minus(start.toward(end, 0.5)).times(8.0 / 3);
            double a = rise.cross(arrive) / sine;
            double b = rise.cross(leave) / sine;
            if (a * speed(mid) > 0 && b * speed(mid) > 0) {
                CubicSegment other = handled(start, leave, a, end, arrive, b);
                double otherMiss = miss(other, t0, t1, Math.min(enough, miss));
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
        CubicTerms fitted = new CubicTerms(fit);
        double most = 0;
        for (int tenths : PROBES) {
            double share = tenths / 10.0;
            double t = t0 + (t1 - t0) * share;
            double x = offsetX(t);
            double y = offsetY(t);
            double foot = foot(fitted, x, y, share);
            most = Math.max(most, Hypotenuse.of(fitted.x(foot) - x, fitted.y(foot) - y));
            if (most > enough) {
                return most;
            }
        }
        return most;
    }

    /** The foot of the perpendicular near a parameter, by Newton's rule; any place of the fit is a safe answer. */
    private static double foot(CubicTerms fit, double x, double y, double near) {
        double t = near;
        for (int round = 0; round < 4; round++) {
            double offX = fit.x(t) - x;
            double offY = fit.y(t) - y;
            double dx = fit.dx(t);
            double dy = fit.dy(t);
            double slope = dx * dx + dy * dy + (offX * fit.ddx(t) + offY * fit.ddy(t));
            if (!(slope > 0)) {
                break;
            }
            double next = Math.min(1, Math.max(0, t - (offX * dx + offY * dy) / slope));
            if (Math.abs(next - t) < 1e-5) {
                // The next step would be as small as the square of this one.
                return next;
            }
            t = next;
        }
        return t;
    }
}
