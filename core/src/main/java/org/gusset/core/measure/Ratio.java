package org.gusset.core.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * An exact amount as one number over another, so that tape fractions meet the inch of 25.4 mm without a rounding in between:
 * 9 1/2 in is the double nearest to 241.3 mm, while 9.5 * 25.4 in doubles falls short of it.
 */
record Ratio(BigDecimal over, BigDecimal under) {
    private static final MathContext FINE = new MathContext(50, RoundingMode.HALF_EVEN);

    static final Ratio ZERO = new Ratio(BigDecimal.ZERO, BigDecimal.ONE);

    static Ratio of(BigDecimal whole, BigDecimal top, BigDecimal under) {
        return new Ratio(whole.multiply(under).add(top), under);
    }

    Ratio plus(Ratio other) {
        return new Ratio(over.multiply(other.under).add(other.over.multiply(under)), under.multiply(other.under));
    }

    Ratio times(BigDecimal factor) {
        return new Ratio(over.multiply(factor), under);
    }

    Ratio negated() {
        return new Ratio(over.negate(), under);
    }

    /** The nearest double; never a negative zero. */
    double value() {
        return over.divide(under, FINE).doubleValue() + 0.0;
    }

    /** What one of the unit is in mm, degrees or ones, as a decimal number. */
    static BigDecimal factor(Unit unit) {
        return BigDecimal.valueOf(unit.factor());
    }
}
