package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.gusset.core.cloth.LayOptions;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.cloth.LaySearch;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.junit.jupiter.api.Test;

/** What the page on cloth says of its two banners: 70 cm on wide cloth, 140 cm on narrow (pains.md F1, worked). */
class ClothNeededTest {
    private static final Offset<Double> GAPS = Offset.offset(10.0);

    private static double needed(Drawing drawing, double width) {
        List<LayPlan> plans = new LayPlanner(LayOptions.defaults().withGap(0), LaySearch.none())
                .plan(drawing, List.of(LayPlanner.cloths(drawing).get(0).withWidth(width)))
                .orThrow();
        assertThat(plans).hasSize(1);
        return plans.get(0).needed();
    }

    @Test
    void aSecondPieceAddsItsWholeLengthWhereTheClothIsTooNarrow() {
        PageRun run = PageRun.of(Page.read(Page.root().resolve("docs/how-to/cloth-needed.md")));
        Drawing drawing = Gusset.compile(Source.of("banner.gusset", run.built()))
                .orThrow()
                .evaluate(Measurements.of("nobody"), Choices.none())
                .orThrow();
        assertThat(needed(drawing, 1500)).isCloseTo(700, GAPS);
        assertThat(needed(drawing, 1100)).isCloseTo(1400, GAPS);
    }
}
