package org.gusset.core.construct;

import org.gusset.core.diagnostic.Fault;

/** The functions of numbers; angles are in degrees. */
public enum NumberFunction {
    MIN("min"),
    MAX("max"),
    ABS("abs"),
    SQRT("sqrt"),
    /** To the nearest whole multiple of the second argument; halves away from zero. */
    ROUND("round"),
    FLOOR("floor"),
    CEIL("ceil"),
    SIN("sin"),
    COS("cos"),
    TAN("tan"),
    ASIN("asin"),
    ACOS("acos"),
    ATAN2("atan2");

    private final String word;

    NumberFunction(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    double apply(double[] x) {
        double a = x[0];
        return switch (this) {
            case MIN -> least(x);
            case MAX -> most(x);
            case ABS -> Math.abs(a);
            case SQRT -> root(a);
            case ROUND -> rounded(a, x[1]);
            case FLOOR -> Math.floor(a + 1e-12 * Math.abs(a));
            case CEIL -> Math.ceil(a - 1e-12 * Math.abs(a));
            case SIN -> sine(a);
            case COS -> sine(a + 90);
            case TAN -> tangent(a);
            case ASIN -> StrictMath.toDegrees(StrictMath.asin(inUnit(a)));
            case ACOS -> StrictMath.toDegrees(StrictMath.acos(inUnit(a)));
            case ATAN2 -> StrictMath.toDegrees(StrictMath.atan2(a, x[1]));
        };
    }

    private static double least(double[] x) {
        double least = x[0];
        for (double number : x) {
            least = Math.min(least, number);
        }
        return least;
    }

    private static double most(double[] x) {
        double most = x[0];
        for (double number : x) {
            most = Math.max(most, number);
        }
        return most;
    }

    private static double root(double a) {
        if (a < 0) {
            throw Fault.of(ConstructCode.NO_NUMBER, "why", "it takes the square root of a negative amount");
        }
        return Math.sqrt(a);
    }

    private static double rounded(double a, double step) {
        if (!(step > 0)) {
            throw Fault.of(ConstructCode.NO_NUMBER, "why", "it rounds to a step that is not positive");
        }
        // The small term lets 2.5 steps that came out as 2.4999999999999996 round as written.
        double steps = Math.floor(Math.abs(a) / step + 0.5 + 1e-9);
        return Math.copySign(steps * step, a);
    }

    private static double sine(double degrees) {
        return -org.gusset.core.geometry.Vector.atAngle(degrees).dy() + 0.0;
    }

    private static double tangent(double degrees) {
        double cos = sine(degrees + 90);
        if (cos == 0) {
            throw Fault.of(ConstructCode.NO_NUMBER, "why", "a right angle has no tangent");
        }
        return degrees % 180 == 45 ? 1 : sine(degrees) / cos;
    }

    private static double inUnit(double a) {
        if (Math.abs(a) > 1 + 1e-12) {
            throw Fault.of(ConstructCode.NO_NUMBER, "why", "no angle has a sine or cosine beyond 1");
        }
        return Math.max(-1, Math.min(1, a));
    }
}
