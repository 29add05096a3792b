package org.gusset.fuzz;

import java.util.Optional;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Choice;
import org.gusset.core.draft.Choices;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;

/**
 * A draft that brings its measures and choices along, in comments of their own: {@code #= chest 97 cm} is a measure, {@code #= chest
 * 1e300} one in mm as a program might give it, {@code #! neckline round} a choice, {@code #@ Pip} the body's name.
 */
record Measured(Measurements body, Choices choices) {
    static Measured of(String text) {
        Measurements body = Measurements.of("Pip");
        Choices choices = Choices.none();
        for (String line : text.split("\n", 200)) {
            String[] parts = line.strip().split(" ", 3);
            if (parts[0].equals("#=") && parts.length == 3) {
                Optional<Quantity> amount = amount(parts[2]);
                body = amount.isPresent() ? body.with(parts[1], amount.get()) : body;
            } else if (parts[0].equals("#!") && parts.length == 3) {
                Optional<Choice> choice = Choice.parse(parts[2]).value();
                choices = choice.isPresent() ? choices.with(parts[1], choice.get()) : choices;
            } else if (parts[0].equals("#@") && parts.length > 1) {
                body = new Measurements(line.strip().substring(2).strip(), body.entries());
            }
        }
        return new Measured(body, choices);
    }

    private static Optional<Quantity> amount(String text) {
        Outcome<Quantity> read = QuantityText.parse(text, Place.nowhere());
        Judge.messages(read.diagnostics());
        if (read.value().isPresent()) {
            return read.value();
        }
        try {
            return Optional.of(Quantity.length(Double.parseDouble(text)));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
