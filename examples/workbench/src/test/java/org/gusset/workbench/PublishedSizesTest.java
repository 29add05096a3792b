package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.assertj.core.data.Offset;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.draft.PieceValues;
import org.gusset.core.geometry.Point;
import org.gusset.core.measure.ChartCode;
import org.gusset.core.measure.ChartFaults;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.SizeChart;
import org.gusset.core.pattern.Piece;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Published tables of sizes through the blocks of the wardrobe: every seam holds in every size, and from size to size the pieces move
 * as the trade grades them. What a table lacks comes from the metric chart (its steps carried on) or from the draft's own rule.
 */
class PublishedSizesTest {
    /** Of sums of doubles, in mm. */
    private static final Offset<Double> EXACT = Offset.offset(1e-9);

    private static final List<SizeChart> WITH_HIP = new ArrayList<>();
    private static final List<SizeChart> WITH_BACK = new ArrayList<>();

    @BeforeAll
    static void read() throws IOException {
        assumeTrue(
                Files.exists(PublishedSizes.file()),
                "the facts are not there: " + PublishedSizes.file()
                        + " (-Dgusset.facts=DIR tells where the facts are)");
        for (SizeChart chart : List.of(
                PublishedSizes.enWomen(),
                PublishedSizes.misses(),
                PublishedSizes.women(),
                PublishedSizes.petites(),
                PublishedSizes.metric())) {
            WITH_HIP.add(PublishedSizes.completed(chart));
        }
        WITH_BACK.addAll(WITH_HIP);
        WITH_BACK.add(PublishedSizes.completed(PublishedSizes.astm()));
    }

    private static final Map<String, Draft> DRAFTS = new HashMap<>();

    /** A size drawn. */
    private record Drawn(
            Measurements measurements, List<Piece> pieces, List<PieceValues> pieceValues, List<NamedValue> values) {
        static Drawn of(Drawing drawing) {
            return new Drawn(drawing.measurements(), drawing.pieces(), drawing.pieceValues(), drawing.values());
        }
    }

    private static Draft draft(String name) {
        return DRAFTS.computeIfAbsent(name, Fitted::draft);
    }

    private static List<Drawn> sound(String draft, SizeChart chart) {
        Draft compiled = draft(draft);
        List<Drawn> drawings = new ArrayList<>();
        for (Measurements size : chart.sizes()) {
            Outcome<Drawing> outcome = compiled.evaluate(size, Choices.none());
            String where = draft + ", " + chart.name() + ", " + size.body();
            assertThat(outcome.diagnostics().stream().filter(Diagnostic::isError))
                    .as(where)
                    .isEmpty();
            Drawing drawing = outcome.value().orElseThrow();
            if (estimated(size)) {
                assertThat(drawing.estimated()).as(where).contains("hip_depth");
            }
            assertThat(drawing.findings())
                    .isNotEmpty()
                    .allSatisfy(f -> assertThat(f.verdict())
                            .as(where + ": " + f.name() + " " + f.figures())
                            .isEqualTo(Finding.Verdict.PASSED));
            drawings.add(Drawn.of(drawing));
        }
        return drawings;
    }

    /** True if the skirt has to estimate the depth of the hip. */
    private static boolean estimated(Measurements size) {
        return size.entry("hip").isPresent() && size.entry("hip_depth").isEmpty();
    }

    private static PieceValues values(Drawn drawing, String piece) {
        return drawing.pieceValues().stream()
                .filter(v -> v.piece().equals(piece))
                .findFirst()
                .orElseThrow();
    }

    /** A named point, from the point at which sizes are laid on one another. */
    private static Point at(Drawn drawing, String piece, String name) {
        Point nest = drawing.pieces().stream()
                .filter(p -> p.name().equals(piece))
                .map(Piece::nest)
                .findFirst()
                .orElseThrow();
        Point point = values(drawing, piece).points().stream()
                .filter(p -> p.name().equals(name))
                .map(PieceValues.NamedPoint::point)
                .findFirst()
                .orElseThrow();
        return new Point(point.x() - nest.x(), point.y() - nest.y());
    }

    private static double sewn(Drawn drawing, String piece, String line) {
        return values(drawing, piece).lines().stream()
                .filter(l -> l.name().equals(line))
                .mapToDouble(PieceValues.NamedLine::sewn)
                .findFirst()
                .orElseThrow();
    }

    private static double value(Drawn drawing, String name) {
        return drawing.values().stream()
                .filter(v -> v.name().equals(name))
                .map(v -> ((NamedValue.Amount) v).quantity().value())
                .findFirst()
                .orElseThrow();
    }

    private static double measure(Drawn drawing, String name) {
        return measureOf(drawing.measurements(), name);
    }

    /** From each size to the next, a figure of the drawing moves by a share of the step of a measure. */
    private static void moves(
            List<Drawn> drawings, String measure, double share, ToDoubleFunction<Drawn> figure, String what) {
        assertThat(drawings).hasSizeGreaterThan(1);
        for (int i = 0; i + 1 < drawings.size(); i++) {
            double step = measure(drawings.get(i + 1), measure) - measure(drawings.get(i), measure);
            double move = figure.applyAsDouble(drawings.get(i + 1)) - figure.applyAsDouble(drawings.get(i));
            assertThat(move)
                    .as(what + ", from " + drawings.get(i).measurements().body())
                    .isCloseTo(share * step, EXACT);
        }
    }

    /** Their steps are uneven, and head girths stand still for two sizes at a time. */
    @Test
    void nothingIsDoubtfulInAPublishedTable() throws IOException {
        List<SizeChart> charts = new ArrayList<>(WITH_BACK);
        charts.addAll(PublishedSizes.percentiles());
        charts.addAll(List.of(
                PublishedSizes.enWomen(),
                PublishedSizes.enMen(),
                PublishedSizes.misses(),
                PublishedSizes.women(),
                PublishedSizes.petites(),
                PublishedSizes.astm(),
                PublishedSizes.children()));
        assertThat(charts).allSatisfy(chart -> {
            assertThat(chart.sizes()).hasSizeGreaterThan(1);
            assertThat(ChartFaults.of(chart)).as(chart.name()).isEmpty();
        });
    }

    /** One figure in each table turned round, for instance 94 to 49, is told where it stands. */
    @Test
    void aSlipInAPublishedTableIsFound() throws IOException {
        for (SizeChart chart : List.of(PublishedSizes.enWomen(), PublishedSizes.misses(), PublishedSizes.astm())) {
            for (int i = 0; i < chart.sizes().size(); i++) {
                List<Measurements> sizes = new ArrayList<>(chart.sizes());
                double chest = measureOf(sizes.get(i), "chest");
                sizes.set(i, sizes.get(i).with("chest", Quantity.length(chest / 2), Place.named("the slip")));
                List<Diagnostic> told = ChartFaults.of(new SizeChart(chart.name(), sizes));
                assertThat(told).as(chart.name() + " " + i).hasSize(1);
                assertThat(told.get(0).code()).isEqualTo(ChartCode.SLIP);
                assertThat(told.get(0).place()).isEqualTo(Place.named("the slip"));
            }
        }
    }

    private static double measureOf(Measurements size, String name) {
        return size.entry(name).orElseThrow().quantity().value();
    }

    /** The girth step is quartered: a quarter on each half of front and back (C6, two printed sources there). */
    @TestFactory
    List<DynamicTest> theSkirtGrowsByAQuarterOfTheHipAndOfTheWaist() {
        return each(WITH_HIP, chart -> {
            List<Drawn> drawings = sound("skirt-block.gusset", chart);
            for (String piece : List.of("Back", "Front")) {
                moves(drawings, "hip", 0.25, d -> at(d, piece, "hip_side").x(), piece + ", side at the hip");
                moves(drawings, "hip_depth", 1, d -> at(d, piece, "hip_fold").y(), piece + ", hip line");
                // Hip and waist differ by 11 cm or more in these tables, so that every dart is the block's 2 cm.
                moves(drawings, "waist", 0.25, d -> at(d, piece, "waist_side").x(), piece + ", side at the waist");
            }
        });
    }

    /** Where a table has no depth of the hip the draft's own rule gives it, one for all sizes; children are 20 cm narrower there. */
    @Test
    void theSkirtGrowsByAQuarterOfTheHipWhereTheDraftEstimatesItsDepth() throws IOException {
        for (SizeChart chart : List.of(PublishedSizes.misses(), PublishedSizes.children())) {
            List<Drawn> drawings = sound("skirt-block.gusset", chart);
            for (String piece : List.of("Back", "Front")) {
                moves(drawings, "hip", 0.25, d -> at(d, piece, "hip_side").x(), piece + ", side at the hip");
            }
        }
    }

    /**
     * The block of three measures has shares of the bust where others have measures of their own. For 4 cm of bust: half the back grows
     * by 5 mm (B/8), as C6 has it. Half the front chest grows by 5 mm (B/8) and not 6; the neck by 1.67 mm (B/24) and not 2, its fifth of
     * 1 cm of neck; the scye by 3.33 mm (B/12) and not 5; the shoulder by 3.6 mm (B/12 along 22 degrees) and not 2.5. The sides stand
     * 1/64 of the bust forward of the quarter, since they halve the way from the back width to a line B/32 behind the chest width:
     * back 9.375 and front 10.625 mm, together the half of the bust step.
     */
    @TestFactory
    List<DynamicTest> theBodiceGrowsByTheSharesOfItsBlock() {
        return each(WITH_BACK, chart -> {
            List<Drawn> drawings = sound("fitted-bodice.gusset", chart);
            moves(drawings, "chest", 15.0 / 64, d -> at(d, "Back", "underarm").x(), "side of the back");
            moves(drawings, "chest", -17.0 / 64, d -> at(d, "Front", "underarm").x(), "side of the front");
            moves(
                    drawings,
                    "chest",
                    0.5,
                    d -> at(d, "Back", "underarm").x()
                            - at(d, "Front", "underarm").x(),
                    "half of the bust");
            moves(drawings, "chest", 1.0 / 8, d -> at(d, "Back", "back_width").x(), "half of the back");
            moves(
                    drawings,
                    "chest",
                    -1.0 / 8,
                    d -> at(d, "Front", "chest_width").x(),
                    "half of the front chest");
            moves(drawings, "chest", 1.0 / 24, d -> at(d, "Back", "neck_pt").x(), "neck width");
            moves(drawings, "chest", -1.0 / 24, d -> at(d, "Front", "neck_pt").x(), "neck width of the front");
            moves(drawings, "chest", -1.0 / 12, d -> at(d, "Back", "nape").y(), "nape above the bust line");
            moves(
                    drawings,
                    "chest",
                    1.0 / 12 / Math.cos(Math.toRadians(22)),
                    d -> sewn(d, "Front", "shoulder"),
                    "front shoulder");
            moves(
                    drawings,
                    "back_length",
                    1,
                    d -> at(d, "Back", "waist_mid").y() - at(d, "Back", "nape").y(),
                    "nape to waist");
            moves(drawings, "waist", 1, d -> value(d, "waist_sewn"), "whole waist");
        });
    }

    /** The front fork goes out by hip/12 and hip/16, as the classroom text has it. */
    @TestFactory
    List<DynamicTest> theTrousersGrowByAQuarterOfTheHipAndOfTheWaist() {
        return each(WITH_HIP, chart -> {
            List<Drawn> drawings = sound("trouser-block.gusset", chart);
            moves(
                    drawings,
                    "hip",
                    0.25,
                    d -> at(d, "Front", "hip_side").x()
                            - at(d, "Front", "hip_in").x(),
                    "front at the hip");
            moves(
                    drawings,
                    "hip",
                    0.25,
                    d -> at(d, "Back", "hip_side").x()
                            - at(d, "Back", "seat_hip").x(),
                    "back at the hip");
            moves(drawings, "waist", 0.25, d -> sewn(d, "Front", "waist_edge"), "front waist");
            moves(drawings, "waist", 0.25, d -> sewn(d, "Back", "waist_edge"), "back waist");
            moves(drawings, "hip", -7.0 / 48, d -> at(d, "Front", "fork_end").x(), "front fork");
            moves(drawings, "body_rise", -1, d -> at(d, "Front", "top").y(), "waist above the fork");
        });
    }

    /**
     * The shirt block takes neck, back width and scye depth as measures, and grows as C6 has it for 4 cm of bust: half back 5 mm, neck
     * width 2 mm (a fifth of the neck step), scye depth 5 mm (the draft's rule, an eighth of the chest), nape to waist 5 mm, side
     * 10 mm from the middle of the back and from that of the front. Its shoulder runs from neck to back width and grows by some 2.8 mm, not
     * 2.5: 3 mm across on a slope of 17 degrees.
     */
    @TestFactory
    List<DynamicTest> theShirtGrowsAsTheTradeGrades() {
        return each(
                WITH_HIP.stream()
                        .filter(c -> c.sizes().size() > 8 || c.sizes().size() == 2)
                        .toList(),
                chart -> {
                    List<Drawn> drawings = sound("shirt-block.gusset", chart);
                    moves(drawings, "chest", 0.25, d -> at(d, "Back", "p16").x(), "side of the back");
                    moves(drawings, "chest", -0.25, d -> at(d, "Front", "p16").x(), "side of the front");
                    moves(drawings, "back_width", 0.5, d -> at(d, "Back", "p10").x(), "half of the back");
                    moves(drawings, "chest", 1.0 / 8, d -> at(d, "Back", "p1").y(), "scye depth");
                    moves(drawings, "back_length", 1, d -> at(d, "Back", "p29").y(), "nape to waist");
                    if (drawings.get(0).measurements().entry("neck").isPresent()) {
                        moves(drawings, "neck", 0.2, d -> at(d, "Back", "p8").x(), "neck width");
                    }
                });
    }

    @Test
    void fromTwelveToFourteenTheShirtsShoulderGrowsByThreeMillimetresAcrossItsSlope() {
        List<Drawn> drawings = sound("shirt-block.gusset", PublishedSizes.metric());
        double twelve = sewn(drawings.get(0), "Back", "shoulder");
        double fourteen = sewn(drawings.get(1), "Back", "shoulder");
        // Half a back of 17.2 and 17.7 cm and 4 cm, less a fifth of a collar of 38.5 and 39.5 cm and half a centimetre;
        // 5.25 cm down.
        assertThat(twelve).isCloseTo(Math.hypot(172 + 40 - 385.0 / 5 + 5, 52.5), EXACT);
        assertThat(fourteen).isCloseTo(Math.hypot(177 + 40 - 395.0 / 5 + 5, 52.5), EXACT);
    }

    /** What is done with each chart. */
    private interface Trying {
        void with(SizeChart chart);
    }

    private static List<DynamicTest> each(List<SizeChart> charts, Trying trying) {
        return charts.stream()
                .map(chart -> DynamicTest.dynamicTest(chart.name(), () -> trying.with(chart)))
                .toList();
    }
}
