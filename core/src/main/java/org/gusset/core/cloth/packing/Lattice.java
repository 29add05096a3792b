package org.gusset.core.cloth.packing;

/**
 * The values that a coordinate may take: {@code phase + k * step} for every whole k, or {@code phase} alone where the step is 0.
 *
 * @param phase one of the values, in the strip's unit
 * @param step the distance to the next; not negative
 */
public record Lattice(double phase, double step) {
    /**
     * A lattice.
     *
     * @throws IllegalArgumentException if a number is not finite or the step is negative
     */
    public Lattice {
        if (!Double.isFinite(phase) || !Double.isFinite(step) || step < 0) {
            throw new IllegalArgumentException(
                    "a lattice needs a finite phase and a step of 0 or more: " + phase + ", " + step);
        }
    }

    /** One value and no other. */
    public static Lattice only(double value) {
        return new Lattice(value, 0);
    }

    /** The nearest value that is not below {@code value}; of a single value that one, wherever it lies. */
    public double atOrAbove(double value) {
        return step == 0 ? phase : phase + Math.ceil(less(steps(value))) * step;
    }

    /** The nearest value that is not above {@code value}; of a single value that one, wherever it lies. */
    public double atOrBelow(double value) {
        return step == 0 ? phase : phase + Math.floor(-less(-steps(value))) * step;
    }

    /** The value nearest to {@code value}. */
    public double nearest(double value) {
        return step == 0 ? phase : phase + Math.rint(steps(value)) * step;
    }

    private double steps(double value) {
        return (value - phase) / step;
    }

    /** A value that misses its place in the lattice by rounding alone counts as on it. */
    private static double less(double steps) {
        return steps - 1e-12 * (1 + Math.abs(steps));
    }
}
