package org.gusset.core.construct;

import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;
import org.gusset.core.measure.Dimension;

/** Values that are not shapes. */
public sealed interface Compute<T> extends Operation<T> {
    /** A number. */
    record Number(Formula formula, Dimension dimension) implements Compute<Double> {
        @Override
        public Double apply(Values in) {
            return formula.number(in) + 0.0;
        }
    }

    /** A truth. */
    record Truth(Condition condition) implements Compute<Boolean> {
        @Override
        public Boolean apply(Values in) {
            return condition.holds(in);
        }
    }

    /** A word that is the same always. */
    record Word(String word) implements Compute<String> {
        @Override
        public String apply(Values in) {
            return word;
        }
    }

    /** One of two inputs of the same kind by a condition; only that one is asked for. */
    record OneOf(Condition condition, int then, int otherwise) implements Compute<Object> {
        @Override
        public Object apply(Values in) {
            return in.get(condition.holds(in) ? then : otherwise);
        }
    }
}
