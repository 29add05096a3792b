package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.json.DrawingJson;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A drawing that takes over what did not change is the drawing that is made anew: the definition itself, on every shipped draft. */
class DrawnAnewTest {
    static List<String> drafts() {
        return Fitted.drafts();
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void withOneMeasureOfAnotherBodyAfterTheOther(String name) {
        Draft draft = Fitted.draft(name);
        Measurements from = Fitted.body("Maren Oddway");
        Measurements to = Fitted.body("Bartholo Grumthorpe");
        Drawing drawing = draft.evaluate(from, Choices.none()).value().orElseThrow();
        Measurements measures = from;
        int changes = 0;
        for (Draft.Measure measure : draft.measures()) {
            Quantity other = to.entry(measure.name())
                    .map(Measurements.Entry::quantity)
                    .orElseGet(() -> new Quantity(300, measure.dimension()));
            measures = measures.with(measure.name(), other);
            drawing = drawing.with(measures);
            same(drawing, draft, measures, Choices.none());
            changes++;
        }
        assertThat(changes).isEqualTo(draft.measures().size());
        same(drawing.with(from), draft, from, Choices.none());
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void withOtherChoicesAndBack(String name) {
        Draft draft = Fitted.draft(name);
        Measurements body = Fitted.body("Maren Oddway");
        Drawing usual = draft.evaluate(body, Choices.none()).value().orElseThrow();
        for (Choices choices : choices(draft)) {
            Drawing other = usual.with(choices);
            same(other, draft, body, choices);
            same(other.with(Choices.none()), draft, body, Choices.none());
        }
    }

    /** Every word and every answer by itself, wrong ones among them. */
    private static List<Choices> choices(Draft draft) {
        List<Choices> all = new ArrayList<>();
        all.add(Choices.none());
        for (Draft.Option option : draft.options()) {
            if (option.kind() == Draft.Option.Kind.ANSWER) {
                all.add(Choices.none().with(option.name(), true));
                all.add(Choices.none().with(option.name(), false));
            }
            for (String word : option.words()) {
                all.add(Choices.none().with(option.name(), word));
            }
            all.add(Choices.none().with(option.name(), "nonsense"));
        }
        return all;
    }

    private static void same(Drawing changed, Draft draft, Measurements measures, Choices choices) {
        Drawing anew = draft.evaluate(measures, choices).value().orElseThrow();
        assertThat(changed.sewing()).isEqualTo(anew.sewing());
        assertThat(changed.pieces()).isEqualTo(anew.pieces());
        assertThat(changed.findings()).isEqualTo(anew.findings());
        assertThat(DrawingJson.of(changed)).isEqualTo(DrawingJson.of(anew));
    }
}
