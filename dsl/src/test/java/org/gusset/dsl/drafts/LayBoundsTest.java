package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.gusset.dsl.drafts.Lays.PLAIN;
import static org.gusset.dsl.drafts.Lays.drawn;
import static org.gusset.dsl.drafts.Lays.oblong;
import static org.gusset.dsl.drafts.Lays.outcome;
import static org.gusset.dsl.drafts.Lays.wedge;

import java.util.List;
import org.gusset.core.cloth.LayCheck;
import org.gusset.core.cloth.LayOptions;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.cloth.packing.Item;
import org.gusset.core.cloth.packing.Orientation;
import org.gusset.core.cloth.packing.Strip;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Point;
import org.junit.jupiter.api.Test;

/** What a plan may ask of the machine. */
class LayBoundsTest {
    private static final Drawing FEW = drawn(
            "cloth shell wide 140 cm",
            oblong("Back", 30, 60, "cut 1 on fold centre from shell"),
            wedge("Gore", "cut 3 from shell"));

    private static Outcome<List<LayPlan>> laid(Drawing drawing, LayOptions options) {
        return outcome(drawing, LayPlanner.cloths(drawing), options);
    }

    private static String refusal(Drawing drawing, LayOptions options) {
        Outcome<List<LayPlan>> made = laid(drawing, options);
        assertThat(made.value().orElseThrow()).isEmpty();
        assertThat(made.diagnostics()).hasSize(1);
        Diagnostic told = made.diagnostics().get(0);
        assertThat(told.place().toString()).contains("shell");
        return told.code().id() + " " + told.message();
    }

    @Test
    void moreThanTwoThousandPiecesAreNotLaid() {
        String text = refusal(drawn("cloth shell wide 140 cm", oblong("Tile", 1, 1, "cut 2001 from shell")), PLAIN);
        assertThat(text).startsWith("LIM306").contains("2001 pieces").contains("2000 pieces");
    }

    @Test
    void whatNoPlanIsMadeOfWithinTheStepsIsRefused() {
        assertThat(refusal(FEW, PLAIN.withMost(10)))
                .startsWith("LIM306")
                .contains("4 pieces")
                .contains("10 steps");
    }

    @Test
    void fewerStepsLeaveOutWaysOfFoldingAndStillGiveASoundPlan() {
        double best = laid(FEW, PLAIN).orThrow().get(0).length();
        boolean longer = false;
        long most = 100_000;
        for (; most > 0; most = most * 9 / 10) {
            LayOptions options = PLAIN.withMost(most);
            List<LayPlan> plans = laid(FEW, options).value().orElseThrow();
            if (plans.isEmpty()) {
                break;
            }
            LayPlan plan = plans.get(0);
            assertThat(LayCheck.faults(FEW, plan, options, true)).isEmpty();
            assertThat(plan.length()).isGreaterThanOrEqualTo(best);
            longer |= plan.length() > best + 1;
        }
        assertThat(longer).isTrue();
        assertThat(most).isPositive();
    }

    @Test
    void workGrowsWithPiecesCornersAndCornersThatPointInward() {
        long one = strip(3, ring(12, 0)).work();
        assertThat(strip(6, ring(12, 0)).work()).isGreaterThan(one);
        assertThat(strip(3, ring(24, 0)).work()).isGreaterThan(one);
        assertThat(strip(3, ring(12, 30)).work()).isGreaterThan(3 * one);
    }

    private static Strip strip(int demand, List<Point> ring) {
        return new Strip(1000, List.of(Item.of("a", ring, demand, List.of(Orientation.AS_GIVEN))), 0);
    }

    private static List<Point> ring(int corners, double notches) {
        return java.util.stream.IntStream.range(0, corners)
                .mapToObj(i -> {
                    double turn = 2 * Math.PI * i / corners;
                    double far = 100 - i % 2 * notches;
                    return new Point(far * Math.cos(turn), far * Math.sin(turn));
                })
                .toList();
    }
}
