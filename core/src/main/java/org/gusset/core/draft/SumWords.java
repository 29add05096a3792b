package org.gusset.core.draft;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.gusset.core.construct.Compute;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.NumberFunction;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.graph.Definition;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Values;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Quantity;

/** Sums in words before any measure is taken: measures by name, all else as values. {@code waist + 10 cm}. */
final class SumWords {
    private static final int SUM = 1;
    private static final int PRODUCT = 2;
    private static final int WHOLE = 3;

    private final Evaluation withoutBody;
    private final LengthStyle style;

    SumWords(Evaluation withoutBody, LengthStyle style) {
        this.withoutBody = withoutBody;
        this.style = style;
    }

    /** The words, and how strongly they hold together: whether they need brackets beside a stronger sign. */
    private record Told(String words, int strength) {
        String bracketed(int needed) {
            return strength < needed ? "(" + words + ")" : words;
        }
    }

    /** What a node computes. */
    String of(Handle<?> node) {
        return node(node).words();
    }

    /** What a formula among a node's own computes. */
    String of(Formula formula, Handle<?> of) {
        return formula(formula, withoutBody.graph().definition(of)).words();
    }

    private Told node(Handle<?> handle) {
        Definition<?> definition = withoutBody.graph().definition(handle);
        if (definition.operation() instanceof Given.Measure measure) {
            return new Told(spoken(measure.name()), WHOLE);
        } else if (definition.operation() instanceof Compute.Number number) {
            return formula(number.formula(), definition);
        }
        return new Told(handle.named() ? spoken(handle.name()) : "what the draft works out", WHOLE);
    }

    private Told formula(Formula formula, Definition<?> of) {
        Values in = withoutBody.inputsOf(of.handle());
        Optional<String> value = value(formula, in);
        if (value.isPresent()) {
            return new Told(value.get(), WHOLE);
        }
        if (formula instanceof Formula.Input input) {
            return node(of.inputs().get(input.index()));
        } else if (formula instanceof Formula.Minus minus) {
            return new Told("-" + formula(minus.operand(), of).bracketed(WHOLE), PRODUCT);
        } else if (formula instanceof Formula.Arithmetic arithmetic) {
            return arithmetic(arithmetic, of);
        } else if (formula instanceof Formula.Applied applied) {
            return new Told(applied(applied, of), WHOLE);
        } else if (formula instanceof Formula.Choice choice) {
            return choice(choice, of, in);
        }
        throw new IllegalStateException("a formula of an unknown kind");
    }

    private Told arithmetic(Formula.Arithmetic arithmetic, Definition<?> of) {
        boolean sum = arithmetic.sign() == Formula.Sign.PLUS || arithmetic.sign() == Formula.Sign.MINUS;
        int strength = sum ? SUM : PRODUCT;
        String sign = switch (arithmetic.sign()) {
            case PLUS -> " + ";
            case MINUS -> " - ";
            case TIMES -> " * ";
            case OVER -> " / ";
        };
        return new Told(
                formula(arithmetic.left(), of).bracketed(strength)
                        + sign
                        + formula(arithmetic.right(), of).bracketed(strength + 1),
                strength);
    }

    private String applied(Formula.Applied applied, Definition<?> of) {
        List<String> arguments =
                applied.arguments().stream().map(a -> formula(a, of).words()).toList();
        if (applied.function() == NumberFunction.MAX) {
            return "the greatest of " + String.join(" and ", arguments);
        } else if (applied.function() == NumberFunction.MIN) {
            return "the least of " + String.join(" and ", arguments);
        }
        return applied.function().word() + arguments.stream().collect(Collectors.joining(", ", "(", ")"));
    }

    private Told choice(Formula.Choice choice, Definition<?> of, Values in) {
        try {
            return formula(choice.condition().holds(in) ? choice.then() : choice.otherwise(), of);
        } catch (Fault fault) {
            Told then = formula(choice.then(), of);
            Told otherwise = formula(choice.otherwise(), of);
            return new Told(then.words() + condition(choice.condition(), of, false) + ", else " + otherwise.words(), 0);
        }
    }

    private String condition(Condition condition, Definition<?> of, boolean denied) {
        if (condition instanceof Condition.Not not) {
            return condition(not.condition(), of, !denied);
        } else if (condition instanceof Condition.Compared compared) {
            String sign = switch (compared.relation()) {
                case LESS -> denied ? " >= " : " < ";
                case AT_MOST -> denied ? " > " : " <= ";
                case ALIKE -> denied ? " is not " : " is ";
            };
            return " if " + formula(compared.left(), of).words() + sign
                    + formula(compared.right(), of).words();
        }
        return " on a condition";
    }

    /** The value of a formula that rests on no measure, where its dimension is plain. */
    private Optional<String> value(Formula formula, Values in) {
        Optional<Dimension> dimension = dimension(formula);
        if (dimension.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(style.show(new Quantity(formula.number(in), dimension.get())));
        } catch (Fault fault) {
            return Optional.empty();
        }
    }

    private static Optional<Dimension> dimension(Formula formula) {
        if (formula instanceof Formula.Constant constant) {
            return Optional.of(constant.quantity().dimension());
        } else if (formula instanceof Formula.Input input) {
            return Optional.of(input.dimension());
        } else if (formula instanceof Formula.Minus minus) {
            return dimension(minus.operand());
        } else if (formula instanceof Formula.Arithmetic arithmetic) {
            Optional<Dimension> left = dimension(arithmetic.left());
            Optional<Dimension> right = dimension(arithmetic.right());
            return left.flatMap(l -> right.map(r -> switch (arithmetic.sign()) {
                case PLUS, MINUS -> l;
                case TIMES -> l.times(r);
                case OVER -> l.over(r);
            }));
        } else if (formula instanceof Formula.Applied applied
                && (applied.function() == NumberFunction.MAX || applied.function() == NumberFunction.MIN)) {
            return dimension(applied.arguments().get(0));
        }
        return Optional.empty();
    }

    private static String spoken(String name) {
        return name.replace('_', ' ');
    }
}
