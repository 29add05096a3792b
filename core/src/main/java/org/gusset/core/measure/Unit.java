package org.gusset.core.measure;

import java.util.Locale;
import java.util.Optional;

/** The units that can be written. Lengths are held in millimetres, angles in degrees. */
public enum Unit {
    MM("mm", Dimension.LENGTH, 1),
    CM("cm", Dimension.LENGTH, 10),
    M("m", Dimension.LENGTH, 1000),
    IN("in", Dimension.LENGTH, 25.4),
    FT("ft", Dimension.LENGTH, 304.8),
    YD("yd", Dimension.LENGTH, 914.4),
    DEG("deg", Dimension.ANGLE, 1),
    RAD("rad", Dimension.ANGLE, 180 / Math.PI),
    PERCENT("%", Dimension.NUMBER, 0.01);

    private final String symbol;
    private final Dimension dimension;
    private final double factor;

    Unit(String symbol, Dimension dimension, double factor) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.factor = factor;
    }

    public String symbol() {
        return symbol;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** How many mm, degrees or ones make one of this unit. The inch is 25.4 mm (international yard agreement, 1959). */
    public double factor() {
        return factor;
    }

    /** The value in mm, degrees or ones. */
    public double toBase(double amount) {
        return this == PERCENT ? amount / 100 : amount * factor;
    }

    /** The value in this unit. */
    public double fromBase(double base) {
        return this == PERCENT ? base * 100 : base / factor;
    }

    /** The unit with a symbol, as written in the language. */
    public static Optional<Unit> of(String symbol) {
        String wanted = symbol.toLowerCase(Locale.ROOT);
        for (Unit unit : values()) {
            if (unit.symbol.equals(wanted)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
