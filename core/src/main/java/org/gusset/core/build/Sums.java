package org.gusset.core.build;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.NumberFunction;
import org.gusset.core.measure.Quantity;

/** Terms of amounts and truths. */
final class Sums {
    private Sums() {}

    static Term number(double value) {
        return new Term.Constant(Quantity.number(finite(value)), Kind.NUMBER, text(value));
    }

    /** A number that is no amount at all is a slip of the program. */
    static double finite(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("an amount must be a finite number, and this is " + value);
        }
        return value;
    }

    /** A number as short as it can be written: 12, 1.5. */
    static String text(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
    }

    static Term plus(Value left, Value right) {
        return Term.Arithmetic.of(
                Formula.Sign.PLUS, left.term(), right.term(), left.term().kind());
    }

    static Term minus(Value left, Value right) {
        return Term.Arithmetic.of(
                Formula.Sign.MINUS, left.term(), right.term(), left.term().kind());
    }

    static Term times(Value left, Term right, Kind kind) {
        return Term.Arithmetic.of(Formula.Sign.TIMES, left.term(), right, kind);
    }

    static Term over(Value left, Term right, Kind kind) {
        return Term.Arithmetic.of(Formula.Sign.OVER, left.term(), right, kind);
    }

    static Term applied(NumberFunction function, Kind kind, Value... arguments) {
        List<Term> terms = new ArrayList<>();
        for (Value argument : arguments) {
            terms.add(argument.term());
        }
        return Term.Applied.of(function, terms, kind);
    }

    /** A function of one amount and more. */
    static Term applied(NumberFunction function, Value first, Value[] others) {
        List<Term> terms = new ArrayList<>(List.of(first.term()));
        for (Value other : others) {
            terms.add(other.term());
        }
        return Term.Applied.of(function, terms, first.term().kind());
    }

    static Truth less(Value left, Value right) {
        return new Truth(Term.Compared.of(Condition.Relation.LESS, left.term(), right.term(), false));
    }

    static Truth more(Value left, Value right) {
        return new Truth(Term.Compared.of(Condition.Relation.LESS, right.term(), left.term(), true));
    }

    static Truth atMost(Value left, Value right) {
        return new Truth(Term.Compared.of(Condition.Relation.AT_MOST, left.term(), right.term(), false));
    }

    static Truth atLeast(Value left, Value right) {
        return new Truth(Term.Compared.of(Condition.Relation.AT_MOST, right.term(), left.term(), true));
    }

    static Truth alike(Value left, Value right) {
        return new Truth(Term.Compared.of(Condition.Relation.ALIKE, left.term(), right.term(), false));
    }
}
