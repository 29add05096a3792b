package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.workbench.MeasureTable;
import org.junit.jupiter.api.Test;

/** The Java examples of the reference are compiled, run, and word for word those of the page. */
class JavaPageTest {
    private static String shipped(String file) throws IOException {
        return Files.readString(Page.root().resolve(file));
    }

    private static Drawing skirt() throws IOException {
        Draft draft = Gusset.compile(Source.of("skirt.gusset", shipped("examples/drafts/half-circle-skirt.gusset")))
                .orThrow();
        return draft.evaluate(
                        Measurements.of("Wilmot Sedge")
                                .with("waist", Quantity.of(70, Unit.CM))
                                .with("side_length", Quantity.of(60, Unit.CM)),
                        Choices.none())
                .orThrow();
    }

    private static List<Measurements> cast() throws IOException {
        return MeasureTable.read("quillhaven.csv", shipped("examples/measures/quillhaven.csv"))
                .chart()
                .orThrow()
                .sizes();
    }

    private static Draft smock() throws IOException {
        return Gusset.compile(Source.of("smock.gusset", shipped("examples/drafts/smock.gusset")))
                .orThrow();
    }

    @Test
    void everyExampleOfThePageIsACompiledOne() throws IOException {
        String source = shipped("examples/workbench/src/test/java/org/gusset/workbench/docs/JavaRoad.java")
                .replace("\r", "");
        Matcher region = Pattern.compile("(?s) {4}// [a-z ]+\n( {4}static.*?) {4}// end\n")
                .matcher(source);
        StringBuilder compiled = new StringBuilder();
        while (region.find()) {
            compiled.append(region.group(1).replaceAll("(?m)^ {4}", "")).append("---\n");
        }
        Matcher fence = Pattern.compile("(?s)```java\n(.*?)```\n")
                .matcher(shipped("docs/reference/java-api.md").replace("\r", ""));
        StringBuilder shown = new StringBuilder();
        while (fence.find()) {
            shown.append(fence.group(1)).append("---\n");
        }
        assertThat(shown.toString()).isEqualTo(compiled.toString());
    }

    @Test
    void theWholeRoadGivesASheet() throws IOException {
        assertThat(JavaRoad.sheet(shipped("examples/drafts/half-circle-skirt.gusset")))
                .startsWith("<?xml")
                .contains("Maren Oddway");
    }

    @Test
    void messagesAreWrittenForPeopleAndPrograms() {
        assertThat(JavaRoad.messages(Source.of("trial.gusset", "draft \"Trial\"\nlet a = bust / 2\n")))
                .startsWith("trial.gusset:2:9: error NAM001");
        assertThat(JavaRoad.messages(Source.of("trial.gusset", "draft \"Trial\"\nlet a = 2 cm\n"))
                        .strip())
                .startsWith("[");
    }

    @Test
    void choicesReachTheDrawing() throws IOException {
        Drawing drawing =
                smock().evaluate(cast().get(1), JavaRoad.choices()).value().orElseThrow();
        assertThat(drawing.proved()).isTrue();
        assertThat(drawing.leftOut()).contains("Pocket");
    }

    @Test
    void theMeasuresThatADraftAsksForAreListed() throws IOException {
        assertThat(JavaRoad.askedFor(smock()))
                .anyMatch(r -> r.startsWith("chest: round the fullest part"))
                .anyMatch(r -> r.startsWith("scye_depth: ") && r.endsWith("(may be left out)"));
    }

    @Test
    void theClothOfASkirtIsItsRingAndItsBand() throws IOException {
        // Closed form at the cutting line: the half ring from r - 1 cm to R + 1 cm, and an oblong of 1.5 cm at each end
        // of the back seam; the band is 73 by 6 cm with 1 cm round it. r = 70 / pi, R = r + 60.
        double inner = 70 / Math.PI - 1;
        double outer = 70 / Math.PI + 61;
        double ring = Math.PI / 2 * (outer * outer - inner * inner);
        double seams = 2 * 1.5 * (outer - inner);
        double band = 75 * 8;
        // The seam's ends follow the rounds, which differs from an oblong by less than a square centimetre each.
        assertThat(JavaRoad.clothAtTheCuttingLine(skirt())).isCloseTo((ring + seams + band) / 10_000, within(2e-4));
    }

    @Test
    void nothingFailsForASoundBodyAndMuchForAnImpossibleOne() throws IOException {
        assertThat(JavaRoad.failed(skirt())).isEmpty();
        Drawing small = smock().evaluate(cast().get(1).with("chest", Quantity.of(20, Unit.CM)), Choices.none())
                .value()
                .orElseThrow();
        assertThat(JavaRoad.failed(small)).contains("chest");
    }

    @Test
    void aCorrectionMovesTheSideSeamAndNothingElse() throws IOException {
        Drawing before = smock().evaluate(cast().get(1), Choices.none()).orThrow();
        Drawing after = JavaRoad.takenIn(before, Quantity.of(1, Unit.CM));
        assertThat(hem(before) - hem(after)).isCloseTo(10, within(1e-9));
        assertThat(after.proved()).isTrue();
    }

    private static double hem(Drawing drawing) {
        return drawing.pieces().get(0).edge("hem").orElseThrow().path().length();
    }

    @Test
    void threadsGiveTheSameAsOneAfterTheOther() throws Exception {
        List<Drawing> together = JavaRoad.all(smock(), cast());
        assertThat(together).hasSameSizeAs(cast());
        for (int i = 0; i < together.size(); i++) {
            Drawing alone = smock().evaluate(cast().get(i), Choices.none()).orThrow();
            assertThat(together.get(i).pieces()).isEqualTo(alone.pieces());
        }
    }

    @Test
    void theSumsAreTold() throws IOException {
        assertThat(JavaRoad.sums(skirt())).anyMatch(s -> s.startsWith("waist_fold: from pin, square down 8 3/4 in"));
    }

    @Test
    void aHostsOwnPenReachesTheSheets() throws IOException {
        assertThat(JavaRoad.forTheScreen(skirt()).get("Skirt"))
                .contains("#7a1f1f")
                .doesNotContain("Wilmot Sedge");
    }

    @Test
    void aParallelOfACurveIsLongerByDistanceTimesTurn() {
        // Closed form: a parallel copy differs by its distance times the turn, here 110 degrees.
        assertThat(Math.abs(JavaRoad.armhole())).isCloseTo(15 * Math.toRadians(110), within(0.02));
    }
}
