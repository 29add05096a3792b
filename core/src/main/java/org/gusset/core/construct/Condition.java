package org.gusset.core.construct;

import org.gusset.core.graph.Values;
import org.gusset.core.measure.Dimension;

/** A truth computed from the inputs of a node. */
public sealed interface Condition {
    /** Lengths closer than this are alike, in mm. */
    double LENGTH_TOLERANCE = 1e-3;

    boolean holds(Values in);

    /** Always or never. */
    record Constant(boolean value) implements Condition {
        @Override
        public boolean holds(Values in) {
            return value;
        }
    }

    /** The truth of an input. */
    record Input(int index) implements Condition {
        @Override
        public boolean holds(Values in) {
            return in.truth(index);
        }
    }

    /** The word of an input is this one. */
    record WordIs(int index, String word) implements Condition {
        @Override
        public boolean holds(Values in) {
            return in.word(index).equals(word);
        }
    }

    /** Two inputs have the same word. */
    record SameWord(int first, int second) implements Condition {
        @Override
        public boolean holds(Values in) {
            return in.word(first).equals(in.word(second));
        }
    }

    /** Two truths are alike. */
    record SameTruth(Condition first, Condition second) implements Condition {
        @Override
        public boolean holds(Values in) {
            return first.holds(in) == second.holds(in);
        }
    }

    /** Two numbers of one dimension; those within the tolerance are alike. */
    record Compared(Relation relation, Formula left, Formula right, Dimension dimension) implements Condition {
        @Override
        public boolean holds(Values in) {
            double a = left.number(in);
            double b = right.number(in);
            double tolerance = tolerance(a, b);
            return switch (relation) {
                case LESS -> a < b - tolerance;
                case AT_MOST -> a <= b + tolerance;
                case ALIKE -> Math.abs(a - b) <= tolerance;
            };
        }

        /** Numbers that differ by no more are alike. */
        public double tolerance(double a, double b) {
            return dimension.equals(Dimension.LENGTH)
                    ? LENGTH_TOLERANCE
                    : 1e-9 * Math.max(1, Math.max(Math.abs(a), Math.abs(b)));
        }
    }

    /** Both hold. */
    record Both(Condition first, Condition second) implements Condition {
        @Override
        public boolean holds(Values in) {
            return first.holds(in) && second.holds(in);
        }
    }

    /** One of the two holds, or both. */
    record Either(Condition first, Condition second) implements Condition {
        @Override
        public boolean holds(Values in) {
            return first.holds(in) || second.holds(in);
        }
    }

    /** It does not hold. */
    record Not(Condition condition) implements Condition {
        @Override
        public boolean holds(Values in) {
            return !condition.holds(in);
        }
    }

    /** The relations; the others are these turned round or denied. */
    enum Relation {
        LESS,
        AT_MOST,
        ALIKE
    }
}
