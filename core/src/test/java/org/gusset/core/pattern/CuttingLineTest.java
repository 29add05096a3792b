package org.gusset.core.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.gusset.core.pattern.Shapes.p;

import java.util.List;
import org.assertj.core.data.Offset;
import org.gusset.core.geometry.ArcSegment;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.LineSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Position;
import org.gusset.core.geometry.Vector;
import org.junit.jupiter.api.Test;

/** Cutting lines against closed forms and published figures. */
class CuttingLineTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Offset<Double> SHOWN = within(5e-4);

    @Test
    void aRectangleGrowsByItsAllowanceAllRound() {
        Piece piece = Shapes.rectangle(300, 200).allow(15).quiet();
        assertThat(piece.cutting().segments()).hasSize(4).allMatch(LineSegment.class::isInstance);
        assertThat(piece.cutting().closed()).isTrue();
        assertThat(piece.cutArea()).isCloseTo(330 * 230, within(1e-6));
        assertThat(piece.area()).isCloseTo(300 * 200, within(1e-6));
        assertThat(piece.cuttingEdge("top").length()).isCloseTo(330, EXACT);
        assertThat(piece.cuttingEdge("top").start().distance(p(-15, -15))).isCloseTo(0, EXACT);
        assertThat(piece.cuttingEdge("top").end().distance(p(315, -15))).isCloseTo(0, EXACT);
    }

    @Test
    void theOutsideIsFoundWhicheverWayTheOutlineRuns() {
        Piece piece = Shapes.polygon(p(0, 0), p(0, 200), p(300, 200), p(300, 0))
                .allow(15)
                .quiet();
        assertThat(piece.cutArea()).isCloseTo(330 * 230, within(1e-6));
    }

    /** Threadsmagazine on curved seam edges: pi/2 times 10, 11 and 9 cm for a quarter circle of 10 cm and 1 cm allowance. */
    @Test
    void aQuarterCircleIsLongerOutsideAndShorterInside() {
        Path quarter = Path.arc(p(0, 0), 100, 0, 90);
        Piece bulge = Shapes.piece()
                .edge("curve", quarter)
                .edge("up", Path.line(p(0, -100), p(0, 0)))
                .edge("along", Path.line(p(0, 0), p(100, 0)))
                .allow("curve", 10)
                .quiet();
        assertThat(bulge.edge("curve").orElseThrow().path().length()).isCloseTo(157.08, SHOWN);
        // The neighbours have no allowance, so the copy ends square off the corners.
        assertThat(bulge.cuttingEdge("curve").length()).isCloseTo(172.79, within(5e-3));
        assertThat(bulge.cuttingEdge("curve").segments()).containsExactly(new ArcSegment(p(0, 0), 110, 0, 90));

        Piece hollow = Shapes.piece()
                .edge("curve", quarter)
                .edge("across", Path.line(p(0, -100), p(200, -100)))
                .edge("down", Path.line(p(200, -100), p(200, 0)))
                .edge("back", Path.line(p(200, 0), p(100, 0)))
                .allow("curve", 10)
                .quiet();
        ArcSegment copy = (ArcSegment) hollow.cuttingEdge("curve").segments().stream()
                .filter(ArcSegment.class::isInstance)
                .findFirst()
                .orElseThrow();
        assertThat(copy.radius()).isCloseTo(90, EXACT);
        assertThat(copy.length()).isCloseTo(141.37, within(5e-3));
    }

    @Test
    void aCurveIsCopiedSquareOffWithinAHundredthOfAMillimetre() {
        CubicSegment curve = new CubicSegment(p(0, 0), p(60, -80), p(180, 60), p(260, -20));
        Piece piece = Shapes.piece()
                .edge("curve", Path.of(curve))
                .edge("side", Path.line(p(260, -20), p(260, 200)))
                .edge("hem", Path.line(p(260, 200), p(0, 200)))
                .edge("back", Path.line(p(0, 200), p(0, 0)))
                .allow(12)
                .quiet();
        Path cut = piece.cuttingEdge("curve");
        // The closed form: the copy of B(t) is B(t) + 12 N(t).
        for (int i = 0; i <= 500; i++) {
            double t = i / 500.0;
            Vector out = curve.derivative(t).unit().left();
            Point truth = curve.at(t).plus(out.times(12));
            assertThat(cut.nearest(truth).distance()).isLessThan(0.01);
        }
        for (Point q : cut.part(5, cut.length() - 20).flatten(0.001)) {
            Position foot = piece.edge("curve").orElseThrow().path().nearest(q);
            if (foot.s() > 0
                    && foot.s() < piece.edge("curve").orElseThrow().path().length()) {
                assertThat(foot.distance()).isCloseTo(12, within(0.01));
            }
        }
    }

    /** School geometry: d / sin(half the angle). */
    @Test
    void aMitreOfEqualWidthsLiesOnTheBisector() {
        for (double degrees : List.of(60.0, 61.0, 75.0, 90.0, 120.0, 150.0, 179.0)) {
            Piece piece = wedge(degrees).allow(10).quiet();
            double reach = 10 / Math.sin(Math.toRadians(degrees) / 2);
            assertThat(piece.cuttingEdge("e1").end().distance(p(0, 0)))
                    .as("corner of %s degrees", degrees)
                    .isCloseTo(reach, within(1e-8));
        }
    }

    /** A corner at the origin between e1 and e2 with an angle inside; big enough that the other corners do not matter. */
    private static Shapes wedge(double degrees) {
        Vector up = Vector.atAngle(degrees);
        Point far = p(0, 0).plus(up.times(500));
        return Shapes.polygon(
                far, p(0, 0), p(500, 0), p(500, 0).plus(up.plus(Vector.RIGHT).times(250)));
    }

    /**
     * Corner distances 4.272 at 90 degrees and 4.579 at 80 for widths of 1.5 and 4 (the cosine rule on the two offsets; a mitred
     * hem by sewingwithnumbers.substack.com).
     */
    @Test
    void aMitreOfUnequalWidthsIsWhereTheOffsetsMeet() {
        assertThat(unequal(90)).isCloseTo(42.72, within(5e-3));
        assertThat(unequal(80)).isCloseTo(45.79, within(5e-3));
    }

    private static double unequal(double degrees) {
        Piece piece = wedge(degrees).allow(10).allow("e1", 15).allow("e2", 40).quiet();
        return piece.cuttingEdge("e1").end().distance(p(0, 0));
    }

    @Test
    void aCornerOfThirtyDegreesIsCutBlunt() {
        Piece piece = wedge(30).allow(10).quiet();
        Path e1 = piece.cuttingEdge("e1");
        Path e2 = piece.cuttingEdge("e2");
        Vector bisector = Vector.atAngle(15 + 180);
        for (Point end : List.of(e1.end(), e2.start())) {
            // Square to the bisector, twice the allowance from the corner.
            assertThat(bisector.dot(end.minus(p(0, 0)))).isCloseTo(20, within(1e-8));
        }
        // The blunt end's half length: what is left of the width at that depth, (10 - 20 sin 15) / cos 15.
        double half = (10 - 20 * Math.sin(Math.toRadians(15))) / Math.cos(Math.toRadians(15));
        assertThat(e1.end().distance(e2.start())).isCloseTo(2 * half, within(1e-8));
    }
}
