package org.gusset.benchmarks.formula;

import java.util.SortedSet;
import java.util.TreeSet;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Formula;

/** A formula as text: the four operations, functions and choices, its inputs as {@code v0}, {@code v1} and so on. */
public final class InfixText {
    private final Formula formula;
    private final SortedSet<Integer> inputs = new TreeSet<>();

    private InfixText(Formula formula) {
        this.formula = formula;
    }

    static InfixText of(Formula formula) {
        InfixText text = new InfixText(formula);
        text.text("", true);
        return text;
    }

    static String name(int input) {
        return "v" + input;
    }

    /** The inputs that it speaks of, in order. */
    public SortedSet<Integer> inputs() {
        return inputs;
    }

    /**
     * The text.
     *
     * @param prefix what stands before a function's name
     * @param words true where words can be compared and {@code a ? b : c} chooses; else a choice is {@code pick(flag, b, c)}, the flag
     *     being 1 or 0
     */
    String text(String prefix, boolean words) {
        StringBuilder out = new StringBuilder();
        write(formula, prefix, words, out);
        return out.toString();
    }

    private void write(Formula part, String prefix, boolean words, StringBuilder out) {
        if (part instanceof Formula.Constant constant) {
            out.append(constant.quantity().value());
        } else if (part instanceof Formula.Input input) {
            out.append(variable(input.index()));
        } else if (part instanceof Formula.Minus minus) {
            out.append("(-");
            write(minus.operand(), prefix, words, out);
            out.append(')');
        } else if (part instanceof Formula.Arithmetic arithmetic) {
            out.append('(');
            write(arithmetic.left(), prefix, words, out);
            out.append(
                    switch (arithmetic.sign()) {
                        case PLUS -> " + ";
                        case MINUS -> " - ";
                        case TIMES -> " * ";
                        case OVER -> " / ";
                    });
            write(arithmetic.right(), prefix, words, out);
            out.append(')');
        } else if (part instanceof Formula.Applied applied) {
            out.append(prefix).append(applied.function().word()).append('(');
            for (int i = 0; i < applied.arguments().size(); i++) {
                out.append(i == 0 ? "" : ", ");
                write(applied.arguments().get(i), prefix, words, out);
            }
            out.append(')');
        } else {
            choice((Formula.Choice) part, prefix, words, out);
        }
    }

    private void choice(Formula.Choice choice, String prefix, boolean words, StringBuilder out) {
        if (!(choice.condition() instanceof Condition.WordIs is)) {
            throw new IllegalArgumentException("no interpreter is told yet how to read " + choice.condition());
        }
        String variable = variable(is.index());
        out.append(words ? "(" + variable + " == '" + is.word() + "' ? " : "pick(" + variable + ", ");
        write(choice.then(), prefix, words, out);
        out.append(words ? " : " : ", ");
        write(choice.otherwise(), prefix, words, out);
        out.append(')');
    }

    private String variable(int input) {
        inputs.add(input);
        return name(input);
    }
}
