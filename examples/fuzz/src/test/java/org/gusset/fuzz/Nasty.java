package org.gusset.fuzz;

import java.util.List;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;

/** Numbers that make trouble. */
final class Nasty {
    private static final List<Double> DOUBLES = List.of(
            0.0,
            -0.0,
            1e-9,
            1e-300,
            Double.MIN_VALUE,
            -1e-300,
            1.0,
            25.4,
            100.0,
            400.0,
            1000.0,
            1000.0000000001,
            -50.0,
            1e6,
            1e9,
            1e15,
            9007199254740993.0,
            1e100,
            1e154,
            1e155,
            1e300,
            Double.MAX_VALUE,
            -Double.MAX_VALUE,
            Double.POSITIVE_INFINITY,
            Double.NaN);

    private static final List<String> NUMBERS = List.of(
            "0",
            "1",
            "2",
            "3",
            "10",
            "0.5",
            "1/3",
            "20",
            "20.0000001",
            "100",
            "360",
            "90",
            "180",
            "1000",
            "0.001",
            "0.0000001",
            "0.000000000000000000000000000001",
            "1000000",
            "999999",
            "0.3333333333333333",
            "1" + "0".repeat(15));

    private Nasty() {}

    static double number(Bytes in) {
        return in.of(DOUBLES);
    }

    /** As it is written in a draft, without a unit. */
    static String written(Bytes in) {
        return in.of(NUMBERS);
    }

    /** Of a body: mostly a length. */
    static Quantity quantity(Bytes in) {
        double value = number(in);
        return switch (in.below(8)) {
            case 6 -> Quantity.angle(value);
            case 7 -> new Quantity(value, in.flip() ? Dimension.NUMBER : Dimension.AREA);
            default -> Quantity.length(value);
        };
    }
}
