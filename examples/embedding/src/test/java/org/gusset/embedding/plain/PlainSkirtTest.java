package org.gusset.embedding.plain;

import java.io.IOException;
import java.util.List;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;
import org.gusset.embedding.Cast;
import org.junit.jupiter.api.Test;

class PlainSkirtTest {
    @Test
    void theSkirtInJavaIsTheSkirtInText() throws IOException {
        Draft plain = PlainSkirt.draft();
        Draft written = Cast.draft("skirt-block.gusset");
        List<Choices> choices = List.of(Choices.none(), Choices.none().with("skirt_length", Quantity.of(24, Unit.IN)));
        for (Measurements body : Cast.of("quillhaven.csv")) {
            for (Choices chosen : choices) {
                SameDrawing.holds(
                        plain.evaluate(body, chosen).value().orElseThrow(),
                        written.evaluate(body, chosen).value().orElseThrow(),
                        body.body());
            }
        }
    }
}
