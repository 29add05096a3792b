package org.gusset.core.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.gusset.core.pattern.Shapes.p;

import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.jts.JtsForms;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * The cutting line round a whole piece: half a bodice back on the fold, with hollow neckline and armhole, a side flared by
 * 60 in 300 mm and a turned-up hem. Lengths in mm; expected places by school geometry, containment by the planar library JTS.
 */
class BodiceBackTest {
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final Point NECK = p(75, -20);
    private static final Point TIP = p(200, 25);
    private static final Point UNDERARM = p(260, 220);
    private static final Point HEM = p(320, 520);

    static Shapes back() {
        return Shapes.piece()
                .edge("neck_edge", Path.of(new CubicSegment(p(0, 0), p(45, 0), p(70, -5), NECK)))
                .edge("shoulder", Path.line(NECK, TIP))
                .edge("armhole", Path.of(new CubicSegment(TIP, p(175, 100), p(190, 215), UNDERARM)))
                .edge("side", Path.line(UNDERARM, HEM))
                .edge("hem", Path.line(HEM, p(0, 520)))
                .edge("centre", Path.line(p(0, 520), p(0, 0)))
                .allow(15)
                .allow("neck_edge", 10)
                .turnedUp("hem", 40)
                .onFold("centre")
                .grain(Path.line(p(0, 0), p(0, 520)));
    }

    @Test
    void eachEdgesCutLiesItsAllowanceOutside() {
        Piece piece = back().quiet();
        for (Edge edge : piece.edges()) {
            int inside = 0;
            for (int i = 1; i < 200; i++) {
                Point at = edge.path().at(edge.path().length() * i / 200);
                double off = edge.cut().nearest(at).distance();
                // Near corners that point inwards or are mirrored the copy is cut short, so only never nearer there.
                assertThat(off).isGreaterThanOrEqualTo(edge.allowance().width() - 0.01);
                inside += Math.abs(off - edge.allowance().width()) < 0.01 ? 1 : 0;
            }
            assertThat(inside).as(edge.name()).isGreaterThan(150);
        }
    }

    @Test
    void theCutLeavesTheFoldStraightAtNeckAndHem() {
        Piece piece = back().quiet();
        Path fold = piece.cuttingEdge("centre");
        assertThat(fold.start().distance(p(0, 560))).isLessThan(1e-7);
        assertThat(fold.end().distance(p(0, -10))).isLessThan(1e-3);
        assertThat(piece.cutting().bounds().left()).isCloseTo(0, within(1e-9));
        assertThat(piece.cutting().bounds().bottom()).isCloseTo(560, within(1e-9));
    }

    /** The hem's cut is 40 dx/dy narrower than the side's own cut edge would be at the hem line. */
    @Test
    void theHemTurnsUpOntoTheSidesCutEdge() {
        Piece piece = back().quiet();
        double lean = 60.0 / 300;
        double onHemLine = 320 + 15 * Math.hypot(1, lean);
        assertThat(piece.cuttingEdge("hem").length()).isCloseTo(onHemLine - 40 * lean, within(1e-6));
        assertThat(piece.cuttingEdge("side").end().distance(p(onHemLine, 520))).isLessThan(1e-6);
    }

    @Test
    void theCuttingLineIsSoundAndHoldsTheStitchingLine() {
        Piece piece = back().quiet();
        assertThat(piece.cutting().closed()).isTrue();
        assertThat(piece.cutting().selfMeetings()).isEmpty();
        Polygon cut = JtsForms.polygon(piece.cutting(), 0.001, JTS);
        Polygon seam = JtsForms.polygon(piece.stitching(), 0.001, JTS);
        assertThat(cut.isValid()).isTrue();
        assertThat(cut.buffer(0.01).contains(seam)).isTrue();
        assertThat(piece.cutArea()).isCloseTo(cut.getArea(), within(1.0));
        assertThat(piece.area()).isCloseTo(seam.getArea(), within(1.0));
    }

    @Test
    void theOutlineMayRunTheOtherWayRound() {
        Piece there = back().quiet();
        Shapes reversed = Shapes.piece();
        for (int i = there.edges().size() - 1; i >= 0; i--) {
            reversed.edge(there.edges().get(i).name(), there.edges().get(i).path());
        }
        Piece back = reversed.allow(15)
                .allow("neck_edge", 10)
                .turnedUp("hem", 40)
                .onFold("centre")
                .quiet();
        assertThat(back.cutArea()).isCloseTo(there.cutArea(), within(1e-3));
        assertThat(back.cutting().signedArea() * there.cutting().signedArea()).isNegative();
    }
}
