package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;
import org.junit.jupiter.api.Test;

/** What is kept with the person, and what must pass over the head. */
class FitTest {
    private static final Measurements BODY =
            Drafts.body("chest", 104, "shoulder_width", 41, "neck", 38, "upper_arm", 32, "arm_length", 59);

    /** A correction among the person's measures changes what rests on it, and leaves the rest to the last bit. */
    @Test
    void aCorrectionKeptWithThePersonChangesOnlyWhatItShould() {
        Draft draft = Drafts.shipped("smock.gusset");
        Drawing plain = Drafts.draw(draft, BODY);
        Drawing taken = Drafts.draw(draft, BODY.with("side_in", Quantity.of(1, Unit.CM)));
        assertThat(taken.diagnostics()).isEmpty();
        for (String piece : new String[] {"Back", "Front"}) {
            double before = Drafts.point(plain, piece + ".underarm").x();
            assertThat(Drafts.point(taken, piece + ".underarm").x()).isCloseTo(before - 10, within(1e-9));
            assertThat(Drafts.made(taken, piece).edge("shoulder"))
                    .isEqualTo(Drafts.made(plain, piece).edge("shoulder"));
            assertThat(Drafts.made(taken, piece).edge("neck_edge").orElseThrow().path())
                    .isEqualTo(Drafts.made(plain, piece)
                            .edge("neck_edge")
                            .orElseThrow()
                            .path());
            assertThat(Drafts.made(taken, piece).edge("side").orElseThrow().path())
                    .isNotEqualTo(
                            Drafts.made(plain, piece).edge("side").orElseThrow().path());
        }
        assertThat(Drafts.made(taken, "Band")).isEqualTo(Drafts.made(plain, "Band"));
        assertThat(Drafts.made(taken, "Pocket")).isEqualTo(Drafts.made(plain, "Pocket"));
        // The sleeve follows the armhole.
        assertThat(Drafts.length(taken, "Sleeve.cap"))
                .isCloseTo(Drafts.length(taken, "Back.armhole") + Drafts.length(taken, "Front.armhole"), within(1e-6));
        assertThat(plain.with(BODY.with("side_in", Quantity.of(1, Unit.CM))).pieces())
                .isEqualTo(taken.pieces());
    }

    private static String tunic(String opening) {
        return """
                draft "Tunic"
                measure head from 40 cm to 70 cm
                cloth shell wide 140 cm
                piece Front {
                  point nape = origin
                  point neck_pt = nape right 7 cm
                  point tip = neck_pt right 14 cm down 3 cm
                  point low = tip down 60 cm
                  point hem_fold = nape down 63 cm
                  point throat = nape down 7 cm
                  curve neck_edge = from throat heading right to neck_pt heading up
                  line shoulder = neck_pt to tip
                  line side = tip to low
                  line hem = low to hem_fold
                  line centre = hem_fold to throat
                  outline neck_edge, shoulder, side, hem, centre
                  allow 1 cm
                  cut 1 on fold centre from shell
                  grain along centre
                }
                piece Back traced from Front { }
                %s
                """.formatted(opening);
    }

    @Test
    void aHeadThatDoesNotPassANecklineIsFound() {
        String closed = tunic("opening neck_hole = all Front.neck_edge + all Back.neck_edge passes head");
        Drawing small = Drafts.draw(Drafts.sound(closed), Drafts.body("head", 57));
        assertThat(Drafts.codes(small.diagnostics())).hasSize(1);
        assertThat(small.diagnostics().get(0).message()).contains("neck_hole", "57 cm");
        assertThat(small.proved()).isFalse();
        Drawing open = Drafts.drawn(
                tunic("opening neck_hole = all Front.neck_edge + all Back.neck_edge passes head with fastening 14 cm"),
                "head",
                57);
        assertThat(open.proved()).isTrue();
    }
}
