package org.gusset.core.geometry;

/**
 * Arc length of cubics by Gauss-Legendre quadrature of 16 points, the interval halved until the halves agree with the whole to
 * 1e-13 of the control polygon's length. The error is far below that, so that the number of halvings cannot be seen in the
 * result and a length may be differentiated numerically.
 */
final class ArcLength {
    private static final double AGREE = 1e-13;
    private static final int DEEPEST = 45;
    private static final int ROUNDS = 100;

    /** Nodes on [-1, 1], the positive ones (roots of the Legendre polynomial of degree 16). */
    private static final double[] NODES = {
        0.0950125098376374402,
        0.2816035507792589132,
        0.4580167776572273863,
        0.6178762444026437484,
        0.7554044083550030339,
        0.8656312023878317439,
        0.9445750230732325761,
        0.9894009349916499326
    };

    private static final double[] WEIGHTS = {
        0.1894506104550684963,
        0.1826034150449235889,
        0.1691565193950025382,
        0.1495959888165767321,
        0.1246289712555338720,
        0.0951585116824927848,
        0.0622535239386478929,
        0.0271524594117540949
    };

    private final CubicSegment curve;
    private final Vector leave;
    private final Vector middle;
    private final Vector arrive;
    private final double agree;

    private ArcLength(CubicSegment curve) {
        this.curve = curve;
        this.leave = curve.control1().minus(curve.start()).times(3);
        this.middle = curve.control2().minus(curve.control1()).times(6);
        this.arrive = curve.end().minus(curve.control2()).times(3);
        this.agree = AGREE * curve.polygonLength();
    }

    /** The arc length in mm between two parameters; negative if they are in the other order. */
    static double between(CubicSegment curve, double t0, double t1) {
        return new ArcLength(curve).between(t0, t1);
    }

    /** The parameter at an arc length in mm from the start, clamped to 0 and 1: Newton's rule, safeguarded by halving. */
    static double parameterAt(CubicSegment curve, double length) {
        return new ArcLength(curve).parameterAt(length);
    }

    private double between(double t0, double t1) {
        return refined(t0, t1, rule(t0, t1), 0);
    }

    private double refined(double t0, double t1, double whole, int depth) {
        double mid = 0.5 * (t0 + t1);
        double first = rule(t0, mid);
        double second = rule(mid, t1);
        if (depth >= DEEPEST || !(Math.abs(first + second - whole) > agree)) {
            return first + second;
        }
        return refined(t0, mid, first, depth + 1) + refined(mid, t1, second, depth + 1);
    }

    private double rule(double t0, double t1) {
        double half = 0.5 * (t1 - t0);
        double mid = 0.5 * (t0 + t1);
        double sum = 0;
        for (int i = 0; i < NODES.length; i++) {
            double off = half * NODES[i];
            sum += WEIGHTS[i] * (speed(mid - off) + speed(mid + off));
        }
        return sum * half;
    }

    private double speed(double t) {
        double u = 1 - t;
        double a = u * u;
        double b = u * t;
        double c = t * t;
        double dx = a * leave.dx() + b * middle.dx() + c * arrive.dx();
        double dy = a * leave.dy() + b * middle.dy() + c * arrive.dy();
        return Math.sqrt(dx * dx + dy * dy);
    }

    private double parameterAt(double length) {
        double whole = between(0, 1);
        if (!(length > 0)) {
            return 0;
        } else if (length >= whole) {
            return 1;
        }
        double low = 0;
        double high = 1;
        double t = length / whole;
        double miss = between(0, t) - length;
        double close = 4e-16 * curve.polygonLength();
        for (int round = 0; round < ROUNDS && Math.abs(miss) > close && high - low > 1e-16; round++) {
            if (miss > 0) {
                high = t;
            } else {
                low = t;
            }
            double next = t - miss / speed(t);
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            if (next == t) {
                break;
            }
            miss += between(t, next);
            t = next;
        }
        return t;
    }
}
