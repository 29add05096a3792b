package org.gusset.core.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.gusset.core.pattern.Shapes.p;

import java.util.List;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Position;
import org.junit.jupiter.api.Test;

/** Allowances wider than a hollow or the room between two edges, and a whole bodice. */
class TightAllowanceTest {
    private static Outcome<Piece> told(Shapes shapes, PieceCode... codes) {
        Outcome<Piece> made = shapes.cut(1, Cut.Arrangement.SINGLE).make();
        assertThat(made.diagnostics()).extracting(d -> (PieceCode) d.code()).containsExactly(codes);
        assertThat(made.orThrow().cutting().selfMeetings()).isEmpty();
        return made;
    }

    @Test
    void aScoopNarrowerThanTheAllowanceVanishesFromTheCuttingLine() {
        Outcome<Piece> made = told(
                Shapes.piece()
                        .edge("left", Path.line(p(0, 0), p(80, 0)))
                        .edge("scoop", Path.arc(p(100, 0), 20, 180, 180))
                        .edge("rest", Path.line(p(120, 0), p(200, 0), p(200, 100), p(0, 100), p(0, 0)))
                        .allow(30),
                PieceCode.TOO_TIGHT);
        // A semicircle of 20 mm bears 20 mm.
        assertThat(made.diagnostics().get(0).phrase().facts())
                .containsEntry("most", Fact.length(20))
                .containsEntry("width", Fact.length(30));
        Piece piece = made.orThrow();
        assertThat(piece.cutArea()).isCloseTo(260 * 160, within(1e-3));
        assertThat(piece.cuttingEdge("scoop").length()).isCloseTo(0, within(1e-6));
    }

    @Test
    void aSlotNarrowerThanTwoAllowancesIsCutAcross() {
        Outcome<Piece> made = told(
                Shapes.polygon(
                                p(0, 0),
                                p(100, 0),
                                p(100, 150),
                                p(120, 150),
                                p(120, 0),
                                p(220, 0),
                                p(220, 200),
                                p(0, 200))
                        .allow(15),
                PieceCode.ALLOWANCES_OVERLAP);
        assertThat(made.orThrow().cutArea()).isCloseTo(250 * 230, within(1e-3));
        Outcome<Piece> wider = told(Shapes.polygon(
                        p(0, 0), p(100, 0), p(100, 150), p(135, 150), p(135, 0), p(235, 0), p(235, 200), p(0, 200))
                .allow(15));
        assertThat(wider.orThrow().cutArea()).isCloseTo(265 * 230 - 5 * 150, within(1e-3));
    }

    @Test
    void aSharpHollowOfACurveIsCutWhereItsCopyCrossesItself() {
        CubicSegment vee = new CubicSegment(p(0, 0), p(190, 120), p(10, 120), p(200, 0));
        Outcome<Piece> made = told(
                Shapes.piece()
                        .edge("vee", Path.of(vee))
                        .edge("rest", Path.line(p(200, 0), p(200, 200), p(0, 200), p(0, 0)))
                        .allow(25),
                PieceCode.TOO_TIGHT);
        Path cut = made.orThrow().cuttingEdge("vee");
        double lowest = Double.NEGATIVE_INFINITY;
        for (Point q : cut.flatten(0.001)) {
            // Nowhere nearer to the seam than the allowance, and at the crossing just as far from both sides.
            assertThat(Path.of(vee).nearest(q).distance()).isGreaterThan(25 - 0.01);
            lowest = Math.max(lowest, q.y());
        }
        // By symmetry the copies cross in the middle.
        assertThat(cut.nearest(p(100, lowest)).distance()).isCloseTo(0, within(0.01));
    }

    @Test
    void aBodiceBackOnTheFold() {
        CubicSegment neck = new CubicSegment(p(0, 20), p(45, 20), p(74, 28), p(78, 0));
        CubicSegment armhole = new CubicSegment(p(200, 45), p(165, 130), p(170, 215), p(245, 225));
        Piece piece = Shapes.piece()
                .edge("neck", Path.of(neck))
                .edge("shoulder", Path.line(p(78, 0), p(200, 45)))
                .edge("armhole", Path.of(armhole))
                .edge("side", Path.line(p(245, 225), p(225, 420)))
                .edge("waist", Path.line(p(225, 420), p(0, 420)))
                .edge("centre", Path.line(p(0, 420), p(0, 20)))
                .allow(15)
                .allow("neck", 10)
                .turnedUp("waist", 40)
                .corner("shoulder", "armhole", Corner.Form.SQUARED, "shoulder")
                .notch("armhole", Path.of(armhole).at(120), 2)
                .onFold("centre")
                .quiet();
        assertThat(piece.cuttingEdge("waist").start().y()).isCloseTo(460, within(1e-6));
        assertThat(piece.cuttingEdge("waist").end().distance(p(0, 460))).isLessThan(1e-6);
        assertThat(piece.cuttingEdge("neck").start().distance(p(0, 10))).isLessThan(1e-6);
        // Every edge's cut lies its own allowance off the seam, but for the prolongations at its ends.
        for (String name : List.of("neck", "shoulder", "armhole", "side")) {
            Edge edge = piece.edge(name).orElseThrow();
            int square = 0;
            for (int i = 0; i <= 100; i++) {
                Position foot = edge.path().nearest(edge.cut().at(edge.cut().length() * i / 100));
                if (foot.s() > 1e-6 && foot.s() < edge.path().length() - 1e-6) {
                    assertThat(foot.distance()).isCloseTo(edge.allowance().width(), within(0.01));
                    square++;
                }
            }
            assertThat(square).as(name).isGreaterThan(60);
        }
        assertThat(piece.worn()).isEqualTo(2);
        assertThat(piece.notches().get(0).ticks()).hasSize(2);
    }
}
