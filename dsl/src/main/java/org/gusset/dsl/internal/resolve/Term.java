package org.gusset.dsl.internal.resolve;

import java.util.List;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.NumberFunction;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.graph.Operation;
import org.gusset.core.measure.Quantity;

/** A checked expression: every name is known, every kind and dimension is right. */
public sealed interface Term {
    Type type();

    Span span();

    /** The piece in whose frame a shape lies; empty for amounts and for shapes that fit any frame, such as the origin. */
    default String frame() {
        return "";
    }

    /** A number as written. */
    record Constant(Quantity quantity, Span span) implements Term {
        @Override
        public Type type() {
            return new Type.Amount(quantity.dimension());
        }
    }

    /** Yes or no. */
    record Answer(boolean yes, Span span) implements Term {
        @Override
        public Type type() {
            return Type.TRUTH;
        }
    }

    /** A word out of a choice's words. */
    record Word(String word, Type type, Span span) implements Term {}

    /** Something that has a name. */
    record Ref(Symbol symbol, Span span) implements Term {
        @Override
        public Type type() {
            return symbol.type();
        }

        @Override
        public String frame() {
            if (symbol.role() == Symbol.Role.ARGUMENT) {
                Term argument = symbol.definition();
                return argument == null ? "" : argument.frame();
            }
            return symbol.type().shape() ? symbol.scope().piece() : "";
        }
    }

    /** The negative. */
    record Minus(Term operand, Span span) implements Term {
        @Override
        public Type type() {
            return operand.type();
        }
    }

    /** Two amounts and a sign. */
    record Arithmetic(Formula.Sign sign, Term left, Term right, Type type, Span span) implements Term {}

    /** A function of amounts. */
    record Applied(NumberFunction function, List<Term> arguments, Type type, Span span) implements Term {
        public Applied {
            arguments = List.copyOf(arguments);
        }
    }

    /** One of two by a condition. */
    record Choice(Term condition, Term then, Term otherwise, Type type, String frame, Span span) implements Term {}

    /** A comparison of amounts. */
    record Compared(Condition.Relation relation, Term left, Term right, Span span) implements Term {
        @Override
        public Type type() {
            return Type.TRUTH;
        }
    }

    /** Two words, or two truths, are alike. */
    record Alike(Term left, Term right, Span span) implements Term {
        @Override
        public Type type() {
            return Type.TRUTH;
        }
    }

    /** Both hold, or one of them. */
    record Logic(boolean both, Term left, Term right, Span span) implements Term {
        @Override
        public Type type() {
            return Type.TRUTH;
        }
    }

    /** It does not hold. */
    record Not(Term operand, Span span) implements Term {
        @Override
        public Type type() {
            return Type.TRUTH;
        }
    }

    /** What an operation makes of its inputs: points, paths, measurings, texts. */
    record Made(Operation<?> operation, List<Term> inputs, Type type, String frame, Span span) implements Term {
        public Made {
            inputs = List.copyOf(inputs);
        }
    }

    /** The value of an unknown. */
    record Solved(Equations equations, int index, Type type, Span span) implements Term {}

    /** A mistake was told. */
    record Broken(Span span) implements Term {
        @Override
        public Type type() {
            return Type.BROKEN;
        }
    }

    default boolean broken() {
        return type().broken();
    }
}
