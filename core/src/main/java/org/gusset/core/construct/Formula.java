package org.gusset.core.construct;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.graph.Values;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;

/** A number computed from the numbers among a node's inputs, in powers of mm and degrees. */
public sealed interface Formula {
    /**
     * The value.
     *
     * @throws Fault if it is not a finite number
     */
    double number(Values in);

    /** The sum in words, each name with its value: {@code (chest 104 cm + ease 12 cm) / 4}. */
    String words(Values in, Function<Quantity, String> show);

    /** A number as written. */
    record Constant(Quantity quantity) implements Formula {
        @Override
        public double number(Values in) {
            return quantity.value();
        }

        @Override
        public String words(Values in, Function<Quantity, String> show) {
            return show.apply(quantity);
        }
    }

    /** The value of an input; {@code name} is empty if it has none. */
    record Input(int index, String name, Dimension dimension) implements Formula {
        @Override
        public double number(Values in) {
            return in.number(index);
        }

        @Override
        public String words(Values in, Function<Quantity, String> show) {
            String value = show.apply(new Quantity(in.number(index), dimension));
            return name.isEmpty() ? value : name + " " + value;
        }
    }

    /** The negative. */
    record Minus(Formula operand) implements Formula {
        @Override
        public double number(Values in) {
            return -operand.number(in);
        }

        @Override
        public String words(Values in, Function<Quantity, String> show) {
            return "-" + bracketed(operand, 3, in, show);
        }
    }

    /** Two operands and a sign. */
    record Arithmetic(Sign sign, Formula left, Formula right) implements Formula {
        @Override
        public double number(Values in) {
            double a = part(left, in);
            double b = part(right, in);
            return switch (sign) {
                case PLUS -> finite(a + b);
                case MINUS -> finite(a - b);
                case TIMES -> finite(a * b);
                case OVER -> divided(a, b);
            };
        }

        @Override
        public String words(Values in, Function<Quantity, String> show) {
            int mine = sign.strength;
            return bracketed(left, mine, in, show) + " " + sign.text + " " + bracketed(right, mine + 1, in, show);
        }
    }

    /** A function of numbers. */
    record Applied(NumberFunction function, List<Formula> arguments) implements Formula {
        public Applied {
            arguments = List.copyOf(arguments);
        }

        @Override
        public double number(Values in) {
            double[] numbers = new double[arguments.size()];
            for (int i = 0; i < numbers.length; i++) {
                numbers[i] = part(arguments.get(i), in);
            }
            return finite(function.apply(numbers));
        }

        @Override
        public String words(Values in, Function<Quantity, String> show) {
            return function.word()
                    + arguments.stream().map(a -> a.words(in, show)).collect(Collectors.joining(", ", "(", ")"));
        }
    }

    /** One of two by a condition; only the one that counts is asked for. */
    record Choice(Condition condition, Formula then, Formula otherwise) implements Formula {
        @Override
        public double number(Values in) {
            return condition.holds(in) ? then.number(in) : otherwise.number(in);
        }

        @Override
        public String words(Values in, Function<Quantity, String> show) {
            return (condition.holds(in) ? then : otherwise).words(in, show);
        }
    }

    /** The four operations. */
    enum Sign {
        PLUS("+", 1),
        MINUS("-", 1),
        TIMES("*", 2),
        OVER("/", 2);

        private final String text;
        private final int strength;

        Sign(String text, int strength) {
            this.text = text;
            this.strength = strength;
        }
    }

    /** The number of a part. Names and numbers, which are most parts, are asked directly: a call through the interface takes longer. */
    private static double part(Formula part, Values in) {
        if (part instanceof Input input) {
            return in.number(input.index);
        }
        return part instanceof Constant constant ? constant.quantity.value() : part.number(in);
    }

    private static double divided(double a, double b) {
        if (b == 0) {
            throw Fault.of(ConstructCode.NO_NUMBER, "why", "it divides by zero");
        }
        return finite(a / b);
    }

    private static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw Fault.of(
                    ConstructCode.NO_NUMBER,
                    "why",
                    Double.isNaN(value) ? "it has no value" : "it is beyond all bounds");
        }
        return value;
    }

    private static String bracketed(Formula inner, int strength, Values in, Function<Quantity, String> show) {
        Formula shown = inner;
        while (shown instanceof Choice choice) {
            shown = choice.condition().holds(in) ? choice.then() : choice.otherwise();
        }
        String words = shown.words(in, show);
        boolean brackets = shown instanceof Arithmetic arithmetic && arithmetic.sign().strength < strength;
        return brackets ? "(" + words + ")" : words;
    }
}
