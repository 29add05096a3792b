package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.cloth.LaidPiece;
import org.gusset.core.cloth.LayCheck;
import org.gusset.core.cloth.LayCloth;
import org.gusset.core.cloth.LayOptions;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.cloth.LaySearch;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Drawing;
import org.gusset.core.pattern.Grain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The drafts after old books, five of which have strips on the bias, on cloth that is wide enough for all of them. */
class LayOldMastersTest {
    private static final LayOptions OPTIONS = LayOptions.defaults();

    /** Three of the drafts have pieces that their own cloth of a yard takes only in panels. */
    private static final double WIDE = 1500;

    static List<String> drafts() {
        return OldMasters.drafts();
    }

    /** The plans of a drawing on its cloths, each of them sound. */
    private static List<LayPlan> plans(Drawing drawing, boolean nap) {
        List<LayCloth> cloths = LayPlanner.cloths(drawing).stream()
                .map(c -> c.withWidth(WIDE).withOneWay(nap))
                .toList();
        Outcome<List<LayPlan>> plans = new LayPlanner(OPTIONS, LaySearch.none()).plan(drawing, cloths);
        assertThat(plans.diagnostics().stream().filter(Diagnostic::isError)).isEmpty();
        for (LayPlan plan : plans.orThrow()) {
            boolean first = plan.cloth().name().equals(cloths.get(0).name());
            assertThat(LayCheck.faults(drawing, plan, OPTIONS, first)).isEmpty();
        }
        return plans.orThrow();
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void everyPlanIsSound(String draft) {
        Drawing drawing = OldMasters.drawing(draft);
        assertThat(plans(drawing, false)).isNotEmpty();
        assertThat(plans(drawing, true)).isNotEmpty();
    }

    /** What a strip on the bias adds to the cloth is less than a piece of cloth that is cut for it alone would be long. */
    @Test
    void stripsOnTheBiasComeFromWhatIsLeftBesideThePieces() {
        List<String> found = new ArrayList<>();
        for (String draft : drafts()) {
            Drawing drawing = OldMasters.drawing(draft);
            for (LayPlan plan : plans(drawing, false)) {
                List<LaidPiece> bias = plan.laid().stream()
                        .filter(p -> p.piece().grain().filter(Grain::bias).isPresent())
                        .toList();
                if (bias.isEmpty()) {
                    continue;
                }
                found.add(draft);
                String text = OldMasters.text(draft);
                String name = bias.get(0).piece().name();
                String without = text.replaceFirst("(?s)\nstrip " + name + " .*?\n}", "\n")
                        .replaceAll("(?m)^seam .*" + name + ".*$", "");
                Drawing fewer = OldMasters.compiled(draft, without)
                        .evaluate(OldMasters.body(draft), Choices.none())
                        .orThrow();
                double added = plan.length() - plans(fewer, false).get(0).length();
                double alone = bias.get(0).to() - bias.get(0).from();
                assertThat(added).as(draft).isLessThan(alone);
            }
        }
        assertThat(found)
                .containsExactly(
                        "flounce-circular-1916",
                        "kimono-nightgown-1916",
                        "sleeve-one-piece-1916",
                        "standing-collar-1911",
                        "turned-cuff-1918");
    }
}
