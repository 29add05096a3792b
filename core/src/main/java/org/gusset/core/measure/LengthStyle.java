package org.gusset.core.measure;

import org.gusset.core.diagnostic.Wording;

/**
 * How lengths are shown: a unit, and either decimals or tape fractions. Rounding is for the eye only and never feeds back.
 *
 * @param unit mm, cm, m, in, ft or yd
 * @param denominator the finest tape fraction, a power of two up to 64; 0 for decimals
 * @param decimals decimals at most, where the denominator is 0; zeros at the end are left out
 */
public record LengthStyle(Unit unit, int denominator, int decimals) {
    public static final LengthStyle MM = new LengthStyle(Unit.MM, 0, 1);
    public static final LengthStyle CM = new LengthStyle(Unit.CM, 0, 2);
    /** Inches with fractions to the sixteenth. */
    public static final LengthStyle INCHES = new LengthStyle(Unit.IN, 16, 0);

    /** The length with its unit: {@code 24.1 cm}, {@code 9 1/2 in}, {@code 0 in}, {@code -3/8 in}. */
    public String show(double mm) {
        throw new UnsupportedOperationException();
    }

    /** The length that {@link #show} writes, in mm. */
    public double rounded(double mm) {
        throw new UnsupportedOperationException();
    }

    /** Any quantity: lengths in this style, areas in its square unit, angles as {@code 12.5 deg}, numbers plain. */
    public String show(Quantity quantity) {
        throw new UnsupportedOperationException();
    }

    /** English sentences with lengths in this style. */
    public Wording wording() {
        throw new UnsupportedOperationException();
    }
}
