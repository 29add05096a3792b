package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Point;
import org.gusset.core.pattern.Mark;
import org.gusset.core.pattern.Piece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Changes of drawn pieces against school geometry: similar triangles, chords and turns. */
class ChangeTest {
    private static final double HAIR = 1e-9;

    /** A square of 40 cm with a dart in its right side whose legs are 12 cm long and whose point is 20 cm above the hem. */
    private static String panel(String more) {
        return """
                draft "Test"
                cloth shell wide 140 cm
                piece Panel {
                  point a = origin
                  point b = a right 40 cm
                  point c = b down 40 cm
                  point d = a down 40 cm
                  line top = a to b
                  line side = b to c
                  line hem = c to d
                  line centre = d to a
                  point mouth = b down 20 cm
                  point tip = mouth left sqrt(12 cm * 12 cm - 1.5 cm * 1.5 cm)
                  dart bust = on side at 20 cm intake 3 cm to tip
                  outline top, side, hem, centre
                  allow 1 cm
                  cut 1 from shell
                  grain along centre
                  let before = sewn(side)
                  %s
                }
                """.formatted(more);
    }

    private static double value(Drawing drawing, String name) {
        return Drafts.value(drawing, "Panel." + name);
    }

    private static Point point(Drawing drawing, String name) {
        return Drafts.piece(drawing, "Panel").points().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow()
                .point();
    }

    private static List<String> codes(String text) {
        var outcome = Drafts.compile(text);
        if (outcome.diagnostics().stream().anyMatch(Diagnostic::isError)) {
            return Drafts.codes(outcome.diagnostics());
        }
        Drawing drawing = Drafts.draw(outcome.value().orElseThrow(), Drafts.body());
        return Drafts.codes(drawing.diagnostics());
    }

    /** Similar triangles: 3 cm at 12 cm from the point are 5 cm at 20 cm from it. */
    @Test
    void aDartMovedToALineFurtherFromItsPointOpensInProportion() {
        Drawing drawing =
                Drafts.drawn(panel("pivot about tip closing bust into low on hem nearest tip\n  let wide = low.intake\n"
                        + "  let turned = low.angle\n  let after = sewn(side)\n  let low_hem = sewn(hem)"));
        assertThat(value(drawing, "wide")).isCloseTo(50, within(HAIR));
        assertThat(value(drawing, "turned")).isCloseTo(2 * Math.toDegrees(Math.asin(1.5 / 12)), within(1e-9));
        assertThat(value(drawing, "after")).isCloseTo(value(drawing, "before"), within(HAIR));
        assertThat(value(drawing, "low_hem")).isCloseTo(400, within(HAIR));
    }

    /** The A-line of a straight skirt block: a dart 2 cm wide on legs of 12.5 cm, 47.5 cm above the hem, opens 95 sin(a / 2). */
    @Test
    void aSkirtDartOpensTheHemByTheChord() {
        Drawing drawing = Drafts.drawn("""
                draft "Test"
                cloth shell wide 140 cm
                piece Panel {
                  point a = origin
                  point b = a right 25 cm
                  point c = b down 60 cm
                  point d = a down 60 cm
                  line waist_edge = a to b
                  line side = b to c
                  line hem = c to d
                  line centre = d to a
                  point tip = a right 12 cm down sqrt(12.5 cm * 12.5 cm - 1 cm * 1 cm)
                  dart waist_dart = on waist_edge at 12 cm intake 2 cm to tip
                  outline waist_edge, side, hem, centre
                  allow 1 cm
                  cut 1 on fold centre from shell
                  grain along centre
                  let reach = height(tip, d)
                  pivot about tip closing waist_dart spreading hem nearest tip
                  let opened = length(hem) - 25 cm
                  let kept = length(centre) + length(side)
                }
                """);
        double reach = 600 - Math.sqrt(125 * 125 - 100);
        assertThat(value(drawing, "reach")).isCloseTo(reach, within(HAIR));
        assertThat(value(drawing, "opened")).isCloseTo(reach * 20 / 125, within(HAIR));
        // At 47.5 cm, as the tables of the trade take it: 7.600 cm (derived).
        assertThat(value(drawing, "opened") * 475 / reach).isCloseTo(76.0, within(1e-6));
        assertThat(value(drawing, "kept")).isCloseTo(1200, within(HAIR));
    }

    @Test
    void halfOfADartLeavesTwoEqualAngles() {
        Drawing drawing = Drafts.drawn(
                panel("pivot about tip closing 1/2 of bust into low on hem nearest tip\n  let old = bust.angle\n"
                        + "  let new = low.angle\n  let after = sewn(side)\n  let low_hem = sewn(hem)"));
        double half = Math.toDegrees(Math.asin(1.5 / 12));
        assertThat(value(drawing, "old")).isCloseTo(half, within(HAIR));
        assertThat(value(drawing, "new")).isCloseTo(half, within(HAIR));
        assertThat(value(drawing, "after")).isCloseTo(value(drawing, "before"), within(HAIR));
        assertThat(value(drawing, "low_hem")).isCloseTo(400, within(HAIR));
    }

    @Test
    void aDartThatIsNotSewnAgainIsFlareInTheEdge() {
        Drawing drawing = Drafts.drawn(
                panel("pivot about tip closing bust spreading hem nearest tip\n  let flared = length(hem)\n"
                        + "  let closed = length(side)\n  let others = length(top) + length(centre)"));
        assertThat(value(drawing, "flared")).isCloseTo(450, within(HAIR));
        assertThat(value(drawing, "closed")).isCloseTo(370, within(HAIR));
        assertThat(value(drawing, "others")).isCloseTo(800, within(HAIR));
    }

    /** A dart moved away and moved back is where it was. */
    @Test
    void aDartMovedThereAndBackIsTheSame() {
        Drawing drawing = Drafts.drawn(panel("pivot about tip closing bust into low on hem nearest tip\n"
                + "  pivot about tip closing low into bust on side at 18.5 cm\n  let wide = bust.intake"));
        assertThat(value(drawing, "wide")).isCloseTo(30, within(1e-6));
        assertThat(point(drawing, "c").distance(new Point(400, 400))).isLessThan(1e-6);
        assertThat(Drafts.made(drawing, "Panel").stitching().signedArea())
                .isCloseTo(
                        Drafts.made(Drafts.drawn(panel("")), "Panel")
                                .stitching()
                                .signedArea(),
                        within(1e-3));
    }

    @Test
    void anOldDartGrowsByWhatGoesIntoIt() {
        Drawing drawing =
                Drafts.drawn(panel("dart waist = on hem nearest tip intake 2 cm to tip\n  let small = waist.angle\n"
                        + "  let both = small + bust.angle\n  pivot about tip closing bust into waist on hem nearest tip\n"
                        + "  let grown = waist.angle\n  let gone = bust.intake\n  let low_hem = sewn(hem)"));
        assertThat(value(drawing, "grown")).isCloseTo(value(drawing, "both"), within(HAIR));
        assertThat(value(drawing, "gone")).isZero();
        assertThat(value(drawing, "low_hem")).isCloseTo(380, within(HAIR));
    }

    /** The chord of the turn about the hinge is the spread. */
    @Test
    void aSlashOpensByTheChord() {
        Drawing drawing = Drafts.drawn(panel("point low = on hem at 25 cm\n  point upper = on top at 10 cm\n"
                + "  point left_of = a right 5 cm down 30 cm\n  point right_of = upper right 8 cm\n"
                + "  slash from low to upper spread 6 cm\n"
                + "  let wide = length(hem)\n  let still = length(top) + length(side) + length(centre)\n"
                + "  let apart = angle(left_of, upper, right_of)"));
        assertThat(value(drawing, "wide")).isCloseTo(460, within(HAIR));
        assertThat(value(drawing, "still")).isCloseTo(1200, within(HAIR));
        assertThat(point(drawing, "left_of")).isEqualTo(new Point(50, 300));
        double reach = Math.hypot(50, 400);
        double turn = 2 * Math.asin(60 / (2 * reach));
        assertThat(point(drawing, "right_of").x()).isCloseTo(100 + 80 * Math.cos(turn), within(1e-9));
        assertThat(point(drawing, "right_of").y()).isCloseTo(-80 * Math.sin(turn), within(1e-9));
    }

    @Test
    void aBentSlashIsHingedAtItsLastPoint() {
        Drawing drawing = Drafts.drawn(panel("point knee = a right 10 cm down 20 cm\n"
                + "  slash from on hem at 25 cm to knee to on centre at 35 cm spread 4 cm\n"
                + "  let wide = length(hem)\n  let still = length(top) + length(side) + length(centre)"));
        assertThat(value(drawing, "wide")).isCloseTo(440, within(HAIR));
        assertThat(value(drawing, "still")).isCloseTo(1200, within(HAIR));
        assertThat(point(drawing, "knee")).isEqualTo(new Point(100, 200));
    }

    @ParameterizedTest
    @CsvSource({"5, 45", "0, 40", "-5, 35"})
    void aPieceIsLengthenedSquareToTheLine(double by, double length) {
        Drawing drawing = Drafts.drawn(panel("guide low = across from a down 30 cm\n  lengthen at low by " + by
                + " cm\n  let long_side = length(side)\n  let long_centre = length(centre)\n  let wide = length(hem)"));
        assertThat(value(drawing, "long_side")).isCloseTo(length * 10, within(HAIR));
        assertThat(value(drawing, "long_centre")).isCloseTo(length * 10, within(HAIR));
        assertThat(value(drawing, "wide")).isCloseTo(400, within(HAIR));
        assertThat(point(drawing, "c").y()).isCloseTo(length * 10, within(HAIR));
        assertThat(point(drawing, "tip").y()).isCloseTo(200, within(HAIR));
    }

    /** Smooth edges that turn with their part keep their lengths to 1e-9 mm, and so does the whole of an edge that is not opened. */
    @Test
    void edgesThatAreNotTouchedKeepTheirLengths() {
        String drawn = """
                draft "Test"
                cloth shell wide 140 cm
                piece Panel {
                  point a = origin
                  point b = a right 40 cm up 3 cm
                  point c = b down 47 cm right 5 cm
                  point d = a down 40 cm
                  curve top = from a heading -20 deg through a right 19 cm down 4 cm to b heading 40 deg
                  curve side = from b heading 280 deg to c heading 260 deg
                  curve hem = from c to d hollowed down by 2 cm
                  curve centre = from d heading 70 deg to a heading 100 deg
                  outline top, side, hem, centre
                  allow 1 cm
                  cut 1 from shell
                  grain from a right 6 cm to a right 6 cm down 20 cm
                  let before_top = length(top)
                  let before_side = length(side)
                  let before_centre = length(centre)
                  %s
                  let after_top = length(top)
                  let after_side = length(side)
                  let after_centre = length(centre)
                }
                """;
        for (String change : new String[] {
            "slash from on hem at 12 cm to b spread 7 cm",
            "slash from on hem at 12 cm to (a right 30 cm down 20 cm) to b spread 2 cm",
            "slash from on hem at 30 cm to a spread 3 cm"
        }) {
            Drawing drawing = Drafts.drawn(drawn.formatted(change));
            for (String edge : new String[] {"top", "side", "centre"}) {
                assertThat(value(drawing, "after_" + edge)).isCloseTo(value(drawing, "before_" + edge), within(HAIR));
            }
        }
    }

    /** Above a change one sees the piece as it was, below it as it is, and from outside as it is in the end. */
    @Test
    void namesMeanWhatIsDrawnAboveThem() {
        Drawing drawing =
                Drafts.drawn(panel("let first = length(hem)\n  pivot about tip closing bust spreading hem nearest tip\n"
                                + "  let second = length(hem)\n  slash from on hem at 3 cm to on top at 2 cm spread 1 cm\n"
                                + "  let third = length(hem)")
                        + "let outside = length(Panel.hem)\n");
        assertThat(value(drawing, "first")).isCloseTo(400, within(HAIR));
        assertThat(value(drawing, "second")).isCloseTo(450, within(HAIR));
        assertThat(value(drawing, "third")).isCloseTo(460, within(HAIR));
        assertThat(Drafts.value(drawing, "outside")).isCloseTo(460, within(HAIR));
    }

    @Test
    void notchesAndMarksTravelWithTheirPart() {
        Drawing drawing = Drafts.drawn(panel("point button = d right 35 cm up 5 cm\n  mark button button\n"
                + "  notch hem at 5 cm\n  pivot about tip closing bust spreading hem nearest tip"));
        Piece made = Drafts.made(drawing, "Panel");
        Point marked = made.marks().stream()
                .filter(m -> m instanceof Mark.Button)
                .map(m -> ((Mark.Button) m).at())
                .findFirst()
                .orElseThrow();
        // The turn about the point of the dart keeps the distance from it.
        Point tip = point(drawing, "tip");
        double before = new Point(350, 350).distance(tip);
        assertThat(marked.distance(tip)).isCloseTo(before, within(1e-9));
        assertThat(marked.x()).isGreaterThan(360);
        assertThat(made.notches()).hasSize(1);
        assertThat(point(drawing, "button")).isEqualTo(marked);
    }

    @Test
    void theSeamOfTwoPartsOfAPieceIsCheckedOfItself() {
        Drawing drawing = Drafts.drawn(panel("guide level = across from a down 12 cm")
                + "piece Yoke taken from Panel above level { }\npiece Lower taken from Panel below level { }\n"
                + "let upper = area(Yoke)\nlet rest = area(Lower)\nlet whole = area(Panel)\n");
        assertThat(drawing.findings())
                .filteredOn(f -> f.name().equals("Yoke.level to Lower.level"))
                .hasSize(1)
                .allSatisfy(f -> assertThat(f.verdict()).isEqualTo(Finding.Verdict.PASSED));
        assertThat(Drafts.value(drawing, "upper")).isCloseTo(400 * 120, within(1e-6));
        assertThat(Drafts.value(drawing, "upper") + Drafts.value(drawing, "rest"))
                .isCloseTo(Drafts.value(drawing, "whole"), within(1e-6));
        assertThat(Drafts.made(drawing, "Yoke").edges().stream().map(e -> e.name()))
                .containsExactlyInAnyOrder("top", "side", "level", "centre");
    }

    /** A facing round a quarter circle is a quarter of a ring. */
    @Test
    void aFacingKeepsItsWidthRoundACurve() {
        Drawing drawing = Drafts.drawn("""
                draft "Test"
                cloth shell wide 140 cm
                piece Front {
                  point o = origin
                  point a = o right 10 cm
                  point b = o down 10 cm
                  point c = a right 30 cm
                  point d = c down 60 cm
                  point e = o down 60 cm
                  arc neck_edge = from a to b centre o
                  line shoulder = a to c
                  line side = c to d
                  line hem = d to e
                  line centre = e to b
                  outline neck_edge, shoulder, side, hem, centre
                  allow 1 cm
                  cut 1 on fold centre from shell
                  grain along centre
                }
                piece Facing taken from Front within 5 cm of neck_edge { }
                let ring = area(Facing)
                let inner = length(Facing.inner_edge)
                """);
        assertThat(Drafts.value(drawing, "ring")).isCloseTo(Math.PI / 4 * (150 * 150 - 100 * 100), within(1e-6));
        assertThat(Drafts.value(drawing, "inner")).isCloseTo(Math.PI / 2 * 150, within(1e-9));
    }

    @Test
    void aPartSaysItsOwnCutsAndAllowances() {
        Drawing drawing =
                Drafts.drawn(panel("guide level = across from a down 12 cm\n  notch hem at 5 cm\n" + "  mark drill tip")
                        + "piece Yoke taken from Panel above level {\n  cut 2 from shell\n  allow 5 mm\n}\n");
        Piece yoke = Drafts.made(drawing, "Yoke");
        assertThat(yoke.cuts()).hasSize(1);
        assertThat(yoke.cuts().get(0).count()).isEqualTo(2);
        assertThat(yoke.edges())
                .allSatisfy(e -> assertThat(e.allowance().width()).isEqualTo(5));
        assertThat(yoke.notches()).isEmpty();
        assertThat(yoke.marks()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pivot about a closing bust spreading hem halfway | PCE201",
                "pivot about tip closing (3/2) of bust spreading hem halfway | PCE202",
                "slash from on hem at 10 cm to on side at 20 cm spread 1 cm | PCE203",
                "slash from a right 3 cm down 3 cm to on top at 10 cm spread 1 cm | PCE204",
                "slash from c to on top at 10 cm spread 1 cm | PCE205",
                "slash from on hem at 25 cm to on top at 10 cm spread -1 cm | PCE206",
                "slash from on hem at 25 cm to on top at 10 cm spread 90 cm | PCE207",
                "curve bow = from a to c hollowed left by 3 cm\\n lengthen at bow by 1 cm | PCE208",
                "guide level = across from a up 3 cm\\n lengthen at level by 1 cm | PCE209",
                "guide level = across from a down 38 cm\\n lengthen at level by -4 cm | PCE209",
                "pivot about tip closing bust into bust on hem nearest tip | NAM002",
                "line inner = a down 2 cm to a down 2 cm right 2 cm\\n pivot about tip closing hem spreading hem halfway | KND026",
                "slash from on hem at 3 cm to on hem at 30 cm spread 1 cm | PCE218",
                "slash from on hem at 25 cm to a right 15 cm down 45 cm to on top at 10 cm spread 1 cm | PCE219",
                "guide slant = a down 30 cm to b down 39 cm\\n lengthen at slant by -2 cm | PCE210",
                "dart low = on hem at 10 cm intake 1 cm to tip\\n pivot about tip closing bust into low on hem at 30 cm | PCE211",
                "dart low = on hem at 10 cm intake 1 cm to tip\\n pivot about tip closing bust into low on top at 10 cm | PCE211",
                "dart low = on hem at 30 cm intake 1 cm to d right 10 cm up 9 cm\\n"
                        + " pivot about tip closing bust into low on hem at 30 cm | PCE212",
                "dart inner = between (a right 10 cm down 30 cm) and (a right 30 cm down 30 cm) intake 1 cm at a right 20 cm"
                        + " down 30 cm\\n slash from on hem at 20 cm to on top at 20 cm spread 1 cm | PCE217",
            })
    void whatCannotBeDoneIsSaid(String change, String code) {
        assertThat(codes(panel(change.replace("\\n", "\n ")))).contains(code);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "line vee = on top at 10 cm to a right 20 cm down 10 cm to on top at 30 cm | below vee { } | PCE213",
                "guide low = across from a down 30 cm | above low { let far = length(hem) } | PCE214",
                "guide low = across from a down 30 cm | within 50 cm of top { } | PCE215",
                "guide low = across from a down 30 cm"
                        + " | below low { pivot about tip closing bust spreading hem halfway } | PCE216",
                "guide low = across from a down 19 cm | below low { } | PCE203",
                "guide low = across from a up 30 cm | below low { } | PCE209",
                "guide low = across from a down 30 cm | below a to b { } | SYN001",
                "guide low = across from a down 30 cm | within 3 cm of low { } | KND009",
            })
    void whatCannotBeTakenIsSaid(String line, String part, String code) {
        assertThat(codes(panel(line) + "piece Part taken from Panel " + part + "\n"))
                .contains(code);
    }

    @Test
    void anOutlineMustBeDrawnBeforeItIsChanged() {
        String late = panel("")
                .replace("  line hem = c to d\n", "")
                .replace(
                        "  let before = sewn(side)\n",
                        "  slash from on side at 3 cm to on centre at 3 cm spread 1 cm\n" + "  line hem = c to d\n");
        assertThat(codes(late)).containsExactly("KND025");
    }
}
