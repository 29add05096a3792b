package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
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
import org.junit.jupiter.api.Test;

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
}
