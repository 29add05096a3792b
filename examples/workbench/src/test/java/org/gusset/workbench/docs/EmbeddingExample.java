package org.gusset.workbench.docs;

import java.util.Map;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.svg.Svg;
import org.gusset.svg.sheet.SheetOptions;

/** The example of the README, which a test holds to this text. */
final class EmbeddingExample {
    private EmbeddingExample() {}

    // README
    static Map<String, String> halfCircleSkirt(String text) {
        Draft draft =
                Gusset.compile(Source.of("half-circle-skirt.gusset", text)).orThrow();
        Measurements maren = Measurements.of("Maren Oddway")
                .with("waist", Quantity.of(31, Unit.IN))
                .with("side_length", Quantity.of(70, Unit.CM));
        Choices choices = Choices.none().with("band_width", Quantity.of(4, Unit.CM));
        Drawing drawing = draft.evaluate(maren, choices).orThrow();
        return Svg.pieces(drawing, SheetOptions.defaults().withLengths(LengthStyle.INCHES));
    }
    // end
}
