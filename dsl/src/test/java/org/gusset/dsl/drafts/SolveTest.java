package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.gusset.core.draft.Drawing;
import org.junit.jupiter.api.Test;

/** Unknowns whose answers have a closed form. */
class SolveTest {
    private static final String TITLE = "draft \"Test\"\ncloth shell wide 140 cm\n";

    private static String triangle(String solve) {
        return TITLE + """
                measure wanted from 1 cm to 200 cm
                piece Cap {
                  %s
                  point foot = origin
                  point left_end = foot left 3 cm
                  point right_end = foot right 3 cm
                  point top = foot up rise
                  line slope_a = left_end to top
                  line slope_b = top to right_end
                  line base = right_end to left_end
                  outline slope_a, slope_b, base
                  allow 1 cm
                  cut 1 from shell
                  grain from foot to top
                }
                """.formatted(solve);
    }

    /** Pythagoras: 2 sqrt(rise^2 + 3^2) = 10 has the rise 4. */
    @Test
    void aRiseIsFoundForALength() {
        Drawing drawing = Drafts.drawn(
                triangle("unknown rise from 1 cm to 50 cm\nsolve rise so that length(slope_a, slope_b) = wanted"),
                "wanted",
                10);
        assertThat(Drafts.value(drawing, "Cap.rise")).isCloseTo(40, within(1e-9));
        assertThat(Drafts.length(drawing, "Cap.slope_a")).isCloseTo(50, within(1e-9));
    }

    @Test
    void noRootTellsBothEnds() {
        Drawing drawing = Drafts.draw(
                Drafts.sound(triangle(
                        "unknown rise from 1 cm to 3 cm\nsolve rise so that length(slope_a, slope_b) = wanted")),
                Drafts.body("wanted", 10));
        assertThat(Drafts.codes(drawing.diagnostics())).containsExactly("GEO201");
        assertThat(drawing.diagnostics().get(0).message())
                .contains("from 1 cm to 3 cm")
                .contains("short")
                .contains("1.51 cm short");
        assertThat(drawing.refused()).hasSize(1);
    }

    /** x (10 - x) = 16 has the roots 2 and 8. */
    @Test
    void ofSeveralRootsOneIsTakenOnlyWithNearest() {
        String file = TITLE + "unknown x from 0.1 cm to 9.9 cm\nsolve x so that x * (10 cm - x) = 16 cm * 1 cm %s\n";
        Drawing several = Drafts.draw(Drafts.sound(file.formatted("")), Drafts.body());
        assertThat(Drafts.codes(several.diagnostics())).containsExactly("GEO202");
        assertThat(several.diagnostics().get(0).message()).contains("2 cm").contains("8 cm");
        Drawing one = Drafts.drawn(file.formatted("nearest 7 cm"));
        assertThat(Drafts.value(one, "x")).isCloseTo(80, within(1e-9));
    }

    /** x + y = 10 and x - y = 4 have x 7, y 3; x * y = 21 then as well. */
    @Test
    void severalUnknownsAreSettledTogether() {
        Drawing drawing = Drafts.drawn(TITLE + """
                unknown x from 0 cm to 20 cm
                unknown y from 0 cm to 20 cm
                solve x, y so that x + y = 10 cm, x * x - y * y = 40 cm * 1 cm
                """);
        assertThat(Drafts.value(drawing, "x")).isCloseTo(70, within(1e-7));
        assertThat(Drafts.value(drawing, "y")).isCloseTo(30, within(1e-7));
    }

    @Test
    void redundantAndContradictoryEquationsAreToldApart() {
        String file = TITLE + "unknown x from 0 cm to 20 cm\nunknown y from 0 cm to 20 cm\n"
                + "solve x, y so that x + y = 10 cm, 2 * x + 2 * y = %s\n";
        assertThat(Drafts.codes(Drafts.draw(Drafts.sound(file.formatted("20 cm")), Drafts.body())
                        .diagnostics()))
                .containsExactly("GEO205");
        assertThat(Drafts.codes(Drafts.draw(Drafts.sound(file.formatted("25 cm")), Drafts.body())
                        .diagnostics()))
                .containsExactly("GEO206");
    }

    @Test
    void whatCannotSettleAnUnknownIsToldWhenCompiling() {
        assertThat(Drafts.codes(Drafts.compile(TITLE + "unknown x from 0 cm to 9 cm\nlet y = x\n")
                        .diagnostics()))
                .containsExactly("NAM013");
        assertThat(Drafts.codes(
                        Drafts.compile(TITLE + "unknown x from 0 cm to 9 cm\nlet y = 3 cm\nsolve x so that y = 4 cm\n")
                                .diagnostics()))
                .containsExactly("KND019");
        assertThat(Drafts.codes(
                        Drafts.compile(TITLE + "unknown x from 0 cm to 9 cm\nsolve x so that x = 4 cm, x = 5 cm\n")
                                .diagnostics()))
                .contains("KND017");
    }

    @Test
    void aTracedCopyIsSolvedAnew() {
        Drawing drawing = Drafts.drawn(
                triangle("unknown rise from 1 cm to 50 cm\nsolve rise so that length(slope_a, slope_b) = wanted")
                        + "piece Wide traced from Cap { change point left_end = foot left 4 cm"
                        + " change point right_end = foot right 4 cm }\n",
                "wanted",
                10);
        assertThat(Drafts.value(drawing, "Cap.rise")).isCloseTo(40, within(1e-9));
        assertThat(Drafts.value(drawing, "Wide.rise")).isCloseTo(30, within(1e-9));
    }
}
