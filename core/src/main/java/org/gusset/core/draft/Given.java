package org.gusset.core.draft;

import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Extent;
import org.gusset.core.geometry.GeometryCode;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;
import org.gusset.core.measure.Measurements;

/** Values that come from the host. A {@link Diagnostic} given in a value's place says why it cannot be used. */
public sealed interface Given<T> extends Operation<T> {
    /**
     * A measure of the body; input 0 is the rule that estimates it, if there is one.
     *
     * @param name its name
     * @param howTo how to take it
     * @param estimates true if there is a rule
     */
    record Measure(String name, String howTo, boolean estimates) implements Given<Double> {
        @Override
        public Double apply(Values in) {
            Object given = in.given();
            if (given instanceof Measurements.Entry entry) {
                double value = entry.quantity().value();
                if (!Extent.holds(value)) {
                    throw new Fault(Diagnostic.of(GeometryCode.TOO_LARGE, entry.place()));
                }
                return value;
            } else if (given instanceof Diagnostic diagnostic) {
                throw new Fault(diagnostic);
            } else if (estimates) {
                return in.number(0);
            }
            throw new Fault(missing());
        }

        /** What is told of a body that has no such measure. */
        Diagnostic missing() {
            Diagnostic missing =
                    Diagnostic.of(DraftCode.MEASURE_MISSING, Place.nowhere(), "name", name, "body", "this body");
            return howTo.isEmpty()
                    ? missing.with(Hint.of("measure.add", "Add a row `{name}` to the table of measures.", "name", name))
                    : missing.with(Hint.of(
                            "measure.take",
                            "Take it so: {how}. Then add a row `{name}` to the table of measures.",
                            "how",
                            howTo,
                            "name",
                            name));
        }
    }

    /** A choice; input 0 is its default. */
    record Choice<T>(Class<T> type) implements Given<T> {
        @Override
        public T apply(Values in) {
            Object given = in.given();
            if (given instanceof Diagnostic diagnostic) {
                throw new Fault(diagnostic);
            }
            return type.cast(given == null ? in.get(0) : given);
        }
    }
}
