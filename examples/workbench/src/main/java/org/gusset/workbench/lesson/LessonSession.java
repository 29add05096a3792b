package org.gusset.workbench.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;

/**
 * A lesson whose measures and choices can be changed. What was written last and the last good drawing are kept; only what depends on a
 * changed value is computed anew. May be used by several threads.
 */
public final class LessonSession {
    private final LengthStyle style;
    private final Function<Drawing, LessonContent> teaching;
    private final MeasuringCard card;
    private Drawing drawing;
    private LessonContent lesson;
    private Map<String, String> written = Map.of();
    private List<MeasuringCard.Message> messages;
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
        this.teaching = teaching;
        this.card = new MeasuringCard(first, style, amounts);
        this.drawing = first;
        this.lesson = teaching.apply(first);
        this.messages = first.proved()
                ? List.of()
                : first.explained(style).stream().map(card::message).toList();
    }

    /** The page as it is now. */
    synchronized String page(String address) {
        return LessonPage.served(lesson, card.fields().form(address, written, messages, outcome));
    }

    /**
     * Takes what stands in the form; if anything is wrong the lesson stays as it was.
     *
     * @param sent the texts by field; one that is not there counts as empty
     * @return what the page is told: {@code messages}, {@code outcome}, and if it was drawn again {@code steps} and {@code rules}
     */
    synchronized Map<String, Object> take(Map<String, String> sent) {
        Map<String, String> texts = card.texts(sent);
        MeasuringCard.Reading read = card.read(texts, drawing);
        List<MeasuringCard.Message> wrong = new ArrayList<>(read.wrong());
        Measurements measured = read.measurements();
        Choices chosen = read.choices();
        boolean readable = wrong.isEmpty();
        Drawing next = drawing;
        if (!measured.equals(next.measurements())) {
            next = next.with(measured);
        }
        if (!chosen.equals(next.choices())) {
            next = next.with(chosen);
        }
        List<Diagnostic> found = next.proved() ? next.diagnostics() : next.explained(style);
        found.forEach(d -> wrong.add(card.message(d)));
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
}
