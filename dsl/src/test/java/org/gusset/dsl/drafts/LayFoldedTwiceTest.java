package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.gusset.dsl.drafts.Lays.PLAIN;
import static org.gusset.dsl.drafts.Lays.drawn;
import static org.gusset.dsl.drafts.Lays.oblong;
import static org.gusset.dsl.drafts.Lays.of;
import static org.gusset.dsl.drafts.Lays.outcome;
import static org.gusset.dsl.drafts.Lays.plan;
import static org.gusset.dsl.drafts.Lays.wedge;

import java.util.List;
import java.util.Optional;
import org.gusset.core.cloth.ClothCode;
import org.gusset.core.cloth.Copies;
import org.gusset.core.cloth.CuttingOrder;
import org.gusset.core.cloth.Folding;
import org.gusset.core.cloth.LaidPiece;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.cloth.LaySection;
import org.gusset.core.cloth.LayWords;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Drawing;
import org.gusset.core.pattern.Piece;
import org.junit.jupiter.api.Test;

/** Cloth that is folded lengthwise and then across: four layers at once. */
class LayFoldedTwiceTest {
    /** A back with its fold at the centre, and a front whose neck is deeper. */
    private static final String BODY = """
            piece Back {
              point nape = origin
              point neck = nape right 8 cm
              point hem_side = nape right 30 cm down 60 cm
              point hem_fold = nape down 60 cm
              line neck_edge = nape to neck
              line side = neck to hem_side
              line hem = hem_side to hem_fold
              line centre = hem_fold to nape
              outline neck_edge, side, hem, centre
              allow 0 cm
              cut 1 on fold centre from shell
              grain along centre
            }
            piece Front traced from Back {
              point low = nape down 8 cm
              change line neck_edge = low to (low right 4 cm) to neck
              change line centre = hem_fold to low
            }
            """;

    /** Front and back at once: four layers cut by the back, then the front's neck out of the upper two. */
    @Test
    void foldedTwiceGivesFrontAndBackAtOnce() {
        Drawing drawing = drawn("cloth shell wide 80 cm folded twice", BODY);
        LayPlan plan = plan(drawing, PLAIN.withOnly(Folding.TWICE));
        assertThat(plan.laid()).hasSize(1);
        assertThat(plan.laid().get(0).inner())
                .hasValueSatisfying(p -> assertThat(p.name()).isEqualTo("Front"));
        assertThat(plan.sections().get(0).length()).isCloseTo(600, within(1e-6));
        assertThat(plan.length()).isCloseTo(1200, within(1e-6));
        assertThat(CuttingOrder.of(plan).get(0).words().toString()).contains("then Front out of the upper two layers");
        // Two cuts in place of two on cloth folded lengthwise; the cloth is as long as there.
        assertThat(plan.cuts()).isEqualTo(2);
        assertThat(LayWords.told(plan).stream().map(Object::toString))
                .contains("four layers at once save cutting, not cloth: 2 cuts give all 2 pieces");
        assertThat(plan(drawing, PLAIN.withOnly(Folding.LENGTHWISE)).length()).isCloseTo(1200, within(1e-6));
    }

    /** Twice as many of everything: the cuts are halved, and what is wanted in odd numbers lies on cloth folded lengthwise. */
    @Test
    void fourLayersHalveTheCuts() {
        Drawing drawing = drawn(
                "cloth shell wide 80 cm folded twice",
                wedge("Gore", "cut 6 pairs from shell"),
                oblong("Panel", 30, 50, "cut 3 on fold centre from shell"));
        LayPlan twice = plan(drawing, PLAIN.withOnly(Folding.TWICE));
        assertThat(twice.sections().stream().map(LaySection::folding))
                .containsExactly(Folding.TWICE, Folding.LENGTHWISE);
        assertThat(of(twice, "Gore")).hasSize(3).allMatch(p -> p.gives().equals(new Copies(2, 2, 0)));
        assertThat(of(twice, "Panel").stream().map(p -> p.gives().whole())).containsExactlyInAnyOrder(2, 1);
        LayPlan lengthwise = plan(drawing, PLAIN.withOnly(Folding.LENGTHWISE));
        assertThat(twice.cuts()).isEqualTo(5);
        assertThat(lengthwise.cuts()).isEqualTo(9);
        assertThat(twice.length()).isGreaterThanOrEqualTo(lengthwise.length() - 1e-6);
        assertThat(LayWords.told(lengthwise).toString()).doesNotContain("not cloth");
    }

    /** Whichever lies within the other is cut out of it, and neither where both reach beyond the other. */
    @Test
    void onlyWhatLiesWithinIsCutOutOfTheOther() {
        Drawing deep = drawn("cloth shell wide 80 cm folded twice", BODY);
        String raised = BODY.replace("nape down 8 cm", "nape up 2 cm");
        Drawing high = drawn("cloth shell wide 80 cm folded twice", raised);
        Drawing neither = drawn(
                "cloth shell wide 80 cm folded twice",
                raised.replace("(low right 4 cm)", "(low right 4 cm) to (neck left 1 cm down 4 cm)"));
        LayPlan plan = plan(deep, PLAIN.withOnly(Folding.TWICE));
        LaidPiece both = plan.laid().get(0);
        LaidPiece other = plan(high, PLAIN.withOnly(Folding.TWICE)).laid().get(0);
        assertThat(both.piece().name()).isEqualTo("Back");
        assertThat(other.piece().name()).isEqualTo("Front");
        assertThat(other.inner().orElseThrow().name()).isEqualTo("Back");
        assertThat(plan(neither, PLAIN.withOnly(Folding.TWICE)).laid())
                .hasSize(2)
                .allMatch(p -> p.inner().isEmpty());
        assertThat(LayCheckTest.faults(deep, plan, both)).isEmpty();
        assertThat(LayCheckTest.faults(deep, plan, inner(both, other.piece(), 4)))
                .anyMatch(f -> f.startsWith("Front cannot be cut out of Back"));
        assertThat(LayCheckTest.faults(deep, plan, inner(both, both.inner().orElseThrow(), 2)))
                .anyMatch(f -> f.contains("half of 2 layers"));
    }

    private static LaidPiece inner(LaidPiece piece, Piece inner, int layers) {
        return new LaidPiece(
                piece.piece(),
                piece.way(),
                layers,
                piece.place(),
                piece.ring(),
                piece.gives(),
                piece.spare(),
                Optional.of(inner),
                piece.join());
    }

    @Test
    void whatCannotBeCutInFoursIsLaidOtherwiseAndThatIsTold() {
        Drawing drawing = drawn("cloth shell wide 80 cm", wedge("Gore", "cut 1 pair from shell"));
        Outcome<List<LayPlan>> made = outcome(drawing, LayPlanner.cloths(drawing), PLAIN.withOnly(Folding.TWICE));
        assertThat(made.orThrow().get(0).sections())
                .extracting(LaySection::folding)
                .containsExactly(Folding.LENGTHWISE);
        assertThat(made.diagnostics()).extracting(Diagnostic::code).containsExactly(ClothCode.OTHERWISE_FOLDED);
        assertThat(made.diagnostics().get(0).message())
                .contains("cut folded twice", "so it is laid folded lengthwise, selvage on selvage");
        Outcome<List<LayPlan>> fours = outcome(
                drawn("cloth shell wide 80 cm", wedge("Gore", "cut 2 pairs from shell")),
                LayPlanner.cloths(drawing),
                PLAIN.withOnly(Folding.TWICE));
        assertThat(fours.diagnostics()).isEmpty();
    }
}
