package org.gusset.core.build;

import java.util.List;
import java.util.stream.Collectors;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.NumberFunction;
import org.gusset.core.graph.Operation;
import org.gusset.core.measure.Quantity;

/** What stands behind a handle until the draft is built: an expression over names. */
sealed interface Term {
    Kind kind();

    Home home();

    /** What a message calls it, as it reads inside a piece (empty: outside of all). */
    String words(String piece);

    /** How strongly the words hold together: 3 a name or a call, 2 a product, 1 a sum, 0 and less what has words of its own. */
    default int strength() {
        return 3;
    }

    /** The words, in brackets if they would fall apart among others that hold together so strongly. */
    default String words(String piece, int among) {
        return strength() < among ? "(" + words(piece) + ")" : words(piece);
    }

    /** An amount as written. */
    record Constant(Quantity quantity, Kind kind, String text) implements Term {
        @Override
        public Home home() {
            return Home.ANYWHERE;
        }

        @Override
        public String words(String piece) {
            return text;
        }
    }

    /** Yes or no. */
    record Answer(boolean yes) implements Term {
        @Override
        public Kind kind() {
            return Kind.TRUTH;
        }

        @Override
        public Home home() {
            return Home.ANYWHERE;
        }

        @Override
        public String words(String piece) {
            return yes ? "yes" : "no";
        }
    }

    /** A word. */
    record Word(String word) implements Term {
        @Override
        public Kind kind() {
            return Kind.WORD;
        }

        @Override
        public Home home() {
            return Home.ANYWHERE;
        }

        @Override
        public String words(String piece) {
            return word;
        }
    }

    /** Something that has a name. */
    record Ref(Symbol symbol) implements Term {
        @Override
        public Kind kind() {
            return symbol.kind();
        }

        @Override
        public Home home() {
            return new Home(symbol.draft(), symbol.kind().shape() ? symbol.piece() : null);
        }

        @Override
        public String words(String piece) {
            return symbol.words(piece);
        }
    }

    /** The negative. */
    record Minus(Term operand) implements Term {
        @Override
        public Kind kind() {
            return operand.kind();
        }

        @Override
        public Home home() {
            return operand.home();
        }

        @Override
        public String words(String piece) {
            return "-" + operand.words(piece, 3);
        }

        @Override
        public int strength() {
            return 1;
        }
    }

    /** Two amounts and a sign. */
    record Arithmetic(Formula.Sign sign, Term left, Term right, Kind kind, Home home) implements Term {
        static Term of(Formula.Sign sign, Term left, Term right, Kind kind) {
            return new Arithmetic(sign, left, right, kind, Home.of(List.of(left, right), kind));
        }

        @Override
        public String words(String piece) {
            String text = switch (sign) {
                case PLUS -> "+";
                case MINUS -> "-";
                case TIMES -> "*";
                case OVER -> "/";
            };
            return left.words(piece, strength()) + " " + text + " " + right.words(piece, strength() + 1);
        }

        @Override
        public int strength() {
            return sign == Formula.Sign.PLUS || sign == Formula.Sign.MINUS ? 1 : 2;
        }
    }

    /** A function of amounts. */
    record Applied(NumberFunction function, List<Term> arguments, Kind kind, Home home) implements Term {
        static Term of(NumberFunction function, List<Term> arguments, Kind kind) {
            return new Applied(function, List.copyOf(arguments), kind, Home.of(arguments, kind));
        }

        @Override
        public String words(String piece) {
            return function.word() + "(" + Term.joined(arguments, piece) + ")";
        }
    }

    /** One of two by a condition. */
    record Choice(Term condition, Term then, Term otherwise, Kind kind, Home home) implements Term {
        static Term of(Term condition, Term then, Term otherwise) {
            return new Choice(
                    condition, then, otherwise, then.kind(), Home.of(List.of(condition, then, otherwise), then.kind()));
        }

        @Override
        public String words(String piece) {
            return then.words(piece, 1) + " if " + condition.words(piece) + " else " + otherwise.words(piece, 1);
        }

        @Override
        public int strength() {
            return -3;
        }
    }

    /** A comparison of amounts: {@code turned} if it is read from the right, as "more than" is. */
    record Compared(Condition.Relation relation, Term left, Term right, boolean turned, Home home) implements Term {
        static Term of(Condition.Relation relation, Term left, Term right, boolean turned) {
            return new Compared(relation, left, right, turned, Home.of(List.of(left, right), Kind.TRUTH));
        }

        @Override
        public Kind kind() {
            return Kind.TRUTH;
        }

        @Override
        public String words(String piece) {
            String sign = switch (relation) {
                case LESS -> turned ? ">" : "<";
                case AT_MOST -> turned ? ">=" : "<=";
                case ALIKE -> "is";
            };
            Term first = turned ? right : left;
            Term second = turned ? left : right;
            return first.words(piece, 1) + " " + sign + " " + second.words(piece, 1);
        }

        @Override
        public int strength() {
            return 0;
        }
    }

    /** Two words are alike. */
    record Alike(Term left, Term right, Home home) implements Term {
        static Term of(Term left, Term right) {
            return new Alike(left, right, Home.of(List.of(left, right), Kind.TRUTH));
        }

        @Override
        public Kind kind() {
            return Kind.TRUTH;
        }

        @Override
        public String words(String piece) {
            return left.words(piece) + " is " + right.words(piece);
        }

        @Override
        public int strength() {
            return 0;
        }
    }

    /** Both hold, or one of them. */
    record Logic(boolean both, Term left, Term right, Home home) implements Term {
        static Term of(boolean both, Term left, Term right) {
            return new Logic(both, left, right, Home.of(List.of(left, right), Kind.TRUTH));
        }

        @Override
        public Kind kind() {
            return Kind.TRUTH;
        }

        @Override
        public String words(String piece) {
            return left.words(piece, strength()) + (both ? " and " : " or ") + right.words(piece, strength());
        }

        @Override
        public int strength() {
            return both ? -1 : -2;
        }
    }

    /** It does not hold. */
    record Not(Term operand) implements Term {
        @Override
        public Kind kind() {
            return Kind.TRUTH;
        }

        @Override
        public Home home() {
            return operand.home();
        }

        @Override
        public String words(String piece) {
            return "not " + operand.words(piece, 3);
        }

        @Override
        public int strength() {
            return 0;
        }
    }

    /** What an operation makes of its inputs. */
    record Made(Operation<?> operation, List<Term> inputs, Kind kind, Home home, Saying saying, int strength)
            implements Term {
        public Made {
            inputs = List.copyOf(inputs);
        }

        static Term of(Operation<?> operation, List<Term> inputs, Kind kind, int strength, Saying saying) {
            return new Made(operation, inputs, kind, Home.of(inputs, kind), saying, strength);
        }

        @Override
        public String words(String piece) {
            return saying.in(piece);
        }
    }

    /**
     * The length of an edge, or of all its copies that are worn. What darts, gathers and pleats take up is known when the draft is
     * complete, so this becomes a sum only then.
     */
    record EdgeLength(Term path, boolean sewn, boolean all, Home home) implements Term {
        static Term of(Term path, boolean sewn, boolean all) {
            return new EdgeLength(path, sewn, all, new Home(path.home().draft(), null));
        }

        @Override
        public Kind kind() {
            return Kind.LENGTH;
        }

        @Override
        public String words(String piece) {
            return (sewn ? "sewn(" : "length(") + (all ? "all " : "") + path.words(piece) + ")";
        }
    }

    /** The value of an unknown. */
    record Solved(Equations equations, int index, Kind kind, Home home) implements Term {
        @Override
        public String words(String piece) {
            return equations.unknowns().get(index).words(piece);
        }
    }

    /** What a message calls a term, as it reads inside a piece. */
    @FunctionalInterface
    interface Saying {
        String in(String piece);
    }

    static String joined(List<Term> terms, String piece) {
        return terms.stream().map(t -> t.words(piece)).collect(Collectors.joining(", "));
    }
}
