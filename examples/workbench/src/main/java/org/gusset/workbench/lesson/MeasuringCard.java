package org.gusset.workbench.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Choice;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;

/** The fields for the measures and choices of a draft, and how what is written into them is read. Immutable. */
public final class MeasuringCard {
    private static final String PAGE = "page";
    private static final int LONGEST_TEXT = 200;

    private final LengthStyle style;
    private final AmountReading amounts;
    private final FormFields fields;
    private final Drawing first;
    private final Measurements table;
    private final Choices set;

    /**
     * A card filled in from a drawing.
     *
     * @param style how lengths are shown
     * @param amounts reads the measures that are written
     */
    public MeasuringCard(Drawing first, LengthStyle style, AmountReading amounts) {
        this.style = style;
        this.amounts = amounts;
        this.first = first;
        this.fields = new FormFields(first, style);
        this.table = first.measurements();
        this.set = first.choices();
    }

    /**
     * What was read.
     *
     * @param measurements the measures as written; one that cannot be read keeps the value it was drawn with
     * @param wrong what cannot be read
     */
    public record Reading(Measurements measurements, Choices choices, List<Message> wrong) {
        public Reading {
            wrong = List.copyOf(wrong);
        }
    }

    /**
     * Something that is wrong.
     *
     * @param field the id of the field that it is about; empty if it is about none
     * @param text the sentence and what to do
     */
    public record Message(String field, String text) {}

    /** The drawing that filled it in. */
    public Drawing first() {
        return first;
    }

    FormFields fields() {
        return fields;
    }

    /** What was written into fields, by the name of the measure or choice, so that another draft's card can take it over. */
    public Map<String, String> named(Map<String, String> sent) {
        Map<String, String> named = new LinkedHashMap<>();
        fields.measures().forEach((id, measure) -> take(named, measure.name(), sent, id));
        fields.options().forEach((id, option) -> take(named, option.name(), sent, id));
        return named;
    }

    private static void take(Map<String, String> named, String name, Map<String, String> sent, String id) {
        if (sent.containsKey(id)) {
            named.put(name, text(sent, id));
        }
    }

    /** The texts of all fields by their ids: what is written under their names, and else what stands in them. */
    public Map<String, String> fieldsOf(Map<String, String> named) {
        Map<String, String> texts = new LinkedHashMap<>();
        fields.measures().forEach((id, measure) -> texts.put(id, named.getOrDefault(measure.name(), fields.text(id))));
        fields.options().forEach((id, option) -> texts.put(id, named.getOrDefault(option.name(), fields.text(id))));
        return texts;
    }

    /** The card as maps for JSON: its fields with what is written in them and what is wrong there. */
    public Map<String, Object> json(Map<String, String> named, List<Message> wrong) {
        Map<String, String> texts = fieldsOf(named);
        MeasureForm form = fields.form("", texts, wrong, "");
        Map<String, Object> card = new LinkedHashMap<>();
        card.put("measures", form.measures().stream().map(f -> json(f, wrong)).toList());
        card.put("choices", form.choices().stream().map(f -> json(f, wrong)).toList());
        return card;
    }

    private Map<String, Object> json(MeasureForm.Field field, List<Message> wrong) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("id", field.id());
        one.put("label", field.label());
        one.put("text", field.text());
        one.put("words", field.words());
        one.put("notes", String.join("; ", field.notes()));
        one.put(
                "wrong",
                wrong.stream()
                        .filter(m -> m.field().equals(field.id()))
                        .map(Message::text)
                        .toList());
        fields.slide(field).ifPresent(slide -> one.put("slide", slide));
        return one;
    }

    /** The texts of all fields out of what was sent; one that is not there counts as empty. */
    public Map<String, String> texts(Map<String, String> sent) {
        Map<String, String> texts = new LinkedHashMap<>();
        fields.measures().keySet().forEach(id -> texts.put(id, text(sent, id)));
        fields.options().keySet().forEach(id -> texts.put(id, text(sent, id)));
        return texts;
    }

    /** Reads the texts of all fields; what is not told of stays as it is in {@code drawing}. */
    public Reading read(Map<String, String> texts, Drawing drawing) {
        List<Message> wrong = new ArrayList<>();
        Measurements measured = measured(texts, drawing, wrong);
        Choices chosen = chosen(texts, drawing, wrong);
        return new Reading(measured, chosen, wrong);
    }

    private static String text(Map<String, String> sent, String id) {
        String text = sent.getOrDefault(id, "").strip();
        return text.length() > LONGEST_TEXT ? text.substring(0, LONGEST_TEXT) : text;
    }

    /** The measures as written; one that cannot be read keeps the value it was drawn with, so that all others are judged too. */
    private Measurements measured(Map<String, String> texts, Drawing drawing, List<Message> wrong) {
        Measurements measured = table;
        int row = 0;
        for (Map.Entry<String, Draft.Measure> field : fields.measures().entrySet()) {
            row++;
            String text = texts.getOrDefault(field.getKey(), "");
            if (text.equals(fields.text(field.getKey()))) {
                // What the table has is more exact than what the field shows of it.
                continue;
            }
            Draft.Measure measure = field.getValue();
            measured = without(measured, measure);
            if (text.isEmpty()) {
                continue;
            }
            Place place = new Place.Cell(PAGE, row, 1, text);
            Outcome<Quantity> read = amounts.read(table.body(), measure.name(), text, place);
            for (Diagnostic diagnostic : read.diagnostics()) {
                wrong.add(new Message(field.getKey(), words(diagnostic)));
            }
            Optional<Measurements.Entry> entry =
                    read.hasErrors() || read.value().isEmpty()
                            ? FormFields.entry(drawing.measurements(), measure)
                            : Optional.of(new Measurements.Entry(read.value().get(), place));
            if (entry.isPresent()) {
                measured = measured.with(
                        measure.name(), entry.get().quantity(), entry.get().place());
            }
        }
        return measured;
    }

    private static Measurements without(Measurements body, Draft.Measure measure) {
        List<String> keys = new ArrayList<>();
        keys.add(Measurements.key(measure.name()));
        measure.also().forEach(n -> keys.add(Measurements.key(n)));
        Map<String, Measurements.Entry> left = new LinkedHashMap<>(body.entries());
        left.keySet().removeIf(n -> keys.contains(Measurements.key(n)));
        return new Measurements(body.body(), left);
    }

    private Choices chosen(Map<String, String> texts, Drawing drawing, List<Message> wrong) {
        Choices chosen = set;
        for (Map.Entry<String, Draft.Option> field : fields.options().entrySet()) {
            String text = texts.getOrDefault(field.getKey(), "");
            if (text.equals(fields.text(field.getKey()))) {
                continue;
            }
            Draft.Option option = field.getValue();
            if (text.isEmpty()) {
                Map<String, Choice> left = new TreeMap<>(chosen.settings());
                left.remove(option.name());
                chosen = new Choices(left);
                continue;
            }
            Outcome<Choice> read =
                    option.kind() == Draft.Option.Kind.WORD ? Outcome.of(new Choice.Word(text)) : Choice.parse(text);
            for (Diagnostic diagnostic : read.diagnostics()) {
                wrong.add(new Message(field.getKey(), words(diagnostic)));
            }
            Choice kept = drawing.choices().settings().get(option.name());
            if (!read.hasErrors() && read.value().isPresent()) {
                chosen = chosen.with(option.name(), read.value().get());
            } else if (kept != null) {
                chosen = chosen.with(option.name(), kept);
            }
        }
        return chosen;
    }

    public Message message(Diagnostic diagnostic) {
        return new Message(field(diagnostic).orElse(""), words(diagnostic));
    }

    /** The field that a message is about: the one it has its place in, or else the one whose name it tells. */
    private Optional<String> field(Diagnostic diagnostic) {
        if (diagnostic.place() instanceof Place.Cell cell && cell.table().equals(PAGE)) {
            return fields.measures().keySet().stream().skip(cell.row() - 1).findFirst();
        }
        if (!(diagnostic.phrase().facts().get("name") instanceof Fact.Words name)) {
            return Optional.empty();
        }
        for (Map.Entry<String, Draft.Measure> field : fields.measures().entrySet()) {
            if (field.getValue().name().equals(name.text())) {
                return Optional.of(field.getKey());
            }
        }
        for (Map.Entry<String, Draft.Option> field : fields.options().entrySet()) {
            if (field.getValue().name().equals(name.text())) {
                return Optional.of(field.getKey());
            }
        }
        return Optional.empty();
    }

    /** The sentence, its code, and what to do, as the command line says it. */
    private String words(Diagnostic diagnostic) {
        StringBuilder words = new StringBuilder(style.wording().say(diagnostic.phrase()));
        diagnostic.hints().forEach(h -> words.append(' ').append(style.wording().say(h.phrase())));
        return words.append(" (").append(diagnostic.code().id()).append(')').toString();
    }
}
