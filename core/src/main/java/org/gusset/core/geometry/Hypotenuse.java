package org.gusset.core.geometry;

/**
 * The length of a hypotenuse. The square root is exact by IEEE 754 on every machine, and many times faster than
 * {@link StrictMath#hypot}, which is left for legs whose squares would leave the range of numbers.
 */
final class Hypotenuse {
    private static final double TINY = 1e-280;
    private static final double HUGE = 1e300;

    private Hypotenuse() {}

    static double of(double a, double b) {
        double square = a * a + b * b;
        if (square > TINY && square < HUGE) {
            return Math.sqrt(square);
        }
        return a == 0 || b == 0 ? Math.abs(a) + Math.abs(b) : StrictMath.hypot(a, b);
    }
}
