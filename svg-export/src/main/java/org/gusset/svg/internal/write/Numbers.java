package org.gusset.svg.internal.write;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The one formatter of numbers: millimetres and degrees with at most four decimals, so that no written coordinate is off by more
 * than 0.00005 mm; no exponent, no sign on zero, no zeros at the end.
 */
public final class Numbers {
    /** How many decimals are kept. */
    public static final int DECIMALS = 4;

    private Numbers() {}

    /**
     * The number as text.
     *
     * @throws IllegalArgumentException if it is infinite or not a number
     */
    public static String text(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("Only finite numbers can be drawn, not " + value + ".");
        }
        BigDecimal rounded = new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
