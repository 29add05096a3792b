package org.gusset.core.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.gusset.core.pattern.Shapes.p;

import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Vector;
import org.junit.jupiter.api.Test;

/** Allowances, cutting list, folds and grain of whole pieces. */
class PieceMakerTest {
    private static Shapes square() {
        return Shapes.rectangle(200, 200);
    }

    @Test
    void withoutAllowanceThePieceIsCutOnItsStitchingLineWithAWarning() {
        assertThat(square().codes()).containsExactly("PCE012");
        Piece piece = square().sound();
        assertThat(piece.cutting()).isEqualTo(piece.stitching());
        assertThat(square().allow(0).codes()).isEmpty();
        assertThat(square().allow("top", 5).codes()).isEmpty();
    }

    @Test
    void allowancesMustBeZeroOrMore() {
        assertThat(square().allow(10).allow("left", -1).codes()).containsExactly("PCE011");
        assertThat(square().allow(10).allow("left", Double.NaN).codes()).containsExactly("PCE011");
        assertThat(square().allow(10).allow("left", Double.POSITIVE_INFINITY).codes())
                .containsExactly("PCE011");
        assertThat(square().allow(10).allow("lefft", 5).codes()).containsExactly("PCE016");
    }

    @Test
    void aFoldNeverHasAnAllowance() {
        Shapes said = square().allow(10).allow("left", 20).onFold("left");
        assertThat(said.codes()).containsExactly("PCE013");
        Piece piece = said.sound();
        assertThat(piece.fold().orElseThrow().name()).isEqualTo("left");
        assertThat(piece.fold().orElseThrow().allowance()).isEqualTo(Allowance.NONE);
        assertThat(piece.cutArea()).isCloseTo(210 * 220, within(1e-6));
        assertThat(square().allow(10).onFold("left").codes()).isEmpty();
        assertThat(square().allow(10).allow("left", 0).onFold("left").codes()).isEmpty();
    }

    @Test
    void aFoldIsStraight() {
        Outcome<Piece> bent = Shapes.piece()
                .edge("fold", Path.line(p(0, 200), p(-3, 100), p(0, 0)))
                .edge("rest", Path.line(p(0, 0), p(100, 0), p(100, 200), p(0, 200)))
                .allow(10)
                .onFold("fold")
                .make();
        assertThat(bent.value()).isEmpty();
        assertThat(bent.diagnostics().get(0).message())
                .isEqualTo("`fold` of Back cannot lie on a fold: it strays 0.3 cm from the straight line.");
    }

    @Test
    void foldsAgree() {
        assertThat(square().allow(10).onFold("left").onFold("left").codes()).isEmpty();
        assertThat(square().allow(10).onFold("left").onFold("right").codes()).containsExactly("PCE015");
        assertThat(square().allow(10)
                        .onFold("left")
                        .cut(1, Cut.Arrangement.PAIRS)
                        .codes())
                .containsExactly("PCE017");
        assertThat(square().allow(10).cut(1, Cut.Arrangement.ON_FOLD).codes()).containsExactly("PCE031");
        assertThat(square().allow(10).onFold("nowhere").codes()).containsExactly("PCE016");
    }

    @Test
    void oneIsCutIfNothingIsSaid() {
        Outcome<Piece> made = square().allow(10).make();
        assertThat(made.diagnostics()).extracting(d -> d.code().id()).containsExactly("PCE019");
        assertThat(made.orThrow().cuts()).hasSize(1);
        assertThat(made.orThrow().cuts().get(0).pieces()).isEqualTo(1);
        assertThat(square().allow(10).cut(0, Cut.Arrangement.SINGLE).codes()).containsExactly("PCE018");
    }

    @Test
    void whatIsWornCountsPairsAndHalvesButNotLayersAndOtherCloths() {
        assertThat(square().allow(10).cut(1, Cut.Arrangement.PAIRS).sound().worn())
                .isEqualTo(2);
        assertThat(square().allow(10).cut(2, Cut.Arrangement.SINGLE).sound().worn())
                .isEqualTo(2);
        assertThat(square().allow(10).onFold("left").sound().worn()).isEqualTo(2);
        assertThat(square().allow(10).cut(1, Cut.Arrangement.LEFT).sound().worn())
                .isEqualTo(1);
        assertThat(square().allow(10).cut(2, Cut.Arrangement.LAYERS).sound().worn())
                .isEqualTo(1);
        Piece lined = square().allow(10)
                .cut(1, Cut.Arrangement.PAIRS, "shell")
                .cut(1, Cut.Arrangement.PAIRS, "lining")
                .sound();
        assertThat(lined.worn()).isEqualTo(2);
        Piece sides = square().allow(10)
                .cut(1, Cut.Arrangement.LEFT, "red")
                .cut(1, Cut.Arrangement.RIGHT, "red")
                .sound();
        assertThat(sides.worn()).isEqualTo(2);
    }

    @Test
    void theGrainArrowLiesInsideAlongTheWarp() {
        Piece piece = Shapes.rectangle(200, 600)
                .allow(10)
                .onFold("left")
                .grain(Path.line(p(0, 0), p(0, 600)))
                .quiet();
        Grain grain = piece.grain().orElseThrow();
        assertThat(grain.from().x())
                .as("a third off the middle, away from the fold")
                .isBetween(30.0, 170.0)
                .isNotCloseTo(100, within(10.0));
        assertThat(grain.to().minus(grain.from()).unit()).isEqualTo(Vector.DOWN);
        assertThat(grain.from().distance(grain.to())).isCloseTo(400, within(1e-9));
        assertThat(grain.bias()).isFalse();
    }

    @Test
    void theGrainArrowLiesOnThePiecesOwnLineIfThatRunsWellInside() {
        Piece piece = Shapes.rectangle(200, 600)
                .allow(10)
                .grain(Path.line(p(80, 50), p(80, 550)))
                .quiet();
        Grain grain = piece.grain().orElseThrow();
        assertThat(grain.from().x()).isCloseTo(80, within(1e-9));
        assertThat(grain.to().x()).isCloseTo(80, within(1e-9));
    }

    @Test
    void theGrainArrowKeepsOffTheStitchingLineOfHollowPieces() {
        // An L of arms 40 wide, the warp along neither.
        Piece piece = Shapes.polygon(p(0, 0), p(40, 0), p(40, 260), p(300, 260), p(300, 300), p(0, 300))
                .allow(10)
                .grain(Path.line(p(0, 0), p(100, 30)))
                .quiet();
        Grain grain = piece.grain().orElseThrow();
        Path arrow = Path.line(grain.from(), grain.to());
        assertThat(arrow.meetings(piece.stitching())).isEmpty();
        assertThat(grain.to().minus(grain.from()).cross(new Vector(100, 30))).isCloseTo(0, within(1e-6));
        assertThat(grain.from().distance(grain.to())).isGreaterThan(80);
    }

    @Test
    void biasLiesAtFortyFiveDegrees() {
        Grain grain = square().allow(10).bias().quiet().grain().orElseThrow();
        assertThat(grain.bias()).isTrue();
        assertThat(grain.to().minus(grain.from()).degrees()).isCloseTo(45, within(1e-9));
    }

    @Test
    void whatIsWrongWithTheGrainIsTold() {
        assertThat(square().allow(10).noGrain().codes()).containsExactly("PCE028");
        assertThat(square().allow(10).noGrain().sound().grain()).isEmpty();
        assertThat(square().allow(10).grain(Path.line(p(5, 5), p(5, 5))).codes())
                .containsExactly("PCE029");
        assertThat(square().allow(10)
                        .grain(Path.line(p(0, 0), p(5, 50), p(0, 100)))
                        .codes())
                .containsExactly("PCE030");
    }

    @Test
    void cornersAreOfNeighbours() {
        assertThat(square().allow(10)
                        .corner("top", "bottom", Corner.Form.BLUNT, "")
                        .codes())
                .containsExactly("PCE020");
        assertThat(square().allow(10)
                        .corner("top", "right", Corner.Form.SQUARED, "left")
                        .codes())
                .containsExactly("PCE032");
        assertThat(square().allow(10)
                        .corner("top", "rihgt", Corner.Form.BLUNT, "")
                        .codes())
                .containsExactly("PCE016");
    }

    @Test
    void aNotchBesideItsEdgeIsToldOf() {
        assertThat(square().allow(10).notch("left", p(0, 100), 1).codes()).isEmpty();
        assertThat(square().allow(10).notch("left", p(-3, 100), 1).codes()).containsExactly("PCE026");
    }
}
