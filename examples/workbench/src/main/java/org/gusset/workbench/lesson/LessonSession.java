package org.gusset.workbench.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
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

/**
 * A lesson whose measures and choices can be changed. What was written last and the last good drawing are kept; only what depends on a
 * changed value is computed anew. May be used by several threads.
 */
public final class LessonSession {
    private static final String PAGE = "page";
    private static final int LONGEST_TEXT = 200;

    private final LengthStyle style;
    private final AmountReading amounts;
    private final Function<Drawing, LessonContent> teaching;
    private final FormFields fields;
    private final Measurements table;
    private final Choices set;
    private Drawing drawing;
    private LessonContent lesson;
    private Map<String, String> written = Map.of();
    private List<MeasureForm.Message> messages;
    private String outcome = "";

    /**
     * A session that begins with a drawing.
     *
     * @param first the drawing; what is wrong with it is told on the page
     * @param style how lengths are shown
     * @param amounts reads the measures that are written
     * @param teaching makes the lesson of a drawing
     */
    public LessonSession(
            Drawing first, LengthStyle style, AmountReading amounts, Function<Drawing, LessonContent> teaching) {
        this.style = style;
        this.amounts = amounts;
        this.teaching = teaching;
        this.fields = new FormFields(first, style);
        this.table = first.measurements();
        this.set = first.choices();
        this.drawing = first;
        this.lesson = teaching.apply(first);
        this.messages = first.proved()
                ? List.of()
                : first.explained(style).stream().map(this::message).toList();
    }

    /** The page as it is now. */
    synchronized String page(String address) {
        return LessonPage.served(lesson, fields.form(address, written, messages, outcome));
    }

    /**
     * Takes what stands in the form; if anything is wrong the lesson stays as it was.
     *
     * @param sent the texts by field; one that is not there counts as empty
     * @return what the page is told: {@code messages}, {@code outcome}, and if it was drawn again {@code steps} and {@code rules}
     */
    synchronized Map<String, Object> take(Map<String, String> sent) {
        Map<String, String> texts = new LinkedHashMap<>();
        fields.measures().keySet().forEach(id -> texts.put(id, text(sent, id)));
        fields.options().keySet().forEach(id -> texts.put(id, text(sent, id)));
        List<MeasureForm.Message> wrong = new ArrayList<>();
        Measurements measured = measured(texts, wrong);
        Choices chosen = chosen(texts, wrong);
        boolean readable = wrong.isEmpty();
        Drawing next = drawing;
        if (!measured.equals(next.measurements())) {
            next = next.with(measured);
        }
        if (!chosen.equals(next.choices())) {
            next = next.with(chosen);
        }
        List<Diagnostic> found = next.proved() ? next.diagnostics() : next.explained(style);
        found.forEach(d -> wrong.add(message(d)));
        written = texts;
        messages = List.copyOf(wrong);
        Map<String, Object> answer = new LinkedHashMap<>();
        if (readable && next.proved()) {
            drawing = next;
            lesson = teaching.apply(next);
            outcome = "Drawn with these measures.";
            PageSteps steps = new PageSteps(lesson.frames());
            answer.put("steps", steps.list() + steps.main());
            answer.put("rules", steps.rules());
        } else {
            outcome = "Not drawn. The lesson still shows the measures of before.";
        }
        answer.put("outcome", outcome);
        answer.put(
                "messages",
                messages.stream()
                        .map(m -> new TreeMap<>(Map.of("field", m.field(), "text", m.text())))
                        .toList());
        return answer;
    }

    private static String text(Map<String, String> sent, String id) {
        String text = sent.getOrDefault(id, "").strip();
        return text.length() > LONGEST_TEXT ? text.substring(0, LONGEST_TEXT) : text;
    }

    /** The measures as written; one that cannot be read keeps the value it was drawn with, so that all others are judged too. */
    private Measurements measured(Map<String, String> texts, List<MeasureForm.Message> wrong) {
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
                wrong.add(new MeasureForm.Message(field.getKey(), words(diagnostic)));
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

    private Choices chosen(Map<String, String> texts, List<MeasureForm.Message> wrong) {
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
                wrong.add(new MeasureForm.Message(field.getKey(), words(diagnostic)));
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

    private MeasureForm.Message message(Diagnostic diagnostic) {
        return new MeasureForm.Message(field(diagnostic).orElse(""), words(diagnostic));
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
