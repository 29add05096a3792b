package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.PieceValues;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Piece;
import org.junit.jupiter.api.Test;

/** Darts against school geometry. */
class DartTest {
    private static final double HAIR = 1e-9;

    private static String panel(String more) {
        return """
                draft "Test"
                cloth shell wide 140 cm
                piece Panel {
                  point a = origin
                  point b = a right 30 cm
                  point c = b down 40 cm
                  point d = a down 40 cm
                  line top = a to b
                  line side = b to c
                  line low = c to d
                  line centre = d to a
                  %s
                  outline top, side, low, centre
                  allow 1 cm
                  cut 1 from shell
                  grain along centre
                }
                """.formatted(more);
    }

    private static PieceValues.NamedLine line(Drawing drawing, String name) {
        return Drafts.piece(drawing, "Panel").lines().stream()
                .filter(l -> l.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aDartLeavesTheLengthAndTakesItsIntakeOffWhatIsSewn() {
        Drawing drawing = Drafts.drawn(
                panel("dart tuck = on top halfway intake 3 cm to a right 15 cm down 12 cm\n  let whole = length(top)\n"
                        + "  let left_over = sewn(top)\n  let both = sewn(all top)\n  let wide = tuck.intake"));
        assertThat(Drafts.value(drawing, "Panel.whole")).isCloseTo(300, within(HAIR));
        assertThat(Drafts.value(drawing, "Panel.left_over")).isCloseTo(270, within(HAIR));
        assertThat(Drafts.value(drawing, "Panel.wide")).isCloseTo(30, within(HAIR));
        assertThat(line(drawing, "top").length()).isCloseTo(300, within(HAIR));
        assertThat(line(drawing, "top").sewn()).isCloseTo(270, within(HAIR));
        assertThat(line(drawing, "side").sewn()).isCloseTo(400, within(HAIR));
    }

    /**
     * Folded to one side, the fold stands at twice the half angle from the middle and must reach the edge: the peak lies h / cos 2a
     * from the tip, with tan a = 1.5 / 12.
     */
    @Test
    void thePeakMakesTheEdgeStraightWhenTheDartIsPressed() {
        Drawing drawing = Drafts.drawn(panel("dart tuck = on top halfway intake 3 cm to a right 15 cm down 12 cm"));
        Piece piece = Drafts.made(drawing, "Panel");
        double half = Math.atan(15.0 / 120);
        double wanted = 120 - 120 / Math.cos(2 * half);
        assertThat(piece.stitching().bounds().top()).isCloseTo(wanted, within(1e-9));
        assertThat(piece.notches()).as("one at each leg").hasSize(2);
        assertThat(piece.marks()).as("two legs and the fold line").hasSize(3);
    }

    /** A slanting dart: closed about its tip, its second leg falls on its first, since both are equally long. */
    @Test
    void theLegsOfASlantingDartAreEquallyLong() {
        Drawing drawing = Drafts.drawn(
                panel("dart tuck = on top at 1/3 intake 2.5 cm to a right 15 cm down 12 cm pressed toward b\n"
                        + "  point leg_top_a = tuck.leg_a.start\n  let la = length(tuck.leg_a)\n  let lb = length(tuck.leg_b)\n"
                        + "  let turn = tuck.angle"));
        double leg = Drafts.value(drawing, "Panel.la");
        assertThat(Drafts.value(drawing, "Panel.lb")).isCloseTo(leg, within(HAIR));
        Point tip = new Point(150, 120);
        Point b = new Point(100 + 12.5, 0);
        Vector way = b.minus(tip).unit();
        Point legB = tip.plus(way.times(leg));
        Point closed = Transform.turn(tip, Drafts.value(drawing, "Panel.turn")).apply(legB);
        assertThat(closed.distance(Drafts.point(drawing, "Panel.leg_top_a"))).isLessThan(1e-9);
    }

    @Test
    void aSeamIsSewnWithItsDartsClosed() {
        Drafts.drawn(panel("dart tuck = on top halfway intake 3 cm to a right 15 cm down 12 cm")
                + "strip Band long 27 cm wide 6 cm { allow 1 cm cut 1 from shell }\n"
                + "seam waist = Band.top to Panel.top within 0.01 mm\n");
    }

    @Test
    void noIntakeIsNoDartAndLessIsAMistake() {
        Drawing none = Drafts.drawn(panel("dart tuck = on top halfway intake 0 cm to a right 15 cm down 12 cm"));
        assertThat(Drafts.made(none, "Panel").marks()).isEmpty();
        assertThat(Drafts.made(none, "Panel").edge("top").orElseThrow().path().length())
                .isCloseTo(300, within(HAIR));
        Drawing negative = Drafts.draw(
                Drafts.sound(panel("dart tuck = on top halfway intake 1 cm - 3 cm to a right 15 cm down 12 cm")),
                Drafts.body());
        assertThat(Drafts.codes(negative.diagnostics())).containsExactly("PCE101");
        Drawing beyond = Drafts.draw(
                Drafts.sound(panel("dart tuck = on top at 1 cm intake 3 cm to a right 15 cm down 12 cm")),
                Drafts.body());
        assertThat(Drafts.codes(beyond.diagnostics())).containsExactly("PCE102");
    }

    @Test
    void aDartInsideThePieceIsMarkedAndLeavesTheEdgesAlone() {
        Drawing drawing = Drafts.drawn(panel("point p = a right 15 cm down 5 cm\n  point q = p down 20 cm\n"
                + "  dart tuck = between p and q intake 2 cm at p down 8 cm"));
        assertThat(Drafts.made(drawing, "Panel").marks()).hasSize(2);
        assertThat(line(drawing, "top").sewn()).isCloseTo(300, within(HAIR));
    }

    @Test
    void aMirroredPieceHasItsDartTurnedOver() {
        Drawing drawing = Drafts.drawn(panel("dart tuck = on top at 1/3 intake 3 cm to a right 12 cm down 12 cm")
                + "piece Other traced from Panel mirrored over Panel.centre { }\n");
        double right = Drafts.made(drawing, "Panel").stitching().bounds().right();
        assertThat(Drafts.made(drawing, "Other").stitching().bounds().left()).isCloseTo(-right, within(HAIR));
        assertThat(Drafts.made(drawing, "Other").stitching().bounds().top())
                .isCloseTo(Drafts.made(drawing, "Panel").stitching().bounds().top(), within(HAIR));
    }
}
