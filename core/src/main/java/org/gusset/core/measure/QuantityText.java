package org.gusset.core.measure;

import java.util.List;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;

/**
 * Reads amounts as people write them: {@code 97 cm}, {@code 38 1/2 in}, {@code 9½ in}, {@code 5 ft 3 in}, {@code 12 deg},
 * {@code 4%}, {@code -3 mm}, a plain {@code 12}. Lengths come out as the double nearest to the exact amount in mm, the inch
 * being 25.4 mm.
 */
public final class QuantityText {
    private QuantityText() {}

    /**
     * The amount, or a MEA diagnostic at {@code place} that says what is wrong and how to write it. A number without a unit is
     * a plain number; whether one may stand there is for the caller to say.
     */
    public static Outcome<Quantity> parse(String text, Place place) {
        try {
            return Outcome.of(new AmountReader(text).read());
        } catch (Fault fault) {
            return Outcome.none(List.of(fault.diagnostic().at(place)));
        }
    }
}
