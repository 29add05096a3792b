package org.gusset.core.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.gusset.core.pattern.Shapes.p;

import java.util.List;
import org.assertj.core.data.Offset;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.Meeting;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.junit.jupiter.api.Test;

/** Corners of every form: what lies where, by school geometry. */
class CornerTest {
    private static final Offset<Double> CLOSE = within(1e-7);
    private static final double TAN10 = Math.tan(Math.toRadians(10));

    /** A skirt half, 600 mm long with a hem of 300 mm, its side {@code degrees} off the plumb line: flared if positive. */
    private static Shapes skirt(double degrees) {
        double waist = 300 - 600 * Math.tan(Math.toRadians(degrees));
        return Shapes.piece()
                .edge("waist", Path.line(p(0, 0), p(waist, 0)))
                .edge("side", Path.line(p(waist, 0), p(300, 600)))
                .edge("hem", Path.line(p(300, 600), p(0, 600)))
                .edge("centre", Path.line(p(0, 600), p(0, 0)));
    }

    /** 29.295 cm and not 30.705 for 4 cm of hem on a side flared by 10 degrees: 30 -+ 4 tan 10. */
    @Test
    void aTurnedUpHemNarrowsBelowAFlaredSide() {
        Piece piece = skirt(10).turnedUp("hem", 40).onFold("centre").quiet();
        assertThat(piece.cuttingEdge("hem").length()).isCloseTo(292.95, within(5e-3));
        assertThat(piece.cuttingEdge("hem").length()).isCloseTo(300 - 40 * TAN10, CLOSE);
        Piece plain = skirt(10).allow("hem", 40).onFold("centre").quiet();
        assertThat(plain.cuttingEdge("hem").length()).isCloseTo(307.05, within(5e-3));
    }

    @Test
    void aTurnedUpHemWidensBelowATaperedSide() {
        Piece piece = skirt(-10).allow(15).turnedUp("hem", 40).onFold("centre").quiet();
        double beyond = 15 / Math.cos(Math.toRadians(10));
        assertThat(piece.cuttingEdge("hem").length()).isCloseTo(300 + 40 * TAN10 + beyond, CLOSE);
        assertThat(piece.cuttingEdge("hem").start().y()).isCloseTo(640, CLOSE);
    }

    @Test
    void theTurnedHemLiesOnTheSidesOwnCutEdge() {
        Path side = Path.of(new CubicSegment(p(200, 0), p(200, 200), p(240, 420), p(300, 600)));
        Path hem = Path.of(new CubicSegment(p(300, 600), p(200, 630), p(100, 640), p(0, 640)));
        Piece piece = Shapes.piece()
                .edge("waist", Path.line(p(0, 0), p(200, 0)))
                .edge("side", side)
                .edge("hem", hem)
                .edge("centre", Path.line(p(0, 640), p(0, 0)))
                .allow(15)
                .turnedUp("hem", 30)
                .onFold("centre")
                .quiet();
        Transform turn = Transform.mirror(p(300, 600), hem.tangent(0));
        Path cut = piece.cuttingEdge("side");
        // Between the side's cut edge and the hem's lies the turned part.
        double from = piece.cutting().nearest(cut.end()).s();
        double to = piece.cutting().nearest(piece.cuttingEdge("hem").start()).s();
        assertThat(to - from).isBetween(29.0, 33.0);
        for (int i = 0; i <= 20; i++) {
            Point q = turn.apply(piece.cutting().at(from + (to - from) * i / 20));
            assertThat(cut.nearest(q).distance()).isCloseTo(0, within(1e-6));
        }
    }

    @Test
    void nextToAFoldTheCutRunsStraightOn() {
        // The hem is no right angle to the fold here.
        Piece piece = Shapes.polygon(p(0, 0), p(200, 0), p(200, 300), p(0, 340))
                .allow(10)
                .turnedUp("e3", 40)
                .onFold("e4")
                .quiet();
        assertThat(piece.edge("e4").orElseThrow().allowance()).isEqualTo(Allowance.NONE);
        for (Point q : piece.cutting().flatten(0.01)) {
            assertThat(q.x()).isGreaterThan(-1e-9);
        }
        Path fold = piece.cuttingEdge("e4");
        assertThat(fold.start().x()).isCloseTo(0, CLOSE);
        // The hem falls 40 mm on 200: its allowance is 40 sqrt(1 + 1/25) along the fold.
        assertThat(fold.start().y()).isCloseTo(340 + 40 * Math.sqrt(1.04), CLOSE);
        assertThat(fold.end().distance(p(0, -10))).isCloseTo(0, CLOSE);
    }

    @Test
    void aSquaredCornerEndsSquareWhereTheSeamMeetsTheNeighboursCut() {
        // A shoulder that falls to an armhole at 100 degrees: squared to the shoulder.
        Vector down = Vector.atAngle(-80);
        Piece piece = Shapes.polygon(p(0, 0), p(150, 0), p(150, 0).plus(down.times(200)), p(0, 250))
                .allow(15)
                .corner("e1", "e2", Corner.Form.SQUARED, "e1")
                .quiet();
        Path seam = piece.cuttingEdge("e1");
        Path armhole = piece.cuttingEdge("e2");
        assertThat(armhole.start().y()).as("on the shoulder prolonged").isCloseTo(0, CLOSE);
        assertThat(seam.end().x()).as("square off it").isCloseTo(armhole.start().x(), CLOSE);
        assertThat(seam.end().y()).isCloseTo(-15, CLOSE);
        // 15 mm square off the armhole, measured along the shoulder: 15 / sin 80.
        assertThat(armhole.start().x()).isCloseTo(150 + 15 / Math.sin(Math.toRadians(80)), CLOSE);
    }

    @Test
    void aCornerIsFoundInEitherOrderOfItsEdges() {
        Shapes said = Shapes.rectangle(100, 100).allow(10).corner("top", "right", Corner.Form.BLUNT, "");
        Shapes turned = Shapes.rectangle(100, 100).allow(10).corner("right", "top", Corner.Form.BLUNT, "");
        assertThat(said.quiet().cutting()).isEqualTo(turned.quiet().cutting());
    }

    @Test
    void aBluntCornerIsCutAtTheWidthOfTheAllowance() {
        Piece piece = Shapes.rectangle(100, 100)
                .allow(10)
                .corner("top", "right", Corner.Form.BLUNT, "")
                .quiet();
        // A right angle cut square to the diagonal 10 mm out takes off a triangle with legs of 20 - 10 sqrt 2.
        double leg = 20 - 10 * Math.sqrt(2);
        assertThat(piece.cutArea()).isCloseTo(120 * 120 - leg * leg / 2, within(1e-6));
    }

    @Test
    void aMirroredCornerFoldsOntoItsNeighbour() {
        Vector up = Vector.atAngle(70);
        Point far = p(0, 0).plus(up.times(300));
        Piece piece = Shapes.polygon(far, p(0, 0), p(400, 0), p(400, 0).plus(up.times(300)))
                .allow(12)
                .corner("e1", "e2", Corner.Form.MIRRORED, "e2")
                .quiet();
        Point tip = piece.cuttingEdge("e2").start();
        Point folded = new Point(tip.x(), -tip.y());
        assertThat(tip.y()).isCloseTo(12, CLOSE);
        assertThat(piece.cuttingEdge("e1").nearest(folded).distance()).isCloseTo(0, CLOSE);
    }

    @Test
    void aCornerThatCannotBeCutSoIsMitredWithAWarning() {
        Outcome<Piece> onFold = skirt(10)
                .allow(10)
                .corner("hem", "centre", Corner.Form.SQUARED, "hem")
                .onFold("centre")
                .make();
        assertThat(onFold.diagnostics()).extracting(d -> d.code().id()).containsExactly("PCE021");
        assertThat(onFold.diagnostics().get(0).message())
                .isEqualTo(
                        "The corner of `hem` and `centre` in Back cannot be squared to `hem`: on a fold the cut runs straight on"
                                + " along the fold. It is mitred instead.");
        assertThat(onFold.orThrow().cutting())
                .isEqualTo(skirt(10).allow(10).onFold("centre").quiet().cutting());
    }

    @Test
    void aReflexCornerIsCutWhereTheCopiesCross() {
        Piece piece = Shapes.polygon(p(0, 0), p(100, 0), p(100, 100), p(200, 100), p(200, 200), p(0, 200))
                .allow(10)
                .quiet();
        assertThat(piece.cuttingEdge("e2").end().distance(p(110, 90))).isCloseTo(0, CLOSE);
        assertThat(piece.cutting().segments()).hasSize(6);
        // The area grows by the length times 10 and by 10 times 10 at each of five corners, less that at the sixth.
        assertThat(piece.cutArea()).isCloseTo(30000 + 800 * 10 + 4 * 100, within(1e-6));
    }

    @Test
    void widthsThatDifferAtASmoothJointAreJoinedByAStep() {
        Piece piece = Shapes.piece()
                .edge("a", Path.line(p(0, 0), p(100, 0)))
                .edge("b", Path.line(p(100, 0), p(200, 0)))
                .edge("rest", Path.line(p(200, 0), p(200, 100), p(0, 100), p(0, 0)))
                .allow(10)
                .allow("b", 25)
                .quiet();
        assertThat(piece.cuttingEdge("a").end().distance(p(100, -10))).isCloseTo(0, CLOSE);
        assertThat(piece.cuttingEdge("b").start().distance(p(100, -25))).isCloseTo(0, CLOSE);
        List<Meeting> crossings = piece.cutting().selfMeetings();
        assertThat(crossings).isEmpty();
    }

    @Test
    void anEdgeWithoutAllowanceIsMetOnItsOwnLine() {
        Vector up = Vector.atAngle(60);
        Piece piece = Shapes.polygon(
                        p(0, 0).plus(up.times(300)),
                        p(0, 0),
                        p(400, 0),
                        p(400, 0).plus(up.times(300)))
                .allow(10)
                .allow("e1", 0)
                .quiet();
        // e2's cut lies 10 below; e1 prolonged meets it 10 / tan 60 to the left.
        assertThat(piece.cuttingEdge("e2").start().distance(p(-10 / Math.tan(Math.toRadians(60)), 10)))
                .isCloseTo(0, CLOSE);
        assertThat(piece.cuttingEdge("e1")
                        .end()
                        .distance(piece.cuttingEdge("e2").start()))
                .isCloseTo(0, CLOSE);
    }
}
