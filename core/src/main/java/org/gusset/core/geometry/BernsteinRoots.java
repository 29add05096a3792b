package org.gusset.core.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The roots between 0 and 1 of a polynomial in Bernstein form. Halving isolates them: a stretch whose coefficients do not
 * change sign has no root, one that changes sign once has exactly one (Descartes' rule of signs for Bernstein coefficients),
 * which Newton's rule within the bracket then finds. A double root comes out once, twice close together or not at all, as
 * rounding decides; who needs touches looks at the roots of {@link #derivative}.
 */
final class BernsteinRoots {
    /** Stretches of the parameter narrower than this hold one root at most. */
    private static final double NARROWEST = 1e-9;

    private static final double SAME = 1e-13;

    /** Newton's steps square the error, so that after one as short as this only rounding is left. */
    private static final double SETTLED = 1e-11;

    private BernsteinRoots() {}

    /** The roots in order, none of a polynomial that vanishes everywhere. */
    static List<Double> of(double... coefficients) {
        List<Double> roots = new ArrayList<>();
        boolean nothing = true;
        for (double c : coefficients) {
            nothing &= c == 0;
        }
        if (nothing) {
            return roots;
        }
        if (coefficients[0] == 0) {
            roots.add(0.0);
        }
        if (coefficients[coefficients.length - 1] == 0) {
            roots.add(1.0);
        }
        isolate(coefficients, 0, 1, roots);
        Collections.sort(roots);
        List<Double> apart = new ArrayList<>();
        for (double root : roots) {
            if (apart.isEmpty() || root - apart.get(apart.size() - 1) > SAME) {
                apart.add(root);
            }
        }
        return apart;
    }

    /** The derivative's coefficients, one fewer. */
    static double[] derivative(double[] coefficients) {
        int degree = coefficients.length - 1;
        double[] out = new double[degree];
        for (int i = 0; i < degree; i++) {
            out[i] = degree * (coefficients[i + 1] - coefficients[i]);
        }
        return out;
    }

    /** The product's coefficients. */
    static double[] product(double[] a, double[] b) {
        int m = a.length - 1;
        int n = b.length - 1;
        double[] out = new double[m + n + 1];
        for (int i = 0; i <= m; i++) {
            for (int j = 0; j <= n; j++) {
                out[i + j] += choose(m, i) * choose(n, j) / choose(m + n, i + j) * a[i] * b[j];
            }
        }
        return out;
    }

    private static double choose(int n, int k) {
        double ways = 1;
        for (int i = 1; i <= k; i++) {
            ways = ways * (n - k + i) / i;
        }
        return ways;
    }

    private static void isolate(double[] c, double t0, double t1, List<Double> roots) {
        int changes = 0;
        double sign = 0;
        for (double value : c) {
            if (value != 0) {
                if (sign != 0 && value > 0 != sign > 0) {
                    changes++;
                }
                sign = value;
            }
        }
        if (changes == 0) {
            return;
        }
        if (changes == 1) {
            roots.add(t0 + (t1 - t0) * single(c));
            return;
        }
        if (t1 - t0 < NARROWEST) {
            roots.add(0.5 * (t0 + t1));
            return;
        }
        int n = c.length;
        double[] left = new double[n];
        double[] right = c.clone();
        for (int i = 0; i < n; i++) {
            left[i] = right[0];
            for (int j = 0; j < n - 1 - i; j++) {
                right[j] = 0.5 * (right[j] + right[j + 1]);
            }
        }
        double mid = 0.5 * (t0 + t1);
        if (right[0] == 0) {
            roots.add(mid);
        }
        isolate(left, t0, mid, roots);
        isolate(right, mid, t1, roots);
    }

    /** The one root, the coefficients changing sign once. */
    private static double single(double[] c) {
        boolean rising = false;
        for (double value : c) {
            if (value != 0) {
                rising = value < 0;
                break;
            }
        }
        double[] slope = derivative(c);
        double low = 0;
        double high = 1;
        double t = 0.5;
        for (int round = 0; round < 100 && high - low > 1e-16; round++) {
            double value = value(c, t);
            if (value == 0) {
                return t;
            }
            if (value < 0 == rising) {
                low = t;
            } else {
                high = t;
            }
            double next = t - value / value(slope, t);
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - t) <= SETTLED) {
                return next;
            }
            t = next;
        }
        return t;
    }

    /** The polynomial's value by Horner's rule for Bernstein coefficients, (1 - t) and t being held apart. */
    static double value(double[] coefficients, double t) {
        int degree = coefficients.length - 1;
        double s = 1 - t;
        double power = 1;
        double choose = 1;
        double sum = coefficients[0];
        for (int i = 1; i <= degree; i++) {
            power *= t;
            choose = choose * (degree - i + 1) / i;
            sum = sum * s + choose * power * coefficients[i];
        }
        return sum;
    }
}
