package org.gusset.core.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.gusset.core.pattern.Shapes.p;

import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.junit.jupiter.api.Test;

/** Outlines: edges turned round, and what is said of those that do not close. */
class OutlineTest {
    private static Diagnostic only(Shapes shapes) {
        Outcome<Piece> made = shapes.cut(1, Cut.Arrangement.SINGLE).make();
        assertThat(made.value()).isEmpty();
        assertThat(made.diagnostics()).hasSize(1);
        assertThat(made.diagnostics().get(0).hints()).isNotEmpty();
        assertThat(made.diagnostics().get(0).message()).doesNotContain("{");
        assertThat(made.diagnostics().get(0).hints().get(0).phrase().toString()).doesNotContain("{");
        return made.diagnostics().get(0);
    }

    @Test
    void edgesAreTurnedSoThatTheyRunOn() {
        Point[] corners = {p(0, 0), p(300, 0), p(300, 200), p(0, 200)};
        // Every mix of ways.
        for (int mix = 0; mix < 16; mix++) {
            Shapes shapes = Shapes.piece();
            for (int i = 0; i < 4; i++) {
                Path edge = Path.line(corners[i], corners[(i + 1) % 4]);
                shapes.edge("e" + i, (mix >> i & 1) == 0 ? edge : edge.reversed());
            }
            Piece piece = shapes.allow(10).quiet();
            assertThat(piece.area()).isCloseTo(60000, within(1e-6));
            assertThat(piece.cutArea()).isCloseTo(320 * 220, within(1e-6));
            assertThat(piece.edges()).extracting(Edge::name).containsExactly("e0", "e1", "e2", "e3");
        }
    }

    @Test
    void theFirstEdgeKeepsItsWayIfBothWaysClose() {
        Piece piece = Shapes.piece()
                .edge("bow", Path.arc(p(0, 0), 100, 0, 180))
                .edge("string", Path.line(p(100, 0), p(-100, 0)))
                .allow(10)
                .quiet();
        assertThat(piece.edge("bow").orElseThrow().path()).isEqualTo(Path.arc(p(0, 0), 100, 0, 180));
        assertThat(piece.edge("string").orElseThrow().path().end()).isEqualTo(p(100, 0));
    }

    @Test
    void oneClosedEdgeIsAnOutline() {
        Piece piece = Shapes.piece()
                .edge("rim", Path.arc(p(0, 0), 100, 0, 360))
                .allow(10)
                .quiet();
        assertThat(piece.cuttingEdge("rim").length()).isCloseTo(2 * Math.PI * 110, within(1e-8));
        assertThat(piece.cutArea()).isCloseTo(Math.PI * 110 * 110, within(1e-6));
    }

    @Test
    void aGapSaysBetweenWhichEdgesWhereAndHowWide() {
        Diagnostic gap = only(Shapes.piece()
                .edge("shoulder", Path.line(p(0, 0), p(100, 0)))
                .edge("armhole", Path.line(p(103, 4), p(100, 150)))
                .edge("rest", Path.line(p(100, 150), p(0, 150), p(0, 0)))
                .allow(10));
        assertThat(gap.code()).isEqualTo(PieceCode.GAP);
        assertThat(gap.message())
                .isEqualTo(
                        "The outline of Back is open: between `shoulder` and `armhole` there is a gap of 0.5 cm. `shoulder`"
                                + " ends at (10 cm, 0 cm), `armhole` begins at (10.3 cm, 0.4 cm).");
        assertThat(gap.phrase().facts()).containsEntry("gap", Fact.length(5));
        assertThat(gap.place()).isEqualTo(Place.named("armhole"));
        assertThat(gap.related()).extracting(r -> r.place()).containsExactly(Place.named("shoulder"));
    }

    @Test
    void everyGapIsTold() {
        Outcome<Piece> made = Shapes.piece()
                .edge("a", Path.line(p(0, 0), p(100, 0)))
                .edge("b", Path.line(p(110, 0), p(100, 150)))
                .edge("c", Path.line(p(90, 150), p(0, 0)))
                .allow(10)
                .make();
        assertThat(made.diagnostics()).extracting(Diagnostic::code).containsExactly(PieceCode.GAP, PieceCode.GAP);
    }

    @Test
    void endsWithinAMillionthOfAMillimetreCoincide() {
        assertThat(almostClosed(0.9e-6).make().value()).isPresent();
        assertThat(almostClosed(1.5e-6).make().value()).isEmpty();
    }

    private static Shapes almostClosed(double gap) {
        return Shapes.piece()
                .edge("a", Path.line(p(0, 0), p(100, 0), p(100, 100)))
                .edge("b", Path.line(p(100, 100), p(gap, 0)))
                .allow(10);
    }

    @Test
    void anOutlineThatCrossesItselfNamesTheEdgesAndThePoint() {
        Diagnostic crossing =
                only(Shapes.polygon(p(0, 0), p(100, 100), p(100, 0), p(0, 100)).allow(10));
        assertThat(crossing.message())
                .isEqualTo("The outline of Back crosses itself: `e1` meets `e3` at (5 cm, 5 cm).");
    }

    @Test
    void anEdgeThatCrossesItselfIsNamed() {
        Path loop = Path.of(new CubicSegment(p(0, 0), p(300, -200), p(-100, -200), p(200, 0)));
        Diagnostic crossing = only(Shapes.piece()
                .edge("loop", loop)
                .edge("rest", Path.line(p(200, 0), p(200, 100), p(0, 100), p(0, 0)))
                .allow(10));
        assertThat(crossing.code()).isEqualTo(PieceCode.EDGE_CROSSES_ITSELF);
    }

    @Test
    void unfitEdgesAreRefusedByName() {
        Path base = Path.line(p(0, 0), p(100, 0));
        Shapes zero = Shapes.piece()
                .edge("base", base)
                .edge("nothing", Path.line(p(100, 0), p(100, 0)))
                .edge("rest", Path.line(p(100, 0), p(50, 80), p(0, 0)));
        assertThat(only(zero.allow(10)).message())
                .isEqualTo("`nothing` has no length here, so it cannot be an edge of Back.");
        Shapes guide = Shapes.piece()
                .edge("base", base)
                .edge("level", Path.guide(p(100, 0), p(50, 80)))
                .edge("rest", Path.line(p(50, 80), p(0, 0)));
        assertThat(only(guide.allow(10)).code()).isEqualTo(PieceCode.GUIDE_AS_EDGE);
        Shapes flat = Shapes.piece().edge("base", base).edge("back", Path.line(p(100, 0), p(0, 0)));
        assertThat(only(flat.allow(10)).code()).isEqualTo(PieceCode.NO_AREA);
        Shapes open = Shapes.piece().edge("base", Path.line(p(0, 0), p(100, 0), p(50, 80)));
        assertThat(only(open.allow(10)).code()).isEqualTo(PieceCode.EDGE_NOT_CLOSED);
        assertThat(only(Shapes.piece().allow(10)).code()).isEqualTo(PieceCode.NO_EDGES);
        Shapes unknown = Shapes.piece().edge("base", base).edge("rest", Path.line(p(100, 0), p(Double.NaN, 80)));
        assertThat(refusal(unknown)).containsExactly("PCE010");
        Shapes twice = Shapes.piece()
                .edge("base", base)
                .edge("rest", Path.line(p(100, 0), p(50, 80)))
                .edge("rest", Path.line(p(50, 80), p(0, 0)));
        assertThat(only(twice.allow(10)).code()).isEqualTo(PieceCode.EDGE_TWICE);
    }

    private static List<String> refusal(Shapes shapes) {
        return shapes.allow(10).codes();
    }
}
