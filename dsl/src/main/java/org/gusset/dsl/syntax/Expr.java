package org.gusset.dsl.syntax;

import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.measure.Quantity;

/** Anything that has a value: numbers, conditions, points and paths. The checker tells the kinds apart, not the grammar. */
public sealed interface Expr {
    Span span();

    /** A number with or without a unit, fractions and compound lengths added up: {@code 9 1/2 in}, {@code 5 ft 3 in}, {@code 12}. */
    record Amount(Quantity quantity, boolean hasUnit, Span span) implements Expr {}

    /** {@code yes} or {@code no}. */
    record Answer(boolean yes, Span span) implements Expr {}

    /** A string. */
    record Text(Words words, Span span) implements Expr {}

    /** A name, qualified or not ({@code Back.tip}, {@code b.Front.tip}, {@code b.3}); {@code all} if the word stands before it. */
    record Reference(List<Name> parts, boolean all, Span span) implements Expr {
        public Reference {
            parts = List.copyOf(parts);
        }

        public String text() {
            if (parts.size() == 1) {
                return parts.get(0).text();
            }
            return String.join(".", parts.stream().map(Name::text).toList());
        }
    }

    /** A function or rule with its arguments; {@code to} is the step of {@code round(x, to step)}. */
    record Call(Reference function, List<Expr> arguments, Optional<Expr> to, Span span) implements Expr {
        public Call {
            arguments = List.copyOf(arguments);
        }
    }

    /** {@code -x}. */
    record Minus(Expr operand, Span span) implements Expr {}

    /** {@code + - * /}. */
    record Arithmetic(Operator operator, Expr left, Expr right, Span span) implements Expr {}

    /** {@code < <= > >= is, is not}. */
    record Comparison(Relation relation, Expr left, Expr right, Span span) implements Expr {}

    /** {@code and}, {@code or}. */
    record Logic(boolean and, Expr left, Expr right, Span span) implements Expr {}

    /** {@code not x}. */
    record Not(Expr operand, Span span) implements Expr {}

    /** {@code a if condition else b}. */
    record Conditional(Expr then, Expr condition, Expr otherwise, Span span) implements Expr {}

    /** Brackets, kept for the formatter. */
    record Group(Expr inner, Span span) implements Expr {}

    /** {@code origin}. */
    record Origin(Span span) implements Expr {}

    /** {@code at (right, down)}. */
    record At(Expr right, Expr down, Span span) implements Expr {}

    /** {@code between A and B [at share]}; {@code place} is empty for halfway. */
    record Between(Expr first, Expr second, Optional<PlaceOn> place, Span span) implements Expr {}

    /** {@code on path PLACE}. */
    record OnPath(Expr path, PlaceOn place, Span span) implements Expr {}

    /** {@code swept r from A and s from B nearest P}. */
    record TwoSweeps(Expr radius, Expr from, Expr secondRadius, Expr secondFrom, Expr nearest, Span span)
            implements Expr {}

    /** {@code where p meets q [nearest A]}. */
    record Meets(Expr first, Expr second, Optional<Expr> nearest, Span span) implements Expr {}

    /** {@code part of path between A and B}. */
    record PartOf(Expr path, Expr from, Expr to, Span span) implements Expr {}

    /** A shape and one move on. */
    record Moved(Expr base, Move move, Span span) implements Expr {}

    /** A way ({@code right}, {@code toward P}, ...) where the grammar takes any expression, as in {@code (up if neckline is vee else right)}. */
    record WayExpr(Way way, Span span) implements Expr {}

    /** Where a syntax error stood; nothing more is said of it. */
    record Broken(Span span) implements Expr {}

    /** The four operations. */
    enum Operator {
        PLUS("+"),
        MINUS("-"),
        TIMES("*"),
        OVER("/");

        private final String sign;

        Operator(String sign) {
            this.sign = sign;
        }

        public String sign() {
            return sign;
        }
    }

    /** The comparisons. */
    enum Relation {
        LESS("<"),
        AT_MOST("<="),
        MORE(">"),
        AT_LEAST(">="),
        IS("is"),
        IS_NOT("is not");

        private final String sign;

        Relation(String sign) {
            this.sign = sign;
        }

        public String sign() {
            return sign;
        }
    }
}
