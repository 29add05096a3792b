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

    private static final int ONE = 10_000;

    /** Below this, ten thousand times a number is a double whose fraction is known to better than {@link #DOUBT}. */
    private static final double SMALL = 1e8;

    /** So close to the middle between two last digits, the exact value of the double decides. */
    private static final double DOUBT = 1e-3;

    private Numbers() {}

    /**
     * The number as text.
     *
     * @throws IllegalArgumentException if it is infinite or not a number
     */
    public static String text(double value) {
        StringBuilder out = new StringBuilder(16);
        append(out, value);
        return out.toString();
    }

    /**
     * Writes the number behind what is there.
     *
     * @throws IllegalArgumentException if it is infinite or not a number
     */
    public static void append(StringBuilder out, double value) {
        double scaled = Math.abs(value) * ONE;
        long units = (long) scaled;
        double rest = scaled - units;
        if (!(scaled < SMALL * ONE) || Math.abs(rest - 0.5) < DOUBT) {
            out.append(exact(value));
            return;
        }
        if (rest > 0.5) {
            units++;
        }
        if (value < 0 && units != 0) {
            out.append('-');
        }
        out.append(units / ONE);
        int decimals = (int) (units % ONE);
        if (decimals != 0) {
            out.append('.');
            for (int place = ONE / 10; decimals != 0; place /= 10) {
                out.append((char) ('0' + decimals / place));
                decimals %= place;
            }
        }
    }

    private static String exact(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("Only finite numbers can be drawn, not " + value + ".");
        }
        BigDecimal rounded = new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
