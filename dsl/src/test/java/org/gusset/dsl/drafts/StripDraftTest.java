package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.StripPlan;
import org.gusset.core.geometry.Box;
import org.gusset.core.pattern.JoinPlan;
import org.junit.jupiter.api.Test;

/** Strips in drafts; bands, belts and loops are common practice, no source. */
class StripDraftTest {
    private static final double INCH = 25.4;

    private static Box cut(Drawing drawing, String piece) {
        return Drafts.made(drawing, piece).cutting().bounds();
    }

    /** A strip of 215 cm from cloth 140 cm wide. */
    @Test
    void aLongStripAcrossTheClothIsPlannedInLengthsAndSaysSoOnItsLabel() {
        Drawing drawing = Drafts.drawn("""
                draft "Test"
                cloth shell wide 140 cm
                strip Sash long 215 cm wide 6 cm {
                  allow 1 cm
                  cut 2 from shell
                  grain along left_end
                }
                """);
        assertThat(drawing.strips()).hasSize(1);
        StripPlan strip = drawing.strips().get(0);
        assertThat(strip.strips()).isEqualTo(2);
        assertThat(strip.plan().lie()).isEqualTo(JoinPlan.Lie.ACROSS);
        assertThat(strip.plan().lengths()).isEqualTo(2);
        assertThat(strip.plan().each()).isCloseTo(1095, within(1e-9));
        assertThat(strip.plan().allowance()).isEqualTo(10);
        assertThat(Drafts.made(drawing, "Sash").labels().toString()).contains("2 lengths");
    }

    @Test
    void alongTheWarpAClothOfAnyLengthNeedsNoJoin() {
        Drawing drawing = Drafts.drawn("""
                draft "Test"
                cloth shell wide 140 cm
                cloth remnant wide 140 cm long 100 cm
                strip Sash long 215 cm wide 6 cm {
                  allow 1 cm
                  cut 1 from shell
                  cut 1 from remnant
                }
                """);
        assertThat(drawing.strips()).extracting(s -> s.plan().lengths()).containsExactly(1, 3);
        assertThat(drawing.strips().get(1).plan().each()).isCloseTo((2170 + 40) / 3.0, within(1e-9));
    }

    /** Bias 4 cm from a square of 90 cm: 15 strips. */
    @Test
    void aBiasStripAsksWhetherTheSquareGivesEnough() {
        String text = """
                draft "Test"
                cloth square wide 90 cm long 90 cm
                strip Binding long %s wide 4 cm on bias {
                  allow 0 cm, left_end 1 cm, right_end 1 cm
                  cut 1 from square
                }
                """.replace("square", "scrap");
        Drawing enough = Drafts.drawn(text.formatted("1860 cm"));
        assertThat(enough.diagnostics()).isEmpty();
        JoinPlan plan = enough.strips().get(0).plan();
        assertThat(plan.lie()).isEqualTo(JoinPlan.Lie.BIAS);
        assertThat(plan.lengths()).isEqualTo(15);
        Drawing tooLong = Drafts.draw(Drafts.sound(text.formatted("1900 cm")), Drafts.body());
        assertThat(Drafts.codes(tooLong.diagnostics())).containsExactly("PCE132");
    }

    @Test
    void aClothNarrowerThanItsJoinsIsToldOf() {
        Drawing drawing = Drafts.draw(Drafts.sound("""
                draft "Test"
                cloth ribbon wide 2 cm
                strip Sash long 215 cm wide 1 cm {
                  allow 1 cm
                  cut 1 from ribbon
                  grain along left_end
                }
                """), Drafts.body());
        assertThat(Drafts.codes(drawing.diagnostics())).containsExactly("PCE131");
    }

    /** A band cut 4 in wide with half-inch allowances folds to 1 1/2 in. */
    @Test
    void aFoldedBandIsHalfOfWhatTheAllowancesLeave() {
        Drawing drawing = Drafts.drawn("""
                draft "Test"
                cloth shell wide 140 cm
                strip Band long 30 in wide 2 * 1 1/2 in folded {
                  allow 1/2 in
                  cut 1 from shell
                }
                let folded = distance(Band.top_left, Band.crease.start)
                """);
        assertThat(cut(drawing, "Band").height()).isCloseTo(4 * INCH, within(1e-9));
        assertThat(Drafts.value(drawing, "folded")).isCloseTo(1.5 * INCH, within(1e-9));
    }

    /** A belt of twice a 34 in waist with half-inch ends is cut 69 in long. */
    @Test
    void aBeltIsCutTwiceTheWaistAndItsEnds() {
        Drawing drawing = Drafts.drawn("""
                draft "Test"
                measure waist from 20 in to 60 in
                cloth shell wide 140 cm
                strip Belt long 2 * waist wide 3 in folded {
                  allow 1/2 in
                  cut 1 from shell
                }
                """, "waist", 34 * 2.54);
        assertThat(cut(drawing, "Belt").width()).isCloseTo(69 * INCH, within(1e-9));
    }

    /** Five loops for a belt of 4 cm: 5 cm finished, 7 cm cut, 35 cm of strip (common practice, no source). */
    @Test
    void loopsAreCutFromOneStrip() {
        Drawing drawing = Drafts.drawn("""
                draft "Test"
                cloth shell wide 140 cm
                let belt_width = 4 cm
                let loop_cut = belt_width + 1 cm + 2 * 1 cm
                strip Loops long 5 * loop_cut wide 2 cm folded {
                  allow 0 cm, top 5 mm, bottom 5 mm
                  cut 1 from shell
                }
                """);
        assertThat(cut(drawing, "Loops").width()).isCloseTo(350, within(1e-9));
        assertThat(cut(drawing, "Loops").height()).isCloseTo(30, within(1e-9));
    }

    /** Waist 70, ease 1, lap 3, allowance 1, finished 3 cm: cut 76 by 8 cm (common practice, no source). */
    @Test
    void aWaistbandIsCutSeventySixByEight() {
        Drawing drawing = Drafts.drawn("""
                draft "Test"
                measure waist from 50 cm to 150 cm
                cloth shell wide 140 cm
                strip Band long waist + 1 cm + 3 cm wide 2 * 3 cm folded {
                  allow 1 cm
                  cut 1 from shell
                }
                """, "waist", 70);
        assertThat(cut(drawing, "Band").width()).isCloseTo(760, within(1e-9));
        assertThat(cut(drawing, "Band").height()).isCloseTo(80, within(1e-9));
    }
}
