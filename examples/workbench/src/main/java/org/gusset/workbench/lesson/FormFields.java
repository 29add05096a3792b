package org.gusset.workbench.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.draft.Needs;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;

/** The fields for the measures and choices of a draft, filled in from a drawing of it. */
final class FormFields {
    private final Map<String, Draft.Measure> measures = new LinkedHashMap<>();
    private final Map<String, Draft.Option> options = new LinkedHashMap<>();
    private final Map<String, MeasureForm.Field> fields = new LinkedHashMap<>();
    private final Map<String, String> estimates = new LinkedHashMap<>();

    FormFields(Drawing drawing, LengthStyle style) {
        Draft draft = drawing.draft();
        Needs needs = Needs.of(draft, drawing.choices());
        for (Draft.Measure measure : draft.measures()) {
            String id = "measure-" + (measures.size() + 1);
            measures.put(id, measure);
            String text = entry(drawing.measurements(), measure)
                    .map(e -> text(e, style))
                    .orElse("");
            fields.put(
                    id,
                    new MeasureForm.Field(
                            id, PageSteps.spoken(measure.name()), text, List.of(), notes(measure, needs, style)));
            if (text.isEmpty()) {
                amount(measure.name(), drawing).ifPresent(estimate -> estimates.put(id, style.show(estimate)));
            }
        }
        for (Draft.Option option : draft.options()) {
            String id = "choice-" + (options.size() + 1);
            options.put(id, option);
            List<String> words = option.kind() == Draft.Option.Kind.ANSWER ? List.of("yes", "no") : option.words();
            fields.put(
                    id,
                    new MeasureForm.Field(
                            id,
                            PageSteps.spoken(option.name()),
                            text(option, drawing, style),
                            words,
                            notes(option, needs, style)));
        }
    }

    Map<String, Draft.Measure> measures() {
        return measures;
    }

    Map<String, Draft.Option> options() {
        return options;
    }

    /** What stands in a field at first. */
    String text(String id) {
        MeasureForm.Field field = fields.get(id);
        return field == null ? "" : field.text();
    }

    /** How a field's amount can be slid, round what stands in it at first or is estimated; for JSON. */
    Optional<Map<String, Object>> slide(MeasureForm.Field field) {
        if (!field.words().isEmpty()) {
            return Optional.empty();
        }
        String estimate = estimates.getOrDefault(field.id(), "");
        String first = text(field.id()).isEmpty() ? estimate : text(field.id());
        return Slide.of(first)
                .map(slide -> slide.json(field.text().isEmpty() && !estimate.isEmpty() ? estimate : field.text()));
    }

    /** The form with what was written into it. */
    MeasureForm form(
            String address, Map<String, String> written, List<MeasuringCard.Message> messages, String outcome) {
        return new MeasureForm(
                address,
                measures.keySet().stream().map(id -> filled(id, written)).toList(),
                options.keySet().stream().map(id -> filled(id, written)).toList(),
                messages,
                outcome);
    }

    private MeasureForm.Field filled(String id, Map<String, String> written) {
        MeasureForm.Field field = fields.get(id);
        if (field == null) {
            throw new IllegalArgumentException("no field " + id);
        }
        return field.with(written.getOrDefault(id, field.text()));
    }

    /** The measure as the body's table has it, under whichever of its names. */
    static Optional<Measurements.Entry> entry(Measurements body, Draft.Measure measure) {
        return body.entry(measure.name())
                .or(() -> measure.also().stream()
                        .flatMap(n -> body.entry(n).stream())
                        .findFirst());
    }

    /** As the table has it, if that alone says it, with its unit. */
    private static String text(Measurements.Entry entry, LengthStyle style) {
        if (entry.place() instanceof Place.Cell cell) {
            Outcome<Quantity> alone = QuantityText.parse(cell.text(), cell);
            if (alone.value().filter(entry.quantity()::equals).isPresent()) {
                return cell.text().strip();
            }
        }
        return style.show(entry.quantity());
    }

    private static Optional<Quantity> amount(String name, Drawing drawing) {
        return drawing.values().stream()
                .filter(value -> value.name().equals(name))
                .findFirst()
                .flatMap(value ->
                        value instanceof NamedValue.Amount amount ? Optional.of(amount.quantity()) : Optional.empty());
    }

    private static String text(Draft.Option option, Drawing drawing, LengthStyle style) {
        for (NamedValue value : drawing.values()) {
            if (value.name().equals(option.name())) {
                if (value instanceof NamedValue.Amount amount) {
                    return style.show(amount.quantity());
                } else if (value instanceof NamedValue.Word word) {
                    return word.word();
                }
                return ((NamedValue.Answer) value).yes() ? "yes" : "no";
            }
        }
        return "";
    }

    private static List<String> notes(Draft.Measure measure, Needs needs, LengthStyle style) {
        List<String> notes = new ArrayList<>();
        if (!measure.howTo().isEmpty()) {
            notes.add(measure.howTo());
        }
        needs.range(measure, style).ifPresent(notes::add);
        needs.rule(measure, style).ifPresent(rule -> notes.add("may be left out: then " + rule));
        return notes;
    }

    private static List<String> notes(Draft.Option option, Needs needs, LengthStyle style) {
        List<String> notes = new ArrayList<>();
        if (!option.note().isEmpty()) {
            notes.add(option.note());
        }
        needs.range(option, style).ifPresent(notes::add);
        return notes;
    }
}
