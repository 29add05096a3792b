package org.gusset.core.draft;

import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;

/** What a host sets one choice of a draft to. */
public sealed interface Choice {
    /** An amount. */
    record Amount(Quantity quantity) implements Choice {}

    /** One of several words. */
    record Word(String word) implements Choice {}

    /** Yes or no. */
    record Answer(boolean yes) implements Choice {}

    /** Reads {@code yes}, {@code no}, an amount ({@code 12 cm}) or a word. */
    static Outcome<Choice> parse(String text) {
        String trimmed = text.strip();
        if (trimmed.equals("yes") || trimmed.equals("no")) {
            return Outcome.of(new Answer(trimmed.equals("yes")));
        }
        if (!trimmed.isEmpty() && Character.isLetter(trimmed.codePointAt(0))) {
            return Outcome.of(new Word(trimmed));
        }
        Outcome<Quantity> amount = QuantityText.parse(trimmed, Place.nowhere());
        return new Outcome<>(amount.value().map(Amount::new), amount.diagnostics());
    }
}
