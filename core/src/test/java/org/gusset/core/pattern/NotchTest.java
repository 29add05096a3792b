package org.gusset.core.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.gusset.core.pattern.Shapes.p;

import java.util.List;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.junit.jupiter.api.Test;

/** Notches: where their strokes lie. */
class NotchTest {
    private static void assertTick(Notch.Tick tick, Point outer, Point inner) {
        assertThat(tick.outer().distance(outer))
                .as("%s from %s", tick.outer(), outer)
                .isLessThan(1e-9);
        assertThat(tick.inner().distance(inner))
                .as("%s from %s", tick.inner(), inner)
                .isLessThan(1e-9);
    }

    @Test
    void aStrokeRunsFromTheCuttingLineInwardsAndLeavesSomeAllowance() {
        Notch notch = Shapes.rectangle(200, 100)
                .allow(8)
                .notch("top", p(50, 0), 1)
                .quiet()
                .notches()
                .get(0);
        assertThat(notch.s()).isCloseTo(50, within(1e-9));
        assertThat(notch.ticks()).hasSize(1);
        assertTick(notch.ticks().get(0), p(50, -8), p(50, -3));
        Notch narrow = Shapes.rectangle(200, 100)
                .allow(4)
                .notch("top", p(50, 0), 1)
                .quiet()
                .notches()
                .get(0);
        assertTick(narrow.ticks().get(0), p(50, -4), p(50, -2));
        Notch wide = Shapes.rectangle(200, 100)
                .allow(40)
                .notch("top", p(50, 0), 1)
                .quiet()
                .notches()
                .get(0);
        assertTick(wide.ticks().get(0), p(50, -40), p(50, -34));
    }

    @Test
    void severalStrokesLieSixMillimetresApart() {
        Notch notch = Shapes.rectangle(200, 100)
                .allow(8)
                .notch("top", p(50, 0), 2)
                .quiet()
                .notches()
                .get(0);
        assertTick(notch.ticks().get(0), p(47, -8), p(47, -3));
        assertTick(notch.ticks().get(1), p(53, -8), p(53, -3));
        Notch triple = Shapes.rectangle(200, 100)
                .allow(8)
                .notch("top", p(50, 0), 3)
                .quiet()
                .notches()
                .get(0);
        assertTick(triple.ticks().get(0), p(44, -8), p(44, -3));
        assertTick(triple.ticks().get(1), p(50, -8), p(50, -3));
        assertTick(triple.ticks().get(2), p(56, -8), p(56, -3));
    }

    @Test
    void withoutAllowanceAShortStrokeLiesInside() {
        Notch notch = Shapes.rectangle(200, 100)
                .allow(8)
                .onFold("left")
                .notch("left", p(0, 40), 1)
                .quiet()
                .notches()
                .get(0);
        assertTick(notch.ticks().get(0), p(0, 40), p(3, 40));
        assertThat(notch.s()).as("from the edge's start as the outline runs").isCloseTo(60, within(1e-9));
    }

    @Test
    void strokesAreSquareToCurvesAndAtEndsOfEdges() {
        Piece piece = Shapes.piece()
                .edge("rim", Path.arc(p(0, 0), 100, 0, 180))
                .edge("base", Path.line(p(-100, 0), p(100, 0)))
                .allow(10)
                .notch("rim", p(0, -100), 1)
                .notch("base", p(-100, 0), 1)
                .notch("base", p(100, 0), 1)
                .quiet();
        assertTick(piece.notches().get(0).ticks().get(0), p(0, -110), p(0, -104));
        assertTick(piece.notches().get(1).ticks().get(0), p(-100, 10), p(-100, 4));
        assertTick(piece.notches().get(2).ticks().get(0), p(100, 10), p(100, 4));
    }

    @Test
    void noStrokeReachesTheStitchingLine() {
        // Reflex corners and blunt ones bring the cutting line nearer.
        Piece piece = Shapes.polygon(p(0, 0), p(100, 0), p(100, 100), p(200, 100), p(0, 200))
                .allow(15)
                .notch("e2", p(100, 98), 1)
                .notch("e3", p(102, 100), 2)
                .notch("e4", p(190, 105), 3)
                .quiet();
        Path stitching = piece.stitching();
        for (Notch notch : piece.notches()) {
            for (Notch.Tick tick : notch.ticks()) {
                assertThat(piece.cutting().nearest(tick.outer()).distance()).isLessThan(1e-6);
                assertThat(stitching.nearest(tick.inner()).distance()).isGreaterThan(0.5);
                assertThat(Path.line(tick.outer(), tick.inner()).meetings(stitching))
                        .isEmpty();
            }
        }
    }

    @Test
    void aNotchOffItsEdgeIsAnError() {
        Outcome<Piece> off =
                Shapes.rectangle(200, 100).allow(8).notch("top", p(50, 2), 1).make();
        assertThat(off.value()).isEmpty();
        assertThat(off.diagnostics()).filteredOn(d -> d.isError()).hasSize(1);
        assertThat(off.diagnostics().stream()
                        .filter(d -> d.isError())
                        .findFirst()
                        .orElseThrow()
                        .message())
                .isEqualTo("The notch at (5 cm, 0.2 cm) lies 0.2 cm off `top` of Back.");
        assertThat(Shapes.rectangle(200, 100)
                        .allow(8)
                        .notch("top", p(50, 5e-4), 1)
                        .codes())
                .isEmpty();
        assertThat(Shapes.rectangle(200, 100)
                        .allow(8)
                        .notch("topp", p(50, 0), 1)
                        .codes())
                .isEqualTo(List.of("PCE016"));
        assertThat(Shapes.rectangle(200, 100).allow(8).notch("top", p(50, 0), 4).codes())
                .isEqualTo(List.of("PCE027"));
    }
}
