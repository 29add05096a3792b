package org.gusset.core.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.gusset.core.pattern.Shapes.p;

import org.assertj.core.data.Offset;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.junit.jupiter.api.Test;

/** Allowances wider than the room outside the edge. Areas are closed forms of school geometry. */
class HollowTest {
    /** In square mm. */
    private static final Offset<Double> AREA = within(1e-4);

    /** A rectangle of 100 by 60 whose top has a half-round bite of radius 8. */
    private static Shapes bitten() {
        return Shapes.piece()
                .edge("top_left", Path.line(p(-50, 0), p(-8, 0)))
                .edge("bite", Path.arc(p(0, 0), 8, 180, 180))
                .edge("top_right", Path.line(p(8, 0), p(50, 0)))
                .edge("right", Path.line(p(50, 0), p(50, 60)))
                .edge("bottom", Path.line(p(50, 60), p(-50, 60)))
                .edge("left", Path.line(p(-50, 60), p(-50, 0)));
    }

    /** A rectangle of 100 by 60 whose top has a slot, {@code wide} mm wide and 30 deep. */
    private static Shapes slotted(double wide) {
        double half = wide / 2;
        return Shapes.piece()
                .edge("top_left", Path.line(p(-50, 0), p(-half, 0)))
                .edge("slot_left", Path.line(p(-half, 0), p(-half, 30)))
                .edge("slot_foot", Path.line(p(-half, 30), p(half, 30)))
                .edge("slot_right", Path.line(p(half, 30), p(half, 0)))
                .edge("top_right", Path.line(p(half, 0), p(50, 0)))
                .edge("right", Path.line(p(50, 0), p(50, 60)))
                .edge("bottom", Path.line(p(50, 60), p(-50, 60)))
                .edge("left", Path.line(p(-50, 60), p(-50, 0)));
    }

    private static double mm(Diagnostic diagnostic, String fact) {
        return diagnostic.phrase().facts().get(fact) instanceof Fact.Length length ? length.mm() : Double.NaN;
    }

    /** What stays open of the bite is 2 (8 - 6) wide and 6 deep, ending in a half round of radius 2. */
    @Test
    void aHollowThatBearsItsAllowanceKeepsItsShape() {
        Piece piece = bitten().allow(6).quiet();
        assertThat(piece.cutArea()).isCloseTo(112 * 72 - 4 * 6 - Math.PI * 2 * 2 / 2, AREA);
        assertThat(piece.cuttingEdge("bite").length()).isGreaterThan(Math.PI * 2);
    }

    /** The allowances of both sides of the bite close it altogether: the straight top goes on over it. */
    @Test
    void aHollowTighterThanItsAllowanceIsBridgedWithAWarning() {
        Shapes shapes = bitten().allow(10);
        assertThat(shapes.codes()).contains("PCE022").doesNotContain("PCE025");
        Piece piece = shapes.sound();
        assertThat(piece.cutArea()).isCloseTo(120 * 80, AREA);
        assertThat(piece.cutting().selfMeetings()).isEmpty();
        Diagnostic told = shapes.make().diagnostics().stream()
                .filter(d -> d.code() == PieceCode.TOO_TIGHT)
                .findFirst()
                .orElseThrow();
        assertThat(told.message()).contains("`bite`").contains("Back");
        assertThat(mm(told, "width")).isEqualTo(10);
        assertThat(mm(told, "most")).isCloseTo(8, within(1e-6));
        assertThat(mm(told, "right")).isCloseTo(0, within(1e-6));
        assertThat(mm(told, "down")).isCloseTo(8, within(1e-6));
    }

    /** The allowance is as wide as the radius: the copy of the arc is one point. */
    @Test
    void aHollowAsTightAsItsAllowanceGivesASoundLine() {
        Piece piece = bitten().allow(8).sound();
        assertThat(piece.cutArea()).isCloseTo(116 * 76, AREA);
        assertThat(piece.cutting().selfMeetings()).isEmpty();
    }

    @Test
    void aSlotThatBearsItsAllowancesStaysOpen() {
        Piece piece = slotted(20).allow(8).quiet();
        assertThat(piece.cutArea()).isCloseTo(116 * 76 - 4 * 30, AREA);
    }

    @Test
    void aSlotNarrowerThanItsAllowancesIsClosedWithAWarning() {
        Shapes shapes = slotted(10).allow(8);
        assertThat(shapes.codes()).isNotEmpty().containsOnly("PCE023");
        Piece piece = shapes.sound();
        assertThat(piece.cutArea()).isCloseTo(116 * 76, AREA);
        assertThat(piece.cutting().selfMeetings()).isEmpty();
    }

    /** Every place of a cutting line without corners of its own is the allowance away from the seam, and none is nearer. */
    @Test
    void aCurveTooTightAtItsFootIsCutOffWhereItsCopyCrossesItself() {
        Path hollow = Path.of(
                new CubicSegment(p(-60, 0), p(20, 0), p(-20, 80), p(0, 80)),
                new CubicSegment(p(0, 80), p(20, 80), p(-20, 0), p(60, 0)));
        Shapes shapes = Shapes.piece()
                .edge("hollow", hollow)
                .edge("right", Path.line(p(60, 0), p(60, 140)))
                .edge("bottom", Path.line(p(60, 140), p(-60, 140)))
                .edge("left", Path.line(p(-60, 140), p(-60, 0)))
                .allow(15);
        assertThat(shapes.codes()).isNotEmpty().containsOnly("PCE022");
        Piece piece = shapes.sound();
        assertThat(piece.cutting().selfMeetings()).isEmpty();
        Path cut = piece.cuttingEdge("hollow");
        assertThat(cut.length()).isGreaterThan(50);
        for (int i = 0; i <= 400; i++) {
            Point at = cut.at(cut.length() * i / 400);
            // Beyond its ends, at the mitres, the copy runs on straight.
            if (Math.abs(at.x()) < 60) {
                assertThat(hollow.nearest(at).distance()).isCloseTo(15, within(0.01));
            }
        }
    }
}
