package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.cloth.LayCheck;
import org.gusset.core.cloth.LayCloth;
import org.gusset.core.cloth.LayOptions;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.cloth.LaySearch;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Drawing;
import org.gusset.svg.Svg;
import org.gusset.svg.sheet.SheetOptions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every shipped draft for the cast on cloths of four widths, with and without a nap: each plan is unfolded layer by layer. */
class LayShippedDraftsTest {
    private static final LayOptions OPTIONS = LayOptions.defaults();

    /** Narrower than this is tape, which has no other width. */
    private static final double TAPE = 300;

    static List<String> drafts() {
        return Fitted.drafts();
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void everyPlanGivesWhatTheCuttingListsAskFor(String draft) {
        LayPlanner planner = new LayPlanner(OPTIONS, LaySearch.none());
        for (String body : Fitted.cast()) {
            Drawing drawing = Fitted.drawing(draft, body);
            for (double width : new double[] {900, 1100, 1400, 1500}) {
                for (boolean nap : new boolean[] {false, true}) {
                    List<LayCloth> cloths = new ArrayList<>();
                    for (LayCloth cloth : LayPlanner.cloths(drawing)) {
                        cloths.add((cloth.width() < TAPE ? cloth : cloth.withWidth(width)).withOneWay(nap));
                    }
                    Outcome<List<LayPlan>> plans = planner.plan(drawing, cloths);
                    String what = draft + " for " + body + " on " + width + (nap ? ", one way" : "");
                    List<LayPlan> made = plans.value().orElseThrow();
                    List<Diagnostic> told = plans.diagnostics().stream()
                            .filter(Diagnostic::isError)
                            .toList();
                    assertThat(told).as(what).allMatch(d -> d.code().id().equals("CLO002"));
                    assertThat(made.isEmpty() && told.isEmpty()).as(what).isFalse();
                    for (LayPlan plan : made) {
                        boolean first = plan.cloth().name().equals(cloths.get(0).name());
                        assertThat(LayCheck.faults(drawing, plan, OPTIONS, first))
                                .as(what)
                                .isEmpty();
                        assertThat(plan.share()).as(what).isBetween(0.05, 1.0 + 1e-9);
                        assertThat(plan.toBuy()).isGreaterThanOrEqualTo(plan.needed() - 1e-3);
                        assertThat(plan.costOfNap().isPresent()).isEqualTo(nap);
                        plan.costOfNap().ifPresent(cost -> assertThat(cost).isGreaterThanOrEqualTo(0));
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void thePictureShowsEveryPieceOfThePlan(String draft) {
        Drawing drawing = Fitted.drawing(draft, "Pip Thistlewick");
        List<LayPlan> plans = new LayPlanner(OPTIONS, LaySearch.none())
                .plan(drawing, LayPlanner.cloths(drawing))
                .orThrow();
        for (LayPlan plan : plans) {
            String svg = Svg.lay(drawing, plan, java.util.Optional.empty(), SheetOptions.defaults());
            assertThat(svg.split("<g id=\"[^\"]*\" class=\"laid-piece\"", -1).length - 1)
                    .isEqualTo(plan.laid().size());
            assertThat(svg).contains("Order of cutting", "sold by 10 cm");
            plan.laid().forEach(p -> assertThat(svg).contains(p.piece().name().replace('_', ' ')));
        }
    }
}
