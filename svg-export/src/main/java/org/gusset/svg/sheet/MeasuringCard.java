package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.NeededMeasure;
import org.gusset.core.draft.Needs;
import org.gusset.core.measure.LengthStyle;

/** The card on which the measures that a draft needs are written down: how each is taken, its usual range, and a box for the figure. */
public final class MeasuringCard {
    private static final double BOX_WIDTH = 34;
    private static final double BOX_HEIGHT = 8;
    private static final double NOTES_HEIGHT = 30;

    private final Needs needs;
    private final LengthStyle style;
    private final Words words;

    private MeasuringCard(Needs needs, LengthStyle style) {
        this.needs = needs;
        this.style = style;
        this.words = new Words(style.wording());
    }

    /** The card; ranges and rules in this style. */
    public static Form of(Needs needs, LengthStyle style) {
        return new MeasuringCard(needs, style).form();
    }

    private Form form() {
        List<Form.Section> sections = new ArrayList<>();
        sections.add(new Form.Section(
                words.say("card-whom", "For whom"),
                List.of(),
                List.of(Form.Row.of(
                        word("card-name", "name"),
                        new Form.Blank(92, BOX_HEIGHT),
                        word("card-date", "date"),
                        new Form.Blank(BOX_WIDTH, BOX_HEIGHT)))));
        List<Form.Row> rows = new ArrayList<>();
        needs.measures().forEach(m -> rows.add(row(m)));
        if (!rows.isEmpty()) {
            sections.add(new Form.Section(
                    words.say("card-measures", "Measures"),
                    List.of(
                            words.say("card-measure", "measure and how to take it"),
                            words.say("card-range", "usual range"),
                            words.say("card-figure", "figure, with its unit")),
                    rows));
        }
        if (!needs.corrections().isEmpty()) {
            List<Form.Row> corrections = new ArrayList<>();
            needs.corrections().forEach(c -> corrections.add(row(c)));
            sections.add(new Form.Section(
                    words.say("card-corrections", "Corrections, after a fitting"), List.of(), corrections));
        }
        sections.add(new Form.Section(
                words.say("card-posture", "Posture: what the eye sees and the tape does not tell"),
                List.of(),
                List.of(Form.Row.of(new Form.Blank(BOX_WIDTH, NOTES_HEIGHT)))));
        List<String> notes = new ArrayList<>();
        if (!needs.draft().note().isEmpty()) {
            notes.add(needs.draft().note());
        }
        if (rows.isEmpty()) {
            notes.add(words.say("card-none", "It needs no measure of a body."));
        }
        return new Form(
                words.say(
                        "card-title",
                        "Measuring card: {title}",
                        "title",
                        needs.draft().title()),
                notes,
                sections,
                words.say(
                        "card-foot",
                        "Write each figure with its unit, as 97 cm or 38 1/2 in. Leave blank what was not taken."));
    }

    private Form.Cell word(String key, String english) {
        return new Form.Words(words.say(key, english), "");
    }

    private Form.Row row(NeededMeasure needed) {
        Draft.Measure measure = needed.measure();
        List<String> small = new ArrayList<>();
        if (!measure.howTo().isEmpty()) {
            small.add(measure.howTo());
        }
        Optional<String> rule = needs.rule(measure, style);
        rule.ifPresent(r -> small.add(words.say("card-rule", "may be left out: then {rule}", "rule", r)));
        if (!needed.standsInFor().isEmpty()) {
            small.add(words.say(
                    "card-stands-in",
                    "only if this is not taken: {measures}",
                    "measures",
                    Words.spoken(needed.standsInFor())));
        }
        String name = measure.also().isEmpty()
                ? Words.spoken(needed.name())
                : words.say(
                        "card-also",
                        "{name} (also {others})",
                        "name",
                        Words.spoken(needed.name()),
                        "others",
                        Words.spoken(measure.also()));
        return Form.Row.of(
                new Form.Words(name, String.join("; ", small)),
                new Form.Words(needs.range(measure, style).orElse(""), ""),
                new Form.Blank(BOX_WIDTH, BOX_HEIGHT));
    }

    private Form.Row row(Draft.Option correction) {
        return Form.Row.of(
                new Form.Words(Words.spoken(correction.name()), correction.note()),
                new Form.Words(needs.range(correction, style).orElse(""), ""),
                new Form.Blank(BOX_WIDTH, BOX_HEIGHT));
    }
}
