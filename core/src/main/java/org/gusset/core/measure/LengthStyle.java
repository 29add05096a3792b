package org.gusset.core.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.function.Function;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Wording;

/**
 * How lengths are shown: a unit, and either decimals or tape fractions. Rounding is for the eye only and never feeds back.
 * Halves round up in magnitude, fractions are reduced and carried ({@code 16 in}, never {@code 15 8/8 in}), and zero has no sign.
 * Feet with fractions are shown as feet and inches: {@code 5 ft 3 1/2 in}.
 *
 * @param unit mm, cm, m, in, ft or yd
 * @param denominator the finest tape fraction, a power of two up to 64, for in (ft: of the inch) and yd; 0 for decimals
 * @param decimals decimals at most, where the denominator is 0; zeros at the end are left out
 */
public record LengthStyle(Unit unit, int denominator, int decimals) {
    public static final LengthStyle MM = new LengthStyle(Unit.MM, 0, 1);
    public static final LengthStyle CM = new LengthStyle(Unit.CM, 0, 2);
    /** Inches with fractions to the sixteenth. */
    public static final LengthStyle INCHES = new LengthStyle(Unit.IN, 16, 0);

    private static final String NO_VALUE = "no value";

    /**
     * A style.
     *
     * @throws IllegalArgumentException if the unit is not one of length, if fractions are asked for in a metric unit or in parts
     *     that no tape has, or if there are more than 9 decimals
     */
    public LengthStyle {
        boolean tape = unit == Unit.IN || unit == Unit.FT || unit == Unit.YD;
        if (!unit.dimension().equals(Dimension.LENGTH)) {
            throw new IllegalArgumentException(unit.symbol() + " is not a unit of length");
        }
        if (denominator != 0 && (!tape || denominator < 0 || denominator > 64 || Integer.bitCount(denominator) != 1)) {
            throw new IllegalArgumentException("no tape fraction of " + unit.symbol() + " to 1/" + denominator);
        }
        if (decimals < 0 || decimals > 9) {
            throw new IllegalArgumentException("decimals must be 0 to 9: " + decimals);
        }
    }

    /** Written out for the start of short runs, see docs/decisions/0034. */
    @Override
    public String toString() {
        return unit.symbol() + (denominator == 0 ? " with " + decimals + " decimals" : " to 1/" + denominator);
    }

    /** The length with its unit: {@code 24.1 cm}, {@code 9 1/2 in}, {@code 0 in}, {@code -3/8 in}. */
    public String show(double mm) {
        if (!Double.isFinite(mm)) {
            return NO_VALUE;
        }
        if (denominator == 0) {
            return decimal(steps(mm, unit, BigInteger.TEN.pow(decimals)), decimals) + " " + unit.symbol();
        }
        return unit == Unit.FT ? feet(mm) : fraction(steps(mm, unit, BigInteger.valueOf(denominator)), unit);
    }

    /** The length that {@link #show} writes, in mm. */
    public double rounded(double mm) {
        if (!Double.isFinite(mm)) {
            return mm;
        }
        Unit counted = denominator > 0 && unit == Unit.FT ? Unit.IN : unit;
        BigInteger parts = denominator > 0 ? BigInteger.valueOf(denominator) : BigInteger.TEN.pow(decimals);
        return new Ratio(new BigDecimal(steps(mm, counted, parts)), new BigDecimal(parts))
                .times(Ratio.factor(counted))
                .value();
    }

    /** Any quantity: lengths in this style, areas in its square unit, angles as {@code 12.5 deg}, numbers plain. */
    public String show(Quantity quantity) {
        Dimension dimension = quantity.dimension();
        double value = quantity.value();
        if (dimension.equals(Dimension.LENGTH)) {
            return show(value);
        }
        if (!Double.isFinite(value)) {
            return NO_VALUE;
        }
        if (dimension.equals(Dimension.NUMBER)) {
            return plain(BigDecimal.valueOf(value), 4);
        }
        if (dimension.equals(Dimension.ANGLE)) {
            return plain(BigDecimal.valueOf(value), 2) + " deg";
        }
        BigDecimal shown = BigDecimal.valueOf(value);
        BigDecimal factor = Ratio.factor(unit).pow(Math.abs(dimension.length()));
        shown = dimension.length() < 0 ? shown.multiply(factor) : shown.divide(factor, 12, RoundingMode.HALF_UP);
        return plain(shown, Math.max(2, decimals))
                + power(" " + unit.symbol(), dimension.length())
                + power(" deg", dimension.angle());
    }

    /**
     * English sentences with lengths and areas in this style; a length that is not zero but would be shown as zero gets decimals, so that
     * a gap never reads as none.
     */
    public Wording wording() {
        return wording(Phrase::english);
    }

    /** Sentences of another language with lengths and areas in this style; see {@link Wording#filling(Function, Function)}. */
    public Wording wording(Function<Phrase, String> template) {
        return Wording.filling(this::inWords, template);
    }

    private String inWords(Fact fact) {
        if (fact instanceof Fact.Length length) {
            return inWords(length.mm());
        }
        return fact instanceof Fact.Area area
                ? show(new Quantity(area.squareMm(), Dimension.AREA))
                : Wording.plain(fact);
    }

    private String inWords(double mm) {
        if (mm == 0 || !Double.isFinite(mm) || rounded(mm) != 0) {
            return show(mm);
        }
        BigDecimal amount = BigDecimal.valueOf(mm).divide(Ratio.factor(unit), 12, RoundingMode.HALF_UP);
        int zeros = Math.max(0, amount.scale() - amount.precision());
        return plain(amount, Math.min(zeros + 2, 12)) + " " + unit.symbol();
    }

    private String feet(double mm) {
        BigInteger[] split = steps(mm, Unit.IN, BigInteger.valueOf(denominator))
                .abs()
                .divideAndRemainder(BigInteger.valueOf(12L * denominator));
        if (split[0].signum() == 0) {
            BigInteger inches = mm < 0 ? split[1].negate() : split[1];
            return inches.signum() == 0 ? "0 ft" : fraction(inches, Unit.IN);
        }
        String inches = split[1].signum() == 0 ? "" : " " + fraction(split[1], Unit.IN);
        return (mm < 0 ? "-" : "") + split[0] + " ft" + inches;
    }

    private String fraction(BigInteger steps, Unit of) {
        BigInteger under = BigInteger.valueOf(denominator);
        BigInteger[] split = steps.abs().divideAndRemainder(under);
        StringBuilder out = new StringBuilder(steps.signum() < 0 ? "-" : "");
        if (split[0].signum() != 0 || split[1].signum() == 0) {
            out.append(split[0]);
        }
        if (split[1].signum() != 0) {
            BigInteger common = split[1].gcd(under);
            out.append(split[0].signum() != 0 ? " " : "")
                    .append(split[1].divide(common))
                    .append('/')
                    .append(under.divide(common));
        }
        return out.append(' ').append(of.symbol()).toString();
    }

    /** How many of the smallest shown parts of a unit the length has, halves rounded up in magnitude. */
    private static BigInteger steps(double mm, Unit unit, BigInteger parts) {
        // The shortest decimal form of the double decides ties, so 2.05 mm rounds as it reads.
        return BigDecimal.valueOf(mm)
                .multiply(new BigDecimal(parts))
                .divide(Ratio.factor(unit), 0, RoundingMode.HALF_UP)
                .toBigInteger();
    }

    private static String decimal(BigInteger steps, int decimals) {
        return plain(new BigDecimal(steps, decimals), decimals);
    }

    private static String plain(BigDecimal amount, int decimals) {
        BigDecimal rounded = amount.setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String power(String symbol, int power) {
        if (power == 0) {
            return "";
        }
        return power == 1 ? symbol : power == 2 ? symbol + "²" : power == 3 ? symbol + "³" : symbol + "^" + power;
    }
}
