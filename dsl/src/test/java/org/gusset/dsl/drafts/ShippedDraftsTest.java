package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.gusset.core.check.Finding;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Piece;
import org.junit.jupiter.api.Test;

/** The shipped drafts against sums worked by hand and against published figures. */
class ShippedDraftsTest {
    private static final double HAIR = 1e-9;
    private final Measurements middling =
            Drafts.body("chest", 104, "shoulder_width", 41, "neck", 38, "upper_arm", 32, "arm_length", 59);

    /** Worked by hand: (104 + 12) / 4 = 29 and 41 / 2 + 1.5 = 22. */
    @Test
    void theSmocksQuarterIsTwentyNineAndItsShoulderTipLiesTwentyTwoOut() {
        Drawing drawing = Drafts.draw(Drafts.shipped("smock.gusset"), middling);
        assertThat(drawing.diagnostics()).isEmpty();
        assertThat(Drafts.value(drawing, "quarter")).isCloseTo(290, within(HAIR));
        assertThat(Drafts.point(drawing, "Back.tip").x()).isCloseTo(220, within(HAIR));
        assertThat(Drafts.point(drawing, "Back.underarm").x()).isCloseTo(290, within(HAIR));
        assertThat(Drafts.point(drawing, "Back.underarm").y())
                .as("estimated: 104 / 8 + 10.5 = 23.5")
                .isCloseTo(235, within(HAIR));
        assertThat(drawing.estimated()).containsExactly("scye_depth");
    }

    @Test
    void theSmocksFrontIsTracedFromABackOnTheFoldAndIsAPairWithAnAllowanceAtTheCentre() {
        Drawing drawing = Drafts.draw(Drafts.shipped("smock.gusset"), middling);
        Piece back = Drafts.made(drawing, "Back");
        Piece front = Drafts.made(drawing, "Front");
        assertThat(back.cuts()).extracting(Cut::arrangement).containsExactly(Cut.Arrangement.ON_FOLD);
        assertThat(back.edge("centre").orElseThrow().onFold()).isTrue();
        assertThat(back.edge("centre").orElseThrow().allowance().width()).isZero();
        assertThat(front.cuts()).extracting(Cut::arrangement).containsExactly(Cut.Arrangement.PAIRS);
        assertThat(front.edge("centre").orElseThrow().onFold()).isFalse();
        assertThat(front.edge("centre").orElseThrow().allowance().width()).isCloseTo(10, within(HAIR));
        assertThat(front.edge("side").orElseThrow().allowance().width()).isCloseTo(15, within(HAIR));
        assertThat(front.edge("hem").orElseThrow().allowance().turnedUp()).isTrue();
        assertThat(back.cutting().bounds().left())
                .as("nothing is cut beyond the fold")
                .isCloseTo(0, within(HAIR));
        assertThat(front.cutting().bounds().left()).isCloseTo(20 - 10, within(HAIR));
    }

    @Test
    void everySeamOfTheSmockMatchesWhateverIsChosen() {
        Draft draft = Drafts.shipped("smock.gusset");
        for (String neckline : new String[] {"vee", "round"}) {
            for (boolean pockets : new boolean[] {true, false}) {
                Drawing drawing = draft.evaluate(
                                middling,
                                Choices.none().with("neckline", neckline).with("pockets", pockets))
                        .value()
                        .orElseThrow();
                assertThat(drawing.findings())
                        .as("findings for " + neckline)
                        .noneMatch(f -> f.verdict() != Finding.Verdict.PASSED);
                assertThat(drawing.proved()).isTrue();
                assertThat(drawing.pieces()).hasSize(pockets ? 5 : 4);
            }
        }
    }

    @Test
    void aDrawingWithOtherMeasuresIsTheSameAsOneMadeAnew() {
        Draft draft = Drafts.shipped("smock.gusset");
        Drawing first = Drafts.draw(draft, middling);
        Measurements wider =
                middling.with("chest", org.gusset.core.measure.Quantity.of(44.5, org.gusset.core.measure.Unit.IN));
        Drawing changed = first.with(wider);
        Drawing anew = Drafts.draw(draft, wider);
        assertThat(changed.pieces()).isEqualTo(anew.pieces());
        assertThat(changed.pieceValues()).isEqualTo(anew.pieceValues());
        assertThat(changed.findings()).isEqualTo(anew.findings());
        assertThat(changed.pieces()).isNotEqualTo(first.pieces());
    }

    /**
     * The metric block in trade-facts.md B3a (seen in worked tutorials) for waist 68, hip 94, hip depth 20.6, length 60: hip points
     * at 25 and 23.5, waist points at 21.25 and 19.25 raised 1.25, whole waist with the darts closed 69.
     */
    @Test
    void theSkirtBlockHasThePublishedFigures() {
        Drawing drawing = Drafts.draw(
                Drafts.shipped("skirt-block.gusset"), Drafts.body("waist", 68, "hip", 94, "hip_depth", 20.6));
        assertThat(drawing.diagnostics()).isEmpty();
        assertThat(Drafts.point(drawing, "Back.hip_side").x()).isCloseTo(250, within(HAIR));
        assertThat(Drafts.point(drawing, "Back.hip_side").y()).isCloseTo(206, within(HAIR));
        assertThat(Drafts.point(drawing, "Front.hip_side").x()).isCloseTo(235, within(HAIR));
        assertThat(Drafts.point(drawing, "Back.waist_side").x()).isCloseTo(212.5, within(HAIR));
        assertThat(Drafts.point(drawing, "Back.waist_side").y()).isCloseTo(-12.5, within(HAIR));
        assertThat(Drafts.point(drawing, "Front.waist_side").x()).isCloseTo(192.5, within(HAIR));
        assertThat(Drafts.point(drawing, "Front.waist_side").y())
                .as("raised 1.25 in print; here swept, so that the sides match")
                .isCloseTo(-12.5, within(1.5));
        assertThat(Drafts.value(drawing, "waist_sewn")).isCloseTo(690, within(3.0));
    }

    /** Closed form: a half circle for a waist of 70 cm has a radius of 70 / pi = 22.2817 cm, and its edge measures 70 cm. */
    @Test
    void theHalfCircleSkirtMeasuresItsWaist() {
        Drawing drawing =
                Drafts.draw(Drafts.shipped("half-circle-skirt.gusset"), Drafts.body("waist", 70, "side_length", 60));
        assertThat(drawing.diagnostics()).isEmpty();
        assertThat(Drafts.value(drawing, "waist_radius") / 10).isCloseTo(22.2817, within(5e-5));
        assertThat(2 * Drafts.length(drawing, "Skirt.waist_edge") / 10).isCloseTo(70, within(1e-6));
        assertThat(2 * Drafts.length(drawing, "Skirt.hem") / 10)
                .as("trade-facts.md B4: 258.496")
                .isCloseTo(258.496, within(5e-4));
    }
}
