package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Point;
import org.gusset.core.pattern.Mark;
import org.gusset.core.pattern.Piece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Gathers and pleats against the arithmetic of the trade. */
class FullnessTest {
    private static final double HAIR = 1e-9;

    /** An oblong 90 cm wide and 60 cm deep. */
    private static String panel(String more) {
        return """
                draft "Test"
                cloth shell wide 140 cm
                piece Panel {
                  point a = origin
                  point b = a right 90 cm
                  point c = b down 60 cm
                  point d = a down 60 cm
                  line top = a to b
                  line side = b to c
                  line hem = c to d
                  line centre = d to a
                  outline top, side, hem, centre
                  allow 1 cm
                  cut 1 from shell
                  grain along centre
                  %s
                }
                """.formatted(more);
    }

    private static List<String> codes(String more) {
        var outcome = Drafts.compile(panel(more));
        return outcome.hasErrors()
                ? Drafts.codes(outcome.diagnostics())
                : Drafts.codes(Drafts.draw(outcome.value().orElseThrow(), Drafts.body())
                        .diagnostics());
    }

    @Test
    void aGatheredEdgeIsSewnAsLongAsItIsGatheredTo() {
        Drawing drawing =
                Drafts.drawn(panel("gather top to 36 cm\n  let drawn = length(top)\n  let left_over = sewn(top)\n"
                        + "  let round = sewn(all top)\n  let other = sewn(hem)"));
        assertThat(Drafts.value(drawing, "Panel.drawn")).isCloseTo(900, within(HAIR));
        assertThat(Drafts.value(drawing, "Panel.left_over")).isCloseTo(360, within(HAIR));
        assertThat(Drafts.value(drawing, "Panel.round")).isCloseTo(360, within(HAIR));
        assertThat(Drafts.value(drawing, "Panel.other")).isCloseTo(900, within(HAIR));
        assertThat(Drafts.piece(drawing, "Panel").lines())
                .filteredOn(l -> l.name().equals("top"))
                .allSatisfy(l -> assertThat(l.sewn()).isCloseTo(360, within(HAIR)));
    }

    @Test
    void aStretchIsGatheredBetweenTwoPointsAndNotchedAtThem() {
        Drawing drawing = Drafts.drawn(panel("point p = on top at 20 cm\n  point q = on top at 70 cm\n"
                + "  gather top between q and p to 25 cm\n  let left_over = sewn(top)"));
        assertThat(Drafts.value(drawing, "Panel.left_over")).isCloseTo(650, within(HAIR));
        Piece piece = Drafts.made(drawing, "Panel");
        assertThat(piece.notches()).hasSize(2);
        Mark.Gathers gathers = (Mark.Gathers) piece.marks().get(0);
        assertThat(gathers.to()).isCloseTo(250, within(HAIR));
        assertThat(gathers.along().start().distance(new Point(200, 5))).isLessThan(1e-6);
        assertThat(gathers.along().length()).isCloseTo(500, within(1e-6));
    }

    @Test
    void aDartInTheStretchCountsAsSewn() {
        Drawing drawing = Drafts.drawn(panel("dart tuck = on top at 30 cm intake 4 cm to a right 30 cm down 12 cm\n"
                + "  gather top to 50 cm\n  let left_over = sewn(top)"));
        assertThat(Drafts.value(drawing, "Panel.left_over")).isCloseTo(500, within(HAIR));
    }

    /** Edge-to-edge knife pleats take three times their finished width: 30 of 90 (printed in several sewing charts). */
    @ParameterizedTest
    @CsvSource({"a, -1", "b, 1"})
    void knifePleatsAreFoldedToTheSideTowardWhichTheyArePressed(String toward, int way) {
        Drawing drawing = Drafts.drawn(panel(
                "pleat top to 30 cm with 10 knife pleats pressed toward " + toward + "\n  let left_over = sewn(top)"));
        assertThat(Drafts.value(drawing, "Panel.left_over")).isCloseTo(300, within(HAIR));
        List<Mark.Pleat> pleats = Drafts.made(drawing, "Panel").marks().stream()
                .map(m -> (Mark.Pleat) m)
                .toList();
        assertThat(pleats).hasSize(10);
        for (int i = 0; i < 10; i++) {
            Mark.Pleat pleat = pleats.get(i);
            double fold = pleat.fold().start().x();
            double onto = pleat.onto().start().x();
            // 60 cm are taken up by ten pleats: 6 cm each, twice a depth of 3 cm.
            assertThat((onto - fold) * way).isCloseTo(60, within(1e-9));
            assertThat((onto + fold) / 2).isCloseTo(90 * i + 45, within(1e-9));
            assertThat(pleat.fold().end().y()).isPositive();
        }
    }

    /** A box pleat takes four times its depth; its folds turn away from each other. */
    @Test
    void boxPleatsHaveTwoFolds() {
        Drawing drawing = Drafts.drawn(panel("pleat top to 54 cm with 3 box pleats"));
        List<Mark.Pleat> pleats = Drafts.made(drawing, "Panel").marks().stream()
                .map(m -> (Mark.Pleat) m)
                .toList();
        assertThat(pleats).hasSize(6);
        // 36 cm by three: 12 cm each, depth 3 cm, face 6 cm.
        assertThat(pleats.get(0).fold().start().x()).isCloseTo(150 - 30, within(1e-9));
        assertThat(pleats.get(0).onto().start().x()).isCloseTo(150 - 90, within(1e-9));
        assertThat(pleats.get(1).fold().start().x()).isCloseTo(150 + 30, within(1e-9));
        assertThat(pleats.get(1).onto().start().x()).isCloseTo(150 + 90, within(1e-9));
    }

    @Test
    void anEdgeThatWasSlashedIsGatheredAsItIsInTheEnd() {
        Drawing drawing =
                Drafts.drawn(panel("slash from on hem at 40 cm to on top at 30 cm spread 20 cm\n  gather hem to 90 cm\n"
                                + "  let wide = length(hem)")
                        + "let sewn_hem = sewn(Panel.hem)\n");
        assertThat(Drafts.value(drawing, "Panel.wide")).isCloseTo(1100, within(HAIR));
        assertThat(Drafts.value(drawing, "sewn_hem")).isCloseTo(900, within(HAIR));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "gather top to 91 cm | PCE111",
                "gather top to 0 cm | PCE111",
                "gather top between a and (a right 40 cm) to 20 cm\\n gather top between (a right 30 cm) and b to 20 cm | PCE112",
                "gather top between a and a to 20 cm | PCE113",
                "gather top between a and c to 20 cm | GEO111",
                "gather a to 20 cm | KND009",
                "pleat top to 30 cm with 5/2 pleats | GEO120",
                "pleat top to 30 cm with 2 cm pleats | DIM002",
            })
    void whatCannotBeBroughtInIsSaid(String more, String code) {
        assertThat(codes(more.replace("\\n", "\n "))).contains(code);
    }
}
