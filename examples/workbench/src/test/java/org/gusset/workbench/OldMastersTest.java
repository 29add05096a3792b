package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.assertj.core.data.Offset;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.core.stress.Settings;
import org.gusset.core.stress.Stress;
import org.gusset.core.stress.StressReport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The drafts after old books on the books' own practice measures: every figure that is printed there, and those that are printed wrong.
 * The collected facts of the trade, sections B and E, say which page or figure each comes from, and what was seen of it.
 */
class OldMastersTest {
    private static final int BODIES = Integer.getInteger("gusset.stress.bodies", 200);

    /** What drafting on paper by tape can tell, and what is printed in eighths: section 0 of the facts. */
    private static final double TAPE = 1.0 / 16;

    private static final ExecutorService WORKERS =
            Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());

    @AfterAll
    static void stop() {
        WORKERS.shutdownNow();
    }

    static List<String> drafts() {
        return OldMasters.drafts();
    }

    /** Figures that a book prints, in inches: the draft, what of it, the printed figure, and where it stands. */
    record Printed(String draft, String what, double inches, String source) {}

    static List<Printed> printed() {
        String flounce = "Baldt 1916, Fig. 56";
        String bennett = "Bennett 1914, p. 13";
        String gown = "Baldt 1916, Fig. 60";
        String sleeve = "Burton and Burton 1916, one-piece foundation sleeve";
        String circle = "Rosenfeld 1911, p. 139";
        String pleats = "Conover about 1922, vol. 5, pp. 63 to 69";
        String underskirt = "Ingalls 1911, five-gore underskirt";
        String collar = "Ingalls 1911, standing collar";
        String cuff = "Rosenfeld 1918, p. 154";
        return List.of(
                new Printed("flounce-circular-1916", "radius", 21.6, flounce),
                new Printed("flounce-circular-1916", "apart Section.pin hem_mid", 33.6, flounce),
                new Printed("flounce-circular-1916", "top_drawn", 72, flounce),
                new Printed("flounce-circular-1916", "hem_drawn", 112, flounce),
                new Printed("gored-skirt-five-1914", "gore_waist", 5, bennett),
                new Printed("gored-skirt-five-1914", "gore_hip", 8, bennett),
                new Printed("gored-skirt-five-1914", "front_hem", 10, bennett),
                new Printed("gored-skirt-five-1914", "rise", 0.5, bennett),
                new Printed("gored-skirt-five-1914", "length Front.centre", 38, bennett),
                new Printed("gored-skirt-five-1914", "length Side.back_edge", 39, bennett),
                new Printed("gored-skirt-five-1914", "length Back.back_edge", 39.5, bennett),
                new Printed("gored-skirt-five-1914", "hem_drawn", 81, bennett),
                new Printed("gored-skirt-nine-1911", "front_waist", 1.5, "Ingalls 1911, nine-gore skirt"),
                new Printed("gored-skirt-nine-1911", "side_waist", 8.0 / 3, "Ingalls 1911, nine-gore skirt"),
                new Printed("gored-skirt-nine-1911", "back_waist", 2.5, "Ingalls 1911, nine-gore skirt"),
                new Printed("gored-skirt-nine-1911", "front_hip", 2.25, "Ingalls 1911, nine-gore skirt"),
                new Printed("gored-skirt-nine-1911", "side_hip", 4, "Ingalls 1911, nine-gore skirt"),
                new Printed("gored-skirt-nine-1911", "back_hip", 5.25, "Ingalls 1911, nine-gore skirt"),
                new Printed("kimono-nightgown-1916", "underarm", 10, gown),
                new Printed("kimono-nightgown-1916", "body_wide", 11, gown),
                new Printed("kimono-nightgown-1916", "reach", 19, gown),
                new Printed("kimono-nightgown-1916", "hem_wide", 20, gown),
                new Printed("kimono-nightgown-1916", "length Front.slit", 4, gown),
                new Printed("kimono-nightgown-1916", "cloth_long", 116, "Kinne and Cooley 1916, 3 yd 8 in of cloth"),
                new Printed("sleeve-one-piece-1916", "half_width", 8.5, sleeve),
                new Printed("sleeve-one-piece-1916", "across Sleeve.n_pt", 5.3, sleeve),
                new Printed("sleeve-one-piece-1916", "across Sleeve.o_pt", 2.1, sleeve),
                new Printed("sleeve-one-piece-1916", "down Sleeve.l_pt", 4, sleeve),
                new Printed("sleeve-one-piece-1916", "down Sleeve.p_pt", 0.75, sleeve),
                new Printed("underskirt-five-gores-1911", "down Front.waist_side", -0.25, underskirt),
                new Printed("underskirt-five-gores-1911", "down Side.waist_back", -0.5, underskirt),
                new Printed("underskirt-five-gores-1911", "down Back.waist_mid", -0.75, underskirt),
                new Printed("standing-collar-1911", "length Collar.front", 2.5, collar),
                new Printed("standing-collar-1911", "down Collar.low_front", -1, collar),
                new Printed("turned-cuff-1918", "cut_long", 13, cuff),
                new Printed("turned-cuff-1918", "across Cuff.low_end", 6, cuff),
                new Printed("turned-cuff-1918", "down Cuff.top_end", -4, cuff),
                new Printed("turned-cuff-1918", "down Cuff.low_mid", 0.75, cuff),
                new Printed("turned-cuff-1918", "apart Cuff.frame_end top_end", 1, cuff),
                new Printed("turned-cuff-1918", "length Facing.middle", 1.5, cuff),
                new Printed("circle-skirt-1911", "Half.string", 12.5, circle),
                new Printed("circle-skirt-1911", "Half.rise", 1.5, circle),
                new Printed("circle-skirt-1911", "length Half.front", 41, circle),
                new Printed("circle-skirt-1911", "apart Half.waist_mid hem_side", 43, circle),
                new Printed("circle-skirt-1911", "length Half.back", 45, circle),
                new Printed("kimono-nightgown-1916", "length Gusset.front_1", 4, gown),
                new Printed("pleated-skirt-1922", "panel_pleat", 2.125, pleats),
                new Printed("pleated-skirt-1922", "taken_waist", 30, pleats),
                new Printed("pleated-skirt-1922", "taken_hip", 24, pleats),
                new Printed("pleated-skirt-1922", "taken_hem", 16.5, pleats),
                new Printed("pleated-skirt-1922", "each_hip", 3.125, pleats),
                new Printed("pleated-skirt-1922", "each_hem", 2.0625, pleats));
    }

    @ParameterizedTest
    @MethodSource("printed")
    void whatTheBookPrintsIsDrawn(Printed row) {
        assertThat(OldMasters.figure(OldMasters.drawing(row.draft()), row.what()))
                .as("%s: %s, %s", row.draft(), row.what(), row.source())
                .isCloseTo(row.inches(), Offset.offset(TAPE));
    }

    /** A row of the collected facts' list of checks, and which figures of which draft it is about. */
    record Listed(String row, String draft, List<String> figures) {}

    static List<Listed> listed() {
        return List.of(
                new Listed("FL-01", "flounce-circular-1916", List.of("radius")),
                new Listed("FL-02", "flounce-circular-1916", List.of("spread")),
                new Listed("GO-01", "gored-skirt-five-1914", List.of("gore_waist", "gore_hip")),
                new Listed("GO-02", "gored-skirt-five-1914", List.of("gore_hem")),
                new Listed("GO-03", "underskirt-five-gores-1911", List.of("front_waist", "side_waist", "back_waist")),
                new Listed("GO-04", "underskirt-five-gores-1911", List.of("across Front.hip_side")),
                new Listed("GO-05", "underskirt-five-gores-1911", List.of("across Side.hip_back")),
                new Listed("GO-06", "gored-skirt-nine-1911", List.of("front_waist", "side_waist", "back_waist")),
                new Listed("GO-07", "gored-skirt-nine-1911", List.of("front_hip", "side_hip", "back_hip")),
                new Listed("SL-01", "sleeve-one-piece-1916", List.of("half_width")),
                new Listed(
                        "SL-02", "sleeve-one-piece-1916", List.of("apart Sleeve.m_pt n_pt", "apart Sleeve.m_pt o_pt")),
                new Listed("KI-04", "kimono-nightgown-1916", List.of("gusset_across")),
                new Listed("CO-01", "standing-collar-1911", List.of("cone_radius")),
                new Listed("CO-02", "standing-collar-1911", List.of("cone_rise")),
                new Listed("PL-01", "pleated-skirt-1922", List.of("taken_waist", "taken_hip", "taken_hem")),
                new Listed("PL-02", "pleated-skirt-1922", List.of("each_waist", "each_hip")),
                new Listed("GE-04", "circle-skirt-1911", List.of("Half.radius")),
                new Listed("GE-05", "circle-skirt-1911", List.of("length Half.waist_edge")));
    }

    @ParameterizedTest
    @MethodSource("listed")
    void theListOfChecksHoldsWithItsOwnTolerances(Listed listed) throws IOException {
        Path file = PublishedSizes.file().resolveSibling("trade-checks.csv");
        assumeTrue(
                Files.exists(file),
                "the facts are not there: " + file + " (-Dgusset.facts=DIR tells where the facts are)");
        String[] cells = Files.readAllLines(file).stream()
                .filter(line -> line.startsWith(listed.row() + ","))
                .map(line -> line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1))
                .findFirst()
                .orElseThrow();
        String[] expected = cells[3].split(";");
        assertThat(expected).hasSameSizeAs(listed.figures());
        assertThat(cells[4]).isIn("in", "deg");
        Drawing drawing = OldMasters.drawing(listed.draft());
        for (int i = 0; i < expected.length; i++) {
            assertThat(OldMasters.figure(drawing, listed.figures().get(i)))
                    .as("%s, %s: %s", listed.row(), cells[1], listed.figures().get(i))
                    .isCloseTo(Double.parseDouble(expected[i]), Offset.offset(Double.parseDouble(cells[5])));
        }
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void everyDraftIsWholeOnItsPracticeMeasures(String name) {
        Drawing drawing = OldMasters.drawing(name);
        assertThat(drawing.findings())
                .isNotEmpty()
                .allSatisfy(f ->
                        assertThat(f.verdict()).as(f.name() + " " + f.figures()).isEqualTo(Finding.Verdict.PASSED));
        // Seven pleats that each take 3.98 in on 1 3/4 in lie over one another: so the book has it.
        List<String> codes = name.equals("pleated-skirt-1922") ? List.of("PCE114") : List.of();
        assertThat(drawing.diagnostics()).extracting(d -> d.code().id()).isEqualTo(codes);
        assertThat(OldMasters.text(name)).contains("\n# Source: ");
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void everyDraftIsLaidOutAndCleanlyWritten(String name) {
        assertThat(CommandRun.standard("format", "--check", OldMasters.file(name))
                        .code())
                .isZero();
        CommandRun lint = CommandRun.standard("lint", "--strict", OldMasters.file(name));
        assertThat(lint.code()).isZero();
        assertThat(lint.out()).contains("no warnings, no notes");
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void noBodyWithinTheRangesBreaksADraft(String name) {
        StressReport report = Stress.of(
                OldMasters.draft(name), Settings.defaults().withBodies(BODIES).withExecutor(WORKERS));
        assertThat(report.withoutRange()).isEmpty();
        assertThat(report.exceptions()).isZero();
        assertThat(report.all().legal()).isGreaterThanOrEqualTo(BODIES * 9 / 10);
        assertThat(report.all().refused()).isZero();
        assertThat(report.failures()).isEmpty();
    }

    /** Section E, 1: 17 1/2 in for the gores at side and back is printed; four of them and the front make a hem of 80, not 81. */
    @Test
    void bennettsFourGoresMakeAHemThatIsAnInchShort() {
        String name = "gored-skirt-five-1914";
        double drawn = OldMasters.figure(OldMasters.drawing(name), "gore_hem");
        assertThat(Math.abs(drawn - 17.5)).isGreaterThan(TAPE);
        assertThat(10 + 4 * 17.5).isLessThan(81 - TAPE);
        Measurements shorter = OldMasters.inches(OldMasters.body(name), "hem_round", 80);
        Drawing drawing =
                OldMasters.draft(name).evaluate(shorter, Choices.none()).orThrow();
        assertThat(OldMasters.figure(drawing, "gore_hem")).isCloseTo(17.5, Offset.offset(1e-9));
    }

    /** Section E, 3: the waist of the circle skirt is drawn 0.95 in too long, since the bow is longer than its string. */
    @Test
    void rosenfeldsWaistDoesNotFitItsBandWithoutEase() {
        String name = "circle-skirt-1911";
        Drawing drawing = OldMasters.drawing(name);
        assertThat(OldMasters.figure(drawing, "waist_drawn") - 25).isCloseTo(0.95, Offset.offset(0.005));
        Drawing flat = OldMasters.compiled(name, OldMasters.text(name).replace(" ease 0% to 4%", ""))
                .evaluate(OldMasters.body(name), Choices.none())
                .value()
                .orElseThrow();
        assertThat(errors(flat)).anyMatch(m -> m.contains("seam `waist_join`"));
    }

    /** B8e: an edge that is dropped 3/4 in over 12 is longer than 12. By D1 its radius is 24.375 and its arc 12.1246. */
    @Test
    void rosenfeldsCuffIsLongerThanItsSleeveAfterItsEdgeIsDropped() {
        String name = "turned-cuff-1918";
        double radius = (12.0 * 12 + 4 * 0.75 * 0.75) / (8 * 0.75);
        double arc = 2 * radius * Math.asin(6 / radius);
        assertThat(arc).isGreaterThan(12 + TAPE);
        assertThat(OldMasters.figure(OldMasters.drawing(name), "low_drawn")).isCloseTo(arc, Offset.offset(1e-6));
        Drawing flat = OldMasters.compiled(
                        name, OldMasters.text(name).replace("ease 0 in to 1/2 in", "ease 0 in to 1/16 in"))
                .evaluate(OldMasters.body(name), Choices.none())
                .value()
                .orElseThrow();
        assertThat(errors(flat)).anyMatch(m -> m.contains("end_round"));
    }

    /** B2c: half of the armhole is 8, and the slant of the upper half alone 9.394. Without gathers the head does not go in. */
    @Test
    void burtonsHeadIsLongerThanItsArmhole() {
        String name = "sleeve-one-piece-1916";
        assertThat(OldMasters.figure(OldMasters.drawing(name), "length Sleeve.slant"))
                .isCloseTo(9.394, Offset.offset(0.001));
        Drawing flat = OldMasters.compiled(
                        name, OldMasters.text(name).replaceAll("(?m)^ *gather (upper|under)_head .*\\R", ""))
                .evaluate(OldMasters.body(name), Choices.none())
                .value()
                .orElseThrow();
        assertThat(errors(flat)).anyMatch(m -> m.contains("seam `armhole_in`"));
    }

    /** B8c: with its ends raised an inch the collar is neither 13 at the base nor 12 at the top; the cone of those measures is. */
    @Test
    void ingallsInchMakesTheCollarLieCloserThanItsMeasures() {
        String name = "standing-collar-1911";
        Drawing raised = OldMasters.drawing(name);
        assertThat(OldMasters.figure(raised, "base_drawn")).isGreaterThan(13 + TAPE);
        assertThat(OldMasters.figure(raised, "top_drawn")).isLessThan(12 - TAPE);
        Drawing cone = OldMasters.draft(name)
                .evaluate(OldMasters.body(name), Choices.none().with("ends", "cone"))
                .orThrow();
        assertThat(OldMasters.figure(cone, "base_drawn")).isCloseTo(13, Offset.offset(1e-9));
        assertThat(OldMasters.figure(cone, "top_drawn")).isCloseTo(12, Offset.offset(1e-9));
    }

    /** B9: at the hem 2 1/16 in is said of all eight pleats, though the panel pleat keeps its 2 1/8: together too much. */
    @Test
    void conoversHemSharesDoNotAddUp() {
        Drawing drawing = OldMasters.drawing("pleated-skirt-1922");
        double drawn = OldMasters.figure(drawing, "each_hem");
        assertThat(2.125 + 7 * drawn).isCloseTo(16.5, Offset.offset(1e-9));
        assertThat(2.125 + 7 * 2.0625).isGreaterThan(16.5 + TAPE - 1e-9);
        assertThat(drawn).isLessThan(2.0625);
    }

    private static List<String> errors(Drawing drawing) {
        return drawing.diagnostics().stream()
                .filter(Diagnostic::isError)
                .map(Diagnostic::message)
                .toList();
    }
}
