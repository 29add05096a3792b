package org.gusset.embedding.service;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Choice;
import org.gusset.core.draft.Choices;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;

/**
 * What a form tells: {@code body} is the wearer's name, {@code choose.NAME} a choice, every other field a measure.
 *
 * @param measurements the measures
 * @param choices the choices
 */
record BodyForm(Measurements measurements, Choices choices) {
    private static final String CHOOSE = "choose.";

    /**
     * Reads a form.
     *
     * @throws IllegalArgumentException if it is none: a percent sign stands alone
     */
    static Outcome<BodyForm> read(String form) {
        List<Diagnostic> diagnostics = new ArrayList<>();
        Measurements body = Measurements.of("this body");
        Choices choices = Choices.none();
        for (String field : form.split("&")) {
            int sign = field.indexOf('=');
            String name = decoded(sign < 0 ? field : field.substring(0, sign)).strip();
            String text = sign < 0 ? "" : decoded(field.substring(sign + 1)).strip();
            if (name.isEmpty() || text.isEmpty()) {
                continue;
            }
            if (name.equals("body")) {
                body = new Measurements(text, body.entries());
            } else if (name.startsWith(CHOOSE)) {
                Outcome<Choice> choice = Choice.parse(text);
                diagnostics.addAll(choice.diagnostics());
                if (choice.value().isPresent()) {
                    choices = choices.with(
                            name.substring(CHOOSE.length()), choice.value().get());
                }
            } else {
                Place place = Place.named(name);
                Outcome<Quantity> amount = QuantityText.parse(text, place);
                diagnostics.addAll(amount.diagnostics());
                if (amount.value().isPresent()) {
                    body = body.with(name, amount.value().get(), place);
                }
            }
        }
        return Outcome.of(new BodyForm(body, choices), diagnostics);
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }
}
