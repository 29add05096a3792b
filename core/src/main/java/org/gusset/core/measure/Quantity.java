package org.gusset.core.measure;

/** A value with its dimension, in powers of mm and degrees. */
public record Quantity(double value, Dimension dimension) {
    public static Quantity number(double value) {
        return new Quantity(value, Dimension.NUMBER);
    }

    public static Quantity length(double mm) {
        return new Quantity(mm, Dimension.LENGTH);
    }

    public static Quantity angle(double degrees) {
        return new Quantity(degrees, Dimension.ANGLE);
    }

    public static Quantity of(double amount, Unit unit) {
        return new Quantity(unit.toBase(amount), unit.dimension());
    }
}
