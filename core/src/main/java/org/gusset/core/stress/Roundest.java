package org.gusset.core.stress;

/** Numbers that are easy to say. */
final class Roundest {
    private static final double[] STEPS = {
        100, 50, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002, 0.001, 1e-4, 1e-5, 1e-6
    };

    private Roundest() {}

    /** The roundest number from {@code kept} on and below {@code out}, which is larger. */
    static double below(double out, double kept) {
        for (double step : STEPS) {
            double round = step >= 1
                    ? step * (Math.ceil(out / step) - 1)
                    : (Math.ceil(out * inverse(step)) - 1) / inverse(step);
            if (round >= kept && round < out) {
                return round + 0.0;
            }
        }
        return kept;
    }

    /** The roundest number above {@code out} and up to {@code kept}, which is larger. */
    static double above(double out, double kept) {
        return 0.0 - below(-out, -kept);
    }

    /** Whole, so that a tenth comes out as the double that is written 0.1. */
    private static double inverse(double step) {
        return Math.rint(1 / step);
    }
}
