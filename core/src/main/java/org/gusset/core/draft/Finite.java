package org.gusset.core.draft;

import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.MeasureCode;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;

/** What of the amounts that a host hands over is none: texts are judged when they are read, numbers of a program here. */
final class Finite {
    private Finite() {}

    /** Why an amount is none. */
    static Optional<Diagnostic> objection(String name, Quantity quantity, Place place) {
        return Double.isFinite(quantity.value())
                ? Optional.empty()
                : Optional.of(Diagnostic.of(
                                MeasureCode.NOT_FINITE, place, "text", name + " " + Double.toString(quantity.value()))
                        .with(Hint.of("finite.again", "Measure again, or look at the sum that it comes from.")));
    }

    /** Why a measure is none: a length of the body without a range of its own is more than nothing. */
    static Optional<Diagnostic> objection(Draft.Measure measure, Measurements.Entry entry) {
        Optional<Diagnostic> infinite = objection(measure.name(), entry.quantity(), entry.place());
        boolean nothing = measure.range().isEmpty()
                && measure.dimension().equals(Dimension.LENGTH)
                && entry.quantity().value() <= 0;
        return infinite.isPresent() || !nothing
                ? infinite
                : Optional.of(
                        Diagnostic.of(
                                        DraftCode.MEASURE_NOTHING,
                                        entry.place(),
                                        "name",
                                        measure.name(),
                                        "value",
                                        Fact.length(entry.quantity().value()))
                                .with(
                                        Hint.of(
                                                "measure.nothing",
                                                "Leave the cell blank if it was not taken. A difference that may be less than nothing has a range in the draft, as `from -5 cm to 5 cm`.")));
    }
}
