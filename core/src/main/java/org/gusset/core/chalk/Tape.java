package org.gusset.core.chalk;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Unit;

/**
 * The tape with which marks are set off: all distances are rounded to its smallest part.
 *
 * @param part the smallest part in mm
 * @param style how distances are written, so that every multiple of the part is written in full
 */
public record Tape(BigDecimal part, LengthStyle style) {
    private static final BigDecimal INCH = new BigDecimal("25.4");

    /** A millimetre, written in centimetres. */
    public static final Tape CENTIMETRES = new Tape(BigDecimal.ONE, new LengthStyle(Unit.CM, 0, 1));

    /** A millimetre, written in millimetres. */
    public static final Tape MILLIMETRES = new Tape(BigDecimal.ONE, new LengthStyle(Unit.MM, 0, 0));

    /** A sixteenth of an inch. */
    public static final Tape INCHES = new Tape(INCH.divide(BigDecimal.valueOf(16)), new LengthStyle(Unit.IN, 16, 0));

    /** The usual tape of a unit: a millimetre, or a sixteenth of an inch. */
    public static Tape of(Unit unit) {
        return unit == Unit.IN ? INCHES : unit == Unit.MM ? MILLIMETRES : CENTIMETRES;
    }

    /**
     * A tape with another smallest part: of inches 1 in, 1/2 in and so on to 1/64 in; of the metric units 0.5, 1, 2, 5 or 10 mm.
     * Empty if no tape has such a part.
     *
     * @param mm the part in mm
     */
    public static Optional<Tape> of(Unit unit, double mm) {
        if (unit == Unit.IN) {
            for (int parts = 1; parts <= 64; parts *= 2) {
                BigDecimal part = INCH.divide(BigDecimal.valueOf(parts));
                if (Math.abs(part.doubleValue() - mm) < 1e-9) {
                    return Optional.of(new Tape(part, new LengthStyle(Unit.IN, parts, 0)));
                }
            }
            return Optional.empty();
        }
        for (String part : new String[] {"0.5", "1", "2", "5", "10"}) {
            BigDecimal exact = new BigDecimal(part);
            if (Math.abs(exact.doubleValue() - mm) < 1e-9) {
                int decimals = exact.scale() + (unit == Unit.CM ? 1 : 0);
                return Optional.of(new Tape(exact, new LengthStyle(unit == Unit.MM ? Unit.MM : Unit.CM, 0, decimals)));
            }
        }
        return Optional.empty();
    }

    /** The multiple of the smallest part that is nearest to a distance, halves away from zero. */
    public double rounded(double mm) {
        return BigDecimal.valueOf(mm)
                .divide(part, 0, RoundingMode.HALF_UP)
                .multiply(part)
                .doubleValue();
    }

    /** The rounded distance in words. */
    public String show(double mm) {
        return style.show(rounded(mm));
    }

    /** The error of rounding: how far a distance may be off, half the smallest part, in mm. */
    public double error() {
        return part.doubleValue() / 2;
    }

    /** How far apart the offsets of a curve are at the most: 1 in or 2 cm. */
    double step() {
        return style.unit() == Unit.IN ? 25.4 : 20;
    }
}
