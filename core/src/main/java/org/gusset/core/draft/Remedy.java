package org.gusset.core.draft;

import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;

/**
 * A change of one value that settles a finding; it was tried before it is offered.
 *
 * @param name the value, with its piece in front if it is one of a piece
 * @param choice true for a choice or fitting correction, which the host may set; false for a value of the draft's text
 * @param from what it is
 * @param to what settles the finding
 * @param effect how much the figure of the finding moves for each unit of the value
 * @param place where the draft defines it
 */
public record Remedy(String name, boolean choice, Quantity from, Quantity to, double effect, Place place) {
    /** By how much it is changed. */
    public double change() {
        return to.value() - from.value();
    }

    /** The change in words. */
    public Hint hint() {
        return Hint.of(
                "remedy",
                "Changing {kind} `{name}` from {from} to {to} settles it (tried).",
                "kind",
                choice ? "the choice" : "the value",
                "name",
                name,
                "from",
                fact(from),
                "to",
                fact(to));
    }

    private static Fact fact(Quantity quantity) {
        if (quantity.dimension().equals(Dimension.LENGTH)) {
            return Fact.length(quantity.value());
        }
        return quantity.dimension().equals(Dimension.ANGLE)
                ? Fact.angle(quantity.value())
                : Fact.number(quantity.value());
    }
}
