package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.Toile;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;
import org.junit.jupiter.api.Test;

/** The point at which sizes are laid on one another, and what a trial garment is made of. */
class NestingPointTest {
    private static final String SHELL = """
            draft "Test"
            measure girth from 20 cm to 200 cm "round the drum"
            cloth shell wide 140 cm
            cloth fusing wide 90 cm
            piece Shell {
              point a = origin
              point b = a right girth / 2
              point c = b down 40 cm
              point d = a down 40 cm
              line top = a to b
              line side = b to c
              line hem = c to d
              line centre = d to a
              guide level = across from (a down 15 cm)
              guide plumb = down from (a right 10 cm)
              guide slant = a to c
              outline top, side, hem, centre
              allow 1 cm, top none, hem 4 cm turned up
              cut 1 from shell
              grain along centre
              %s
            }
            %s
            """;

    private static Drawing drawn(String inside, String after) {
        return Drafts.drawn(SHELL.formatted(inside, after), "girth", 60);
    }

    private static Point nest(Drawing drawing, String piece) {
        return Drafts.made(drawing, piece).nest();
    }

    @Test
    void withoutAWordItIsTheOriginOfThePiecesFrame() {
        assertThat(nest(drawn("", ""), "Shell")).isEqualTo(Point.ORIGIN);
    }

    @Test
    void itIsWhereTheDraftSays() {
        assertThat(nest(drawn("nest at c up 5 cm", ""), "Shell")).isEqualTo(new Point(300, 350));
    }

    @Test
    void aTracedPieceKeepsItAndMayChangeIt() {
        Drawing drawing = drawn(
                "nest at c", "piece Same traced from Shell { }\npiece Other traced from Shell { change nest at b }");
        assertThat(nest(drawing, "Same")).isEqualTo(new Point(300, 400));
        assertThat(nest(drawing, "Other")).isEqualTo(new Point(300, 0));
    }

    @Test
    void aMirrorTurnsItOverWithThePieceAlsoWhereItIsTheOrigin() {
        String mirrored = "piece Twin traced from Shell mirrored over side { }";
        assertThat(nest(drawn("", mirrored), "Twin").distance(new Point(600, 0)))
                .isLessThan(1e-9);
        assertThat(nest(drawn("nest at d", mirrored), "Twin").distance(new Point(600, 400)))
                .isLessThan(1e-9);
    }

    @Test
    void aChangeOfThePieceTakesItAlong() {
        // The longer part of the grain lies below the cut and stays; what is above moves up.
        Drawing drawing = drawn("nest at b\n  lengthen at level by 3 cm", "");
        double top = Drafts.made(drawing, "Shell").stitching().bounds().top();
        assertThat(top).isCloseTo(-30, within(1e-9));
        assertThat(nest(drawing, "Shell").y()).isCloseTo(top, within(1e-9));
        assertThat(nest(drawn("nest at c\n  lengthen at level by 3 cm", ""), "Shell")
                        .y())
                .isCloseTo(400, within(1e-9));
    }

    @Test
    void twoOfThemAreOneTooMany() {
        assertThat(Drafts.codes(Drafts.compile(SHELL.formatted("nest at a\n  nest at b", ""))
                        .diagnostics()))
                .containsExactly("KND011");
    }

    @Test
    void aTrialGarmentGoesWithoutFacingsAndFusing() {
        Drawing drawing = drawn("cut 1 from fusing without allowance", """
                piece Inner taken from Shell within 5 cm of top { allow 1 cm  cut 1 from shell }
                strip HemFacing long 60 cm wide 6 cm { allow 1 cm  cut 1 from shell }
                strip Stay long 20 cm wide 2 cm { allow 1 cm  cut 1 from fusing without allowance }
                strip Belt long 60 cm wide 6 cm { allow 1 cm  cut 1 from shell }
                """);
        Toile toile = drawing.toile(25);
        assertThat(toile.pieces()).extracting(Piece::name).containsExactly("Shell", "Belt");
        assertThat(toile.facings()).containsExactly("Inner", "HemFacing", "Stay");
        assertThat(toile.pieces().get(0).cuts()).hasSize(1);
    }

    /** A raw edge stays raw, a hem keeps its 4 cm, all other edges get what is asked for. */
    @Test
    void allowancesAreWideUnlessTheDraftGivesMoreOrNone() {
        Piece shell = drawn("", "").toile(30).pieces().get(0);
        assertThat(shell.edges())
                .extracting(Edge::name, edge -> edge.allowance().width())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("top", 0.0),
                        org.assertj.core.groups.Tuple.tuple("side", 30.0),
                        org.assertj.core.groups.Tuple.tuple("hem", 40.0),
                        org.assertj.core.groups.Tuple.tuple("centre", 30.0));
        assertThat(shell.cutting().bounds().right()).isCloseTo(330, within(1e-9));
        assertThat(shell.cutting().bounds().bottom()).isCloseTo(440, within(1e-9));
        assertThat(shell.cutting().bounds().top()).isCloseTo(0, within(1e-9));
    }

    /** Level and plumb guides from outline to outline; one that slants is part of the construction only. */
    @Test
    void balanceLinesAreTheGuidesAlongTheWarpAndSquareToIt() {
        List<Toile.BalanceLine> lines = drawn("", "").toile(25).balance();
        assertThat(lines).extracting(Toile.BalanceLine::name).containsExactly("level", "plumb");
        Path level = lines.get(0).along();
        assertThat(level.length()).isCloseTo(300, within(1e-9));
        assertThat(level.start().y()).isCloseTo(150, within(1e-9));
        Path plumb = lines.get(1).along();
        assertThat(plumb.length()).isCloseTo(400, within(1e-9));
        assertThat(plumb.start().x()).isCloseTo(100, within(1e-9));
    }
}
