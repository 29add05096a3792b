package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.gusset.dsl.drafts.Lays.PLAIN;
import static org.gusset.dsl.drafts.Lays.drawn;
import static org.gusset.dsl.drafts.Lays.oblong;
import static org.gusset.dsl.drafts.Lays.outcome;
import static org.gusset.dsl.drafts.Lays.plan;
import static org.gusset.dsl.drafts.Lays.wedge;

import java.util.List;
import org.gusset.core.cloth.Folding;
import org.gusset.core.cloth.LaidPiece;
import org.gusset.core.cloth.LayCheck;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stripes and checks that meet. */
class LayStripesTest {
    @Test
    void stripesMeetAtThePointsThatTheDraftNames() {
        Drawing drawing = drawn(
                "cloth plaid wide 120 cm open repeat 8 cm along, 6 cm across matching Front.hip, Back.hip",
                wedge("Front", "point hip = a down 33 cm right 5 cm\n  cut 1 pair from plaid"),
                wedge("Back", "point hip = a down 31 cm right 5 cm\n  cut 1 pair from plaid"));
        LayPlan plan = plan(drawing, PLAIN.withOnly(Folding.OPEN));
        for (LaidPiece piece : plan.laid()) {
            double down = piece.piece().name().equals("Front") ? 330 : 310;
            Point hip = piece.place().apply(new Point(50, down));
            assertThat(Math.abs(hip.x() / 80 - Math.rint(hip.x() / 80))).isLessThan(1e-6);
            double across = (hip.y() - 600) / 60;
            assertThat(Math.abs(across - Math.rint(across))).isLessThan(1e-6);
        }
    }

    @Test
    void stripesThatCannotMeetAcrossAreTold() {
        Drawing drawing = drawn(
                "cloth plaid wide 150 cm folded lengthwise repeat 8 cm along, 6 cm across matching Front.b, Back.b",
                oblong("Front", 30, 60, "cut 1 on fold centre from plaid"),
                oblong("Back", 32, 60, "cut 1 on fold centre from plaid"));
        Outcome<List<LayPlan>> plans = outcome(drawing, LayPlanner.cloths(drawing), PLAIN);
        assertThat(plans.diagnostics())
                .anySatisfy(d -> assertThat(d.toString())
                        .isEqualTo(
                                "CLO007 warning: The pattern of `plaid` cannot meet across at Front.b and Back.b: from"
                                        + " the fold they lie 2 cm apart in its repeat."));
        LayPlan plan = plans.value().orElseThrow().get(0);
        assertThat(LayCheck.faults(drawing, plan, PLAIN, true)).isEmpty();
    }

    /** The pattern runs on from section to section: what lies behind 60 cm of folded cloth begins at a stripe, at 64 cm. */
    @Test
    void stripesRunOnFromSectionToSection() {
        Drawing drawing = drawn(
                "cloth plaid wide 140 cm folded lengthwise repeat 8 cm along matching Front.a, Yoke.a",
                oblong("Front", 60, 60, "cut 1 pair from plaid"),
                oblong("Yoke", 100, 20, "cut 1 from plaid"));
        LayPlan plan = plan(drawing, PLAIN.withOnly(Folding.LENGTHWISE));
        assertThat(plan.sections()).hasSize(2);
        assertThat(plan.sections().get(1).start()).isCloseTo(640, within(1e-6));
        assertThat(plan.length()).isCloseTo(840, within(1e-6));
        Drawing plain = drawn(
                "cloth plaid wide 140 cm folded lengthwise repeat 8 cm along matching Front.a",
                oblong("Front", 60, 60, "cut 1 pair from plaid"),
                oblong("Yoke", 100, 20, "cut 1 from plaid"));
        assertThat(plan(plain, PLAIN.withOnly(Folding.LENGTHWISE)).length()).isCloseTo(800, within(1e-6));
    }

    /**
     * The back's point lies 32 cm from the fold, 2 cm beyond a stripe. So does that of each godet, seen from the godet itself: one that
     * lay end for end at the same place would have its stripe on the other side of the point.
     */
    @Test
    void stripesLieAlikeOnEveryCopy() {
        String cloth = "cloth plaid wide 150 cm repeat 6 cm across matching Back.b, Godet.b";
        String back = oblong("Back", 32, 60, "cut 1 on fold centre from plaid");
        for (String cut : List.of(
                "cut 4 from plaid", "cut 2 pairs from plaid", "cut 1 left from plaid\n  cut 2 right from plaid")) {
            Drawing drawing = drawn(cloth, back, wedge("Godet", cut));
            for (Folding folding : List.of(Folding.OPEN, Folding.LENGTHWISE, Folding.CROSSWISE, Folding.TWICE)) {
                plan(drawing, PLAIN.withOnly(folding));
            }
        }
    }

    /**
     * An oblong that is matched at a corner is no mirror image of itself where its pattern counts, so its other hand lies mirrored; but for
     * one that is whole repeats long, whose two ends may change places.
     */
    @ParameterizedTest
    @CsvSource({"45, 1", "40, 0"})
    void whatIsAlikeWithoutItsPatternHasTwoHandsWithIt(int high, int mirrored) {
        Drawing drawing = drawn(
                "cloth plaid wide 150 cm open repeat 8 cm along, 6 cm across matching Sleeve.b",
                oblong("Sleeve", 20, high, "cut 1 pair from plaid"));
        LayPlan plan = plan(drawing, PLAIN.withOnly(Folding.OPEN));
        assertThat(plan.laid().stream().filter(LaidPiece::mirrored)).hasSize(mirrored);
    }

    /** The check finds a piece that misses the stripes along, across, or lies with them on the wrong side. */
    @Test
    void theCheckOfPlansFindsStripesThatDoNotMeet() {
        Drawing drawing = drawn(
                "cloth plaid wide 150 cm open repeat 8 cm along, 6 cm across matching Back.b, Godet.b",
                oblong("Back", 32, 60, "cut 1 on fold centre from plaid"),
                wedge("Godet", "cut 2 from plaid"));
        LayPlan plan = plan(drawing, PLAIN.withOnly(Folding.OPEN));
        LaidPiece[] laid = plan.laid().toArray(new LaidPiece[0]);
        assertThat(LayCheckTest.faults(drawing, plan, laid)).isEmpty();
        for (int i = 0; i < laid.length; i++) {
            String name = laid[i].piece().name();
            LaidPiece[] along = laid.clone();
            along[i] = LayCheckTest.moved(laid[i], LayCheckTest.shift(3, 0));
            assertThat(LayCheckTest.faults(drawing, plan, along)).anyMatch(f -> f.contains("misses " + name));
            LaidPiece[] across = laid.clone();
            across[i] = LayCheckTest.moved(laid[i], LayCheckTest.shift(0, 3));
            assertThat(LayCheckTest.faults(drawing, plan, across)).anyMatch(f -> f.contains("misses " + name));
        }
        LaidPiece godet = laid[laid.length - 1];
        Point at = godet.place().apply(new Point(100, 0));
        LaidPiece[] turned = laid.clone();
        turned[laid.length - 1] = LayCheckTest.moved(godet, Transform.turn(at, 180));
        assertThat(godet.piece().name()).isEqualTo("Godet");
        assertThat(LayCheckTest.faults(drawing, plan, turned)).anyMatch(f -> f.contains("misses Godet.b across"));
    }
}
