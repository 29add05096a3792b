package org.gusset.core.measure;

import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;

/**
 * Reads amounts as people write them: {@code 97 cm}, {@code 38 1/2 in}, {@code 9½ in}, {@code 5 ft 3 in}, {@code 12 deg},
 * {@code 4%}, {@code -3 mm}, a plain {@code 12}.
 */
public final class QuantityText {
    private QuantityText() {}

    /** The amount, or a MEA diagnostic at {@code place} that says what is wrong and how to write it. */
    public static Outcome<Quantity> parse(String text, Place place) {
        throw new UnsupportedOperationException();
    }
}
