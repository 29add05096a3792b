package org.gusset.embedding.plain;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;
import org.gusset.embedding.Cast;
import org.junit.jupiter.api.Test;

class PlainSmockTest {
    private static final List<Choices> CHOICES = List.of(
            Choices.none(),
            Choices.none().with("neckline", "round").with("pockets", false),
            Choices.none().with("side_in", Quantity.of(1, Unit.CM)).with("ease", Quantity.of(30, Unit.CM)),
            Choices.none().with("ease", Quantity.of(90, Unit.CM)).with("body_length", Quantity.of(40, Unit.CM)));

    @Test
    void theSmockInJavaIsTheSmockInText() throws IOException {
        Draft plain = PlainSmock.draft();
        Draft written = Cast.draft("smock.gusset");
        for (Measurements body : Cast.of("quillhaven.csv")) {
            for (Choices choices : body.body().startsWith("Pip") ? CHOICES : CHOICES.subList(0, 2)) {
                SameDrawing.holds(
                        plain.evaluate(body, choices).value().orElseThrow(),
                        written.evaluate(body, choices).value().orElseThrow(),
                        body.body());
            }
        }
    }

    @Test
    void computedAnewForAnotherBodyItIsTheSame() throws IOException {
        List<Measurements> cast = Cast.of("quillhaven.csv");
        Drawing first =
                PlainSmock.draft().evaluate(cast.get(0), Choices.none()).value().orElseThrow();
        Drawing other = Cast.draft("smock.gusset")
                .evaluate(cast.get(1), Choices.none())
                .value()
                .orElseThrow();
        SameDrawing.holds(first.with(cast.get(1)), other, "the second body");
        assertThat(first.pieces()).isNotEqualTo(other.pieces());
    }
}
