package org.gusset.core.build;

import org.gusset.core.construct.NumberFunction;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;

/** Amounts as written, and functions of amounts; meant to be imported statically. */
public final class Amounts {
    /** The ratio of a circle's circumference to its diameter. */
    public static final Num PI = new Num(new Term.Constant(Quantity.number(Math.PI), Kind.NUMBER, "pi"));

    private Amounts() {}

    public static Len mm(double amount) {
        return length(amount, Unit.MM, "mm");
    }

    public static Len cm(double amount) {
        return length(amount, Unit.CM, "cm");
    }

    public static Len inches(double amount) {
        return length(amount, Unit.IN, "in");
    }

    private static Len length(double amount, Unit unit, String sign) {
        Quantity quantity = Quantity.of(Sums.finite(amount), unit);
        return new Len(new Term.Constant(quantity, Kind.LENGTH, Sums.text(amount) + " " + sign));
    }

    public static Ang degrees(double amount) {
        return new Ang(new Term.Constant(Quantity.angle(Sums.finite(amount)), Kind.ANGLE, Sums.text(amount) + " deg"));
    }

    public static Num number(double value) {
        return new Num(Sums.number(value));
    }

    public static Truth answer(boolean yes) {
        return new Truth(new Term.Answer(yes));
    }

    // ---- the least and the most

    public static Len min(Len first, Len... others) {
        return new Len(Sums.applied(NumberFunction.MIN, first, others));
    }

    public static Len max(Len first, Len... others) {
        return new Len(Sums.applied(NumberFunction.MAX, first, others));
    }

    public static Num min(Num first, Num... others) {
        return new Num(Sums.applied(NumberFunction.MIN, first, others));
    }

    public static Num max(Num first, Num... others) {
        return new Num(Sums.applied(NumberFunction.MAX, first, others));
    }

    public static Ang min(Ang first, Ang... others) {
        return new Ang(Sums.applied(NumberFunction.MIN, first, others));
    }

    public static Ang max(Ang first, Ang... others) {
        return new Ang(Sums.applied(NumberFunction.MAX, first, others));
    }

    // ---- without sign, roots, rounding

    public static Len abs(Len of) {
        return new Len(Sums.applied(NumberFunction.ABS, Kind.LENGTH, of));
    }

    public static Num abs(Num of) {
        return new Num(Sums.applied(NumberFunction.ABS, Kind.NUMBER, of));
    }

    public static Ang abs(Ang of) {
        return new Ang(Sums.applied(NumberFunction.ABS, Kind.ANGLE, of));
    }

    /** The root of an area is a length. */
    public static Len sqrt(Area of) {
        return new Len(Sums.applied(NumberFunction.SQRT, Kind.LENGTH, of));
    }

    public static Num sqrt(Num of) {
        return new Num(Sums.applied(NumberFunction.SQRT, Kind.NUMBER, of));
    }

    /** To the nearest whole multiple of a step; halves away from zero. */
    public static Len round(Len of, Len step) {
        return new Len(Sums.applied(NumberFunction.ROUND, Kind.LENGTH, of, step));
    }

    /** To the nearest whole multiple of a step; halves away from zero. */
    public static Ang round(Ang of, Ang step) {
        return new Ang(Sums.applied(NumberFunction.ROUND, Kind.ANGLE, of, step));
    }

    /** To the nearest whole number; halves away from zero. */
    public static Num round(Num of) {
        return new Num(Sums.applied(NumberFunction.ROUND, Kind.NUMBER, of, number(1)));
    }

    public static Num floor(Num of) {
        return new Num(Sums.applied(NumberFunction.FLOOR, Kind.NUMBER, of));
    }

    public static Num ceil(Num of) {
        return new Num(Sums.applied(NumberFunction.CEIL, Kind.NUMBER, of));
    }

    // ---- angles

    public static Num sin(Ang of) {
        return new Num(Sums.applied(NumberFunction.SIN, Kind.NUMBER, of));
    }

    public static Num cos(Ang of) {
        return new Num(Sums.applied(NumberFunction.COS, Kind.NUMBER, of));
    }

    public static Num tan(Ang of) {
        return new Num(Sums.applied(NumberFunction.TAN, Kind.NUMBER, of));
    }

    public static Ang asin(Num of) {
        return new Ang(Sums.applied(NumberFunction.ASIN, Kind.ANGLE, of));
    }

    public static Ang acos(Num of) {
        return new Ang(Sums.applied(NumberFunction.ACOS, Kind.ANGLE, of));
    }

    /** The angle of a rise over a way to the right. */
    public static Ang atan2(Len up, Len right) {
        return new Ang(Sums.applied(NumberFunction.ATAN2, Kind.ANGLE, up, right));
    }

    // ---- one of two

    public static Len when(Truth condition, Len then, Len otherwise) {
        return new Len(choice(condition, then, otherwise));
    }

    public static Num when(Truth condition, Num then, Num otherwise) {
        return new Num(choice(condition, then, otherwise));
    }

    public static Ang when(Truth condition, Ang then, Ang otherwise) {
        return new Ang(choice(condition, then, otherwise));
    }

    public static Spot when(Truth condition, Spot then, Spot otherwise) {
        return new Spot(choice(condition, then, otherwise));
    }

    /** One of two lines; neither may be a guide without ends. */
    public static Line when(Truth condition, Line then, Line otherwise) {
        then.withEnds("cannot be chosen");
        otherwise.withEnds("cannot be chosen");
        return new Line(choice(condition, then, otherwise));
    }

    private static Term choice(Truth condition, Value then, Value otherwise) {
        return Term.Choice.of(condition.term(), then.term(), otherwise.term());
    }
}
