package org.gusset.core.cloth.packing;

import java.math.BigDecimal;

/**
 * The side of a line on which a point lies, without error: in doubles where the sum of the roundings cannot change the sign (the first stage
 * of J. R. Shewchuk, "Adaptive precision floating-point arithmetic and fast robust geometric predicates", 1997, from memory), else in decimal
 * numbers, which hold every double exactly.
 */
final class Exact {
    /** The bound of Shewchuk's first stage is (3 + 16 e) e with e = 2^-53; this is a little more. */
    private static final double BOUND = 3.4e-16;

    private Exact() {}

    /** 1 if c lies to the left of the way from a to b (x axis toward y axis), -1 if to the right, 0 if on the line. */
    static int side(double ax, double ay, double bx, double by, double cx, double cy) {
        double left = (ax - cx) * (by - cy);
        double right = (ay - cy) * (bx - cx);
        double det = left - right;
        if (Math.abs(det) > BOUND * (Math.abs(left) + Math.abs(right)) && Math.abs(det) > 1e-290) {
            return det > 0 ? 1 : -1;
        }
        return side(
                new BigDecimal(ax),
                new BigDecimal(ay),
                new BigDecimal(bx),
                new BigDecimal(by),
                new BigDecimal(cx),
                new BigDecimal(cy));
    }

    static int side(BigDecimal ax, BigDecimal ay, BigDecimal bx, BigDecimal by, BigDecimal cx, BigDecimal cy) {
        return ax.subtract(cx)
                .multiply(by.subtract(cy))
                .subtract(ay.subtract(cy).multiply(bx.subtract(cx)))
                .signum();
    }
}
