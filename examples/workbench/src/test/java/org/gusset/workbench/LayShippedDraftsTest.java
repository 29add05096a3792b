package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.cloth.Folding;
import org.gusset.core.cloth.LayCheck;
import org.gusset.core.cloth.LayCloth;
import org.gusset.core.cloth.LayOptions;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.cloth.LaySearch;
import org.gusset.core.cloth.LayWords;
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

    private static final double[] WIDTHS = {900, 1100, 1400, 1500};

    static List<String> drafts() {
        return Fitted.drafts();
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void everyPlanGivesWhatTheCuttingListsAskForAndThePageTellsIt(String draft) throws IOException {
        LayPlanner planner = new LayPlanner(OPTIONS, LaySearch.none());
        List<String> rows = new ArrayList<>();
        for (String body : Fitted.cast()) {
            Drawing drawing = Fitted.drawing(draft, body);
            for (double width : WIDTHS) {
                List<Optional<LayPlan>> firsts = new ArrayList<>();
                double millis = 0;
                for (boolean nap : new boolean[] {false, true}) {
                    List<LayCloth> cloths = cloths(drawing, width, nap);
                    long start = System.nanoTime();
                    Outcome<List<LayPlan>> plans = planner.plan(drawing, cloths);
                    millis = nap ? millis : (System.nanoTime() - start) / 1e6;
                    String what = draft + " for " + body + " on " + width + (nap ? ", one way" : "");
                    List<LayPlan> made = plans.value().orElseThrow();
                    List<Diagnostic> told = plans.diagnostics().stream()
                            .filter(Diagnostic::isError)
                            .toList();
                    assertThat(told).as(what).allMatch(d -> d.code().id().equals("CLO002"));
                    assertThat(made.isEmpty() && told.isEmpty()).as(what).isFalse();
                    for (LayPlan plan : made) {
                        sound(drawing, plan, isFirst(plan, cloths), what);
                        assertThat(plan.costOfNap().isPresent()).isEqualTo(nap);
                        plan.costOfNap().ifPresent(cost -> assertThat(cost).isGreaterThanOrEqualTo(0));
                    }
                    firsts.add(made.stream().filter(p -> isFirst(p, cloths)).findFirst());
                }
                String row = LayTable.row(draft, body, width, firsts.get(0), firsts.get(1));
                rows.add(LayTable.writing() ? row + LayTable.measured(millis) : row);
            }
        }
        if (LayTable.writing()) {
            LayTable.write(draft, rows);
        }
        assertThat(LayTable.kept(draft))
                .as("the page; -Dgusset.lays.write=true writes its rows anew")
                .isEqualTo(rows.stream().map(LayTable::same).toList());
    }

    private static List<LayCloth> cloths(Drawing drawing, double width, boolean nap) {
        List<LayCloth> cloths = new ArrayList<>();
        for (LayCloth cloth : LayPlanner.cloths(drawing)) {
            cloths.add((cloth.width() < TAPE ? cloth : cloth.withWidth(width)).withOneWay(nap));
        }
        return cloths;
    }

    private static boolean isFirst(LayPlan plan, List<LayCloth> cloths) {
        return plan.cloth().name().equals(cloths.get(0).name());
    }

    private static void sound(Drawing drawing, LayPlan plan, boolean first, String what) {
        assertThat(LayCheck.faults(drawing, plan, OPTIONS, first)).as(what).isEmpty();
        assertThat(plan.share()).as(what).isBetween(0.05, 1.0 + 1e-9);
        assertThat(plan.toBuy()).isGreaterThanOrEqualTo(plan.needed() - 1e-3);
    }

    /** Each way to fold by itself, whether or not it is worth it. */
    @ParameterizedTest
    @MethodSource("drafts")
    void everyWayOfFoldingIsSound(String draft) {
        Drawing drawing = Fitted.drawing(draft, "Bartholo Grumthorpe");
        for (Folding folding : Folding.values()) {
            LayOptions only = OPTIONS.withOnly(folding);
            List<LayPlan> plans = new LayPlanner(only, LaySearch.none())
                    .plan(drawing, cloths(drawing, 1500, false).subList(0, 1))
                    .value()
                    .orElseThrow();
            for (LayPlan plan : plans) {
                sound(drawing, plan, true, draft + ", " + folding);
                boolean twice = plan.sections().stream().anyMatch(s -> s.folding() == Folding.TWICE);
                assertThat(LayWords.told(plan).toString().contains("not cloth")).isEqualTo(twice);
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
            String svg = Svg.lay(drawing, plan, Optional.empty(), SheetOptions.defaults());
            assertThat(svg.split("<g id=\"[^\"]*\" class=\"laid-piece\"", -1).length - 1)
                    .isEqualTo(plan.laid().size());
            assertThat(svg).contains("Order of cutting", "sold by 10 cm");
            plan.laid().forEach(p -> assertThat(svg).contains(p.piece().name().replace('_', ' ')));
        }
    }
}
