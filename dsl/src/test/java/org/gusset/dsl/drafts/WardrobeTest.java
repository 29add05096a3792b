package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.gusset.core.diagnostic.Severity;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Point;
import org.gusset.core.measure.Measurements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The shipped drafts against the figures of the methods that they follow; each figure's source is named beside it. */
class WardrobeTest {
    private static Drawing drawn(String draft, Object... body) {
        Drawing drawing = Drafts.draw(Drafts.shipped(draft), Drafts.body(body));
        assertThat(drawing.diagnostics())
                .filteredOn(d -> d.severity() != Severity.NOTE)
                .isEmpty();
        return drawing;
    }

    /**
     * A metric block for women's trousers in a classroom text (trade-facts.md B6a), its example: waist 68, hip 94, body rise 28, waist
     * to hip 20.6, waist to floor 104, bottom 22 cm. The coordinates are those of the text and, where it gives a construction
     * only, derived from it.
     */
    @ParameterizedTest
    @CsvSource({
        "Front, fork_in, -9.333, 28",
        "Front, hip_side, 14.667, 20.6",
        "Front, fork_end, -15.708, 28",
        "Front, waist_front, -8.333, 0",
        "Front, waist_side, 10.917, 0",
        "Front, bottom_out, 10.5, 104",
        "Front, knee_out, 11.8, 61",
        "Front, knee_in, -11.8, 61",
        "Back, seat_in, -7, 28",
        "Back, seat_half, -7, 14",
        "Back, seat_top, -5, -2",
        "Back, waist_side, 16.156, 0",
        "Back, fork_back, -18.896, 28.5",
        "Back, hip_side, 18, 20.6",
        "Back, bottom_out, 11.5, 104",
        "Back, knee_out, 12.8, 61",
    })
    void theTrouserBlockHasThePointsOfItsText(String piece, String name, double x, double y) {
        Drawing drawing = drawn(
                "trouser-block.gusset",
                "waist",
                68,
                "hip",
                94,
                "body_rise",
                28,
                "hip_depth",
                20.6,
                "waist_to_floor",
                104);
        Point point = Drafts.point(drawing, piece + "." + name);
        assertThat(point.x() / 10).isCloseTo(x, within(6e-4));
        assertThat(point.y() / 10).isCloseTo(y, within(6e-4));
    }

    /** The same text states 1 cm of ease in the waist; hip 98 = H + 4 (checks TR-03, TR-06). */
    @Test
    void theTrousersWaistHasOneCentimetreOfEase() {
        Drawing drawing = drawn(
                "trouser-block.gusset",
                "waist",
                68,
                "hip",
                94,
                "body_rise",
                28,
                "hip_depth",
                20.6,
                "waist_to_floor",
                104);
        assertThat(Drafts.value(drawing, "waist_sewn") / 10).isCloseTo(69, within(1e-6));
        double hip = Drafts.point(drawing, "Front.hip_in").distance(Drafts.point(drawing, "Front.hip_side"))
                + Drafts.point(drawing, "Back.seat_hip").distance(Drafts.point(drawing, "Back.hip_side"));
        assertThat(2 * hip / 10).isCloseTo(98, within(1e-6));
    }

    /** E. A. Bennett, The Perfect Dressmaking System, 1914: waist and hip shared evenly; five gores of 25 and 40 in are 5 and 8 in. */
    @Test
    void theGoresShareWaistAndHipEvenly() {
        Drawing drawing = Drafts.draw(
                Drafts.shipped("six-gore-skirt.gusset"),
                Drafts.body("waist", 25 * 2.54, "hip", 40 * 2.54, "hip_depth", 17.78));
        // With the draft's own ease of 2 cm and 5 cm on top, by six.
        assertThat(Drafts.value(drawing, "gore_waist") / 10).isCloseTo((25 * 2.54 + 2) / 6, within(1e-9));
        assertThat(Drafts.value(drawing, "gore_hip") / 10).isCloseTo((40 * 2.54 + 5) / 6, within(1e-9));
        assertThat(drawing.findings()).noneMatch(f -> f.verdict() == org.gusset.core.check.Finding.Verdict.FAILED);
    }

    /** The six gores sewn in a round: the waist comes out within the rise of its arcs, and the sides of all are one length. */
    @Test
    void theGoresAreSewnEachToTheNext() {
        Drawing drawing = drawn("six-gore-skirt.gusset", "waist", 70, "hip", 96, "hip_depth", 20);
        assertThat(Drafts.length(drawing, "Gore.right_side"))
                .isCloseTo(Drafts.length(drawing, "Gore.left_side"), within(1e-6));
        assertThat(6 * Drafts.length(drawing, "Gore.waist_edge") / 10).isBetween(72.0, 72.6);
    }

    /**
     * The robe of a sewing booklet (trade-facts.md B7b): body 2 (125 + 5 + 1) cm long, sleeve 35 + 8 + 1 + 1 cm. Here each half is a
     * piece, with the same hems and allowances.
     */
    @Test
    void theRobeIsCutAsTheBookletSays() {
        Measurements body = Drafts.body("chest", 100, "waist", 80, "height", 170, "neck", 38, "upper_arm", 30);
        Drawing drawing = Drafts.shipped("wrap-robe.gusset")
                .evaluate(
                        body,
                        org.gusset.core.draft.Choices.none()
                                .with(
                                        "robe_length",
                                        new org.gusset.core.draft.Choice.Amount(org.gusset.core.measure.Quantity.of(
                                                125, org.gusset.core.measure.Unit.CM)))
                                .with(
                                        "sleeve_length",
                                        new org.gusset.core.draft.Choice.Amount(org.gusset.core.measure.Quantity.of(
                                                35, org.gusset.core.measure.Unit.CM))))
                .value()
                .orElseThrow();
        assertThat(drawing.diagnostics())
                .filteredOn(d -> d.severity() != Severity.NOTE)
                .isEmpty();
        assertThat(2 * Drafts.made(drawing, "Back").cutting().bounds().height() / 10)
                .isCloseTo(262, within(1e-6));
        assertThat((Drafts.made(drawing, "Sleeve").cutting().bounds().height()) / 10)
                .isCloseTo(35 + 8 + 1, within(1e-6));
    }

    /** Common practice, no source: gathers of one and a half times; each tier that of the one above. */
    @Test
    void theTiersGrowByTheirFullness() {
        Drawing drawing = drawn("tiered-skirt.gusset", "waist", 71);
        assertThat(2 * Drafts.length(drawing, "TopTier.upper_edge") / 10).isCloseTo(72 * 1.5, within(1e-9));
        assertThat(2 * Drafts.length(drawing, "LowTier.lower_edge") / 10).isCloseTo(72 * 1.5 * 1.5 * 1.5, within(1e-9));
    }

    /** The bag's mouth must let through what goes in: a head that does not pass an opening is found. */
    @Test
    void whatDoesNotPassTheMouthOfTheBagIsFound() {
        Drawing fits = drawn("drawstring-bag.gusset");
        assertThat(fits.proved()).isTrue();
        Drawing drawing = fits.with(org.gusset.core.draft.Choices.none()
                .with(
                        "clubs",
                        new org.gusset.core.draft.Choice.Amount(
                                org.gusset.core.measure.Quantity.of(70, org.gusset.core.measure.Unit.CM))));
        assertThat(Drafts.codes(drawing.diagnostics())).containsExactly("SEW022", "SEW005");
        assertThat(drawing.proved()).isFalse();
    }

    /**
     * The classic shirt block of a classroom text (trade-facts.md B1b; SH-01 to SH-05), its example: collar 40, chest 100, back width
     * 40, scye depth 24.4, waist length 44.2, shirt length 78 cm; the front's own frame has the centre front, 62 cm along, at its origin.
     */
    @ParameterizedTest
    @CsvSource({
        "Back, p8, 7.5, -4.5",
        "Back, p9, 0, 7.68",
        "Back, p10, 24, 7.68",
        "Back, p13, 24, 0.75",
        "Back, p16, 31.5, 28.4",
        "Back, p29, 29.5, 47.2",
        "Back, p32, 30.5, 66",
        "Back, p35, 15.75, 86",
        "Front, p20, 55, 4.5",
        "Front, p21, 62, 10",
        "Front, p23, 37.811, 9.18",
        "Front, p24, 37.833, 28.4",
        "Front, p25, 37.833, 25.4",
        "Front, p36, 46.75, 82",
        "Front, p27, 63.5, 10",
    })
    void theShirtBlockHasThePointsOfItsText(String piece, String name, double x, double y) {
        Drawing drawing = drawn(
                "shirt-block.gusset",
                "neck",
                38.5,
                "chest",
                100,
                "back_width",
                40,
                "scye_depth",
                24.4,
                "back_length",
                44.2);
        Point point = Drafts.point(drawing, piece + "." + name);
        double right = piece.equals("Front") ? 62 : 0;
        assertThat(point.x() / 10 + right).isCloseTo(x, within(6e-4));
        assertThat(point.y() / 10).isCloseTo(y, within(6e-4));
    }

    /** The shoulder of the same block is 17.315 cm, 0.5 cm more in the front (SH-02, SH-03). */
    @Test
    void theFrontShoulderOfTheShirtIsHalfACentimetreLonger() {
        Drawing drawing = drawn(
                "shirt-block.gusset",
                "neck",
                38.5,
                "chest",
                100,
                "back_width",
                40,
                "scye_depth",
                24.4,
                "back_length",
                44.2);
        assertThat(Drafts.length(drawing, "Back.shoulder") / 10).isCloseTo(17.315095, within(1e-3));
        assertThat(Drafts.length(drawing, "Front.shoulder") / 10).isCloseTo(17.815095, within(1e-3));
    }

    /** Common practice, no source: the stand is as long as the neckline and its button stands, the collar as the neckline. */
    @Test
    void theCollarEndsAtTheCentreFront() {
        Drawing drawing = drawn(
                "shirt.gusset",
                "neck",
                38.5,
                "chest",
                100,
                "back_width",
                40,
                "scye_depth",
                24.4,
                "back_length",
                44.2,
                "arm_length",
                62,
                "upper_arm",
                32,
                "wrist",
                17);
        double half = Drafts.value(drawing, "half_neck");
        assertThat(Drafts.length(drawing, "Stand.neck_edge")).isCloseTo(half + 15, within(1e-6));
        assertThat(Drafts.length(drawing, "Collar.stand_edge"))
                .isCloseTo(Drafts.length(drawing, "Stand.collar_edge"), within(1e-6));
        assertThat(Drafts.made(drawing, "Yoke")
                                .edge("yoke_line")
                                .orElseThrow()
                                .path()
                                .length()
                        / 10)
                .isCloseTo(24, within(1e-6));
    }
}
