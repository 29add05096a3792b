package org.gusset.svg.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.cloth.Copies;
import org.gusset.core.cloth.CuttingOrder;
import org.gusset.core.cloth.LaidPiece;
import org.gusset.core.cloth.LaidWay;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A laid piece carries its number, its name and its warp, however small it is, and none of them on another. */
class LaidFigureTest {
    private static final Transform TENTH = new Transform(0.1, 0, 0, 0.1, 0, 0);

    /** How far a parallelogram leans along the warp over its height: as far as it is high on the bias. */
    @ParameterizedTest
    @CsvSource({
        // a waistband, a cuff, a placket, a narrow tie, a collar across, a tab, a loop, binding
        "740, 60, 0, 7 Waistband",
        "240, 120, 0, 7 Waistband",
        "190, 50, 0, 7 Waistband",
        "440, 22, 0, 7",
        "60, 400, 0, 7 Waistband",
        "60, 40, 0, 7",
        "30, 20, 0, 7",
        "42, 560, 560, 7 Waistband"
    })
    void wordsAndWarpStandClearOfOneAnother(double along, double across, double lean, String named) {
        List<Point> ring =
                List.of(new Point(0, 0), new Point(along, 0), new Point(along + lean, across), new Point(lean, across));
        LaidPiece laid = new LaidPiece(
                Shapes.lyingStrip(),
                LaidWay.FLAT,
                1,
                Transform.NONE,
                ring,
                new Copies(1, 0, 0),
                Copies.NONE,
                Optional.empty(),
                Optional.empty());
        Phrase words = Phrase.of("lay.piece", "Waistband, 1 piece");
        CuttingOrder.Step step = new CuttingOrder.Step(7, 0, laid, 0, words);
        SheetOptions options = SheetOptions.defaults();
        Ink.Group figure = new LaidFigure(step, TENTH, new Words(options.wording()), options.styles()).draw(new Ids());

        List<Ink.TextLine> texts = all(figure, Ink.TextLine.class);
        assertThat(texts.get(0).text()).isEqualTo(named);
        List<Ink.Stroke> strokes = all(figure, Ink.Stroke.class);
        // A loop of 3 cm by 2 cm has room for its number alone.
        assertThat(strokes.stream().anyMatch(s -> s.role() == Role.LAID_GRAIN)).isEqualTo(along * across > 1000);
        for (Ink.TextLine text : texts) {
            Oblong box = box(text);
            for (Ink.Stroke stroke : strokes) {
                List<Point> points = stroke.path().flatten(0.1);
                for (int i = 1; i < points.size(); i++) {
                    assertThat(box.meets(points.get(i - 1), points.get(i), 0))
                            .as("%s and %s", text.text(), stroke.role())
                            .isFalse();
                }
            }
        }
    }

    private static <T extends Ink> List<T> all(Ink.Group group, Class<T> kind) {
        List<T> found = new ArrayList<>();
        group.items().stream().filter(kind::isInstance).map(kind::cast).forEach(found::add);
        return found;
    }

    /** The room of a line of words, from 0.75 em above its baseline to 0.1 em below it: figures and capitals. */
    private static Oblong box(Ink.TextLine text) {
        double size = text.size();
        double width = TextMeasure.width(text.text(), size, text.role() == Role.LAID_NAME);
        Oblong at = new Oblong(text.at(), width, 0.85 * size, text.turn());
        double aside = text.anchor() == Ink.Anchor.MIDDLE ? 0 : width / 2;
        return new Oblong(at.at(aside, -0.325 * size), width, 0.85 * size, text.turn());
    }
}
