package org.gusset.fuzz;

import java.util.Optional;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Choice;
import org.gusset.core.draft.Choices;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;

/**
 * A draft that brings its measures and choices along, in comments of their own: {@code #= chest 97 cm} is a measure, {@code #= chest
 * 1e300} one in mm as a program might give it, {@code 1e300 deg}, {@code 1e300 mm2} and {@code 1 plain} ones of other kinds, {@code #! neckline round} a choice, {@code #@ Pip} the body's name.
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
        String[] parts = text.split(" ", 2);
        Dimension dimension = parts.length == 1
                ? Dimension.LENGTH
                : switch (parts[1]) {
                    case "deg" -> Dimension.ANGLE;
                    case "mm2" -> Dimension.AREA;
                    default -> Dimension.NUMBER;
                };
        try {
            return Optional.of(new Quantity(Double.parseDouble(parts[0]), dimension));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** A body as the comments that are read here. */
    static String written(Measurements body) {
        StringBuilder out = new StringBuilder();
        body.entries().forEach((name, entry) -> {
            Dimension dimension = entry.quantity().dimension();
            out.append("#= ").append(name).append(' ').append(entry.quantity().value());
            out.append(
                    dimension.equals(Dimension.LENGTH)
                            ? ""
                            : dimension.equals(Dimension.ANGLE)
                                    ? " deg"
                                    : dimension.equals(Dimension.AREA) ? " mm2" : " plain");
            out.append('\n');
        });
        return out.toString();
    }
}
