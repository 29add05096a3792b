package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Point;
import org.gusset.core.measure.Measurements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The fitted bodice against the worked example of the block that it follows (trade-facts.md B1a: rules from memory, the example's
 * measures seen): bust 83, waist 64, back length 38 cm. The sleeve of a block, and old books on linings.
 */
class BodiceTest {
    private static final Measurements SIZE_NINE =
            Drafts.body("chest", 83, "waist", 64, "back_length", 38, "arm_length", 52, "upper_arm", 26, "wrist", 15);

    private static Drawing block() {
        Drawing drawing = Drafts.draw(Drafts.shipped("fitted-bodice.gusset"), SIZE_NINE);
        assertThat(drawing.diagnostics()).isEmpty();
        return drawing;
    }

    @ParameterizedTest
    @CsvSource({
        "half, 47.5",
        "bust_level, 20.616667",
        "neck_front, 6.858333",
        "neck_back, 7.058333",
        "front_shoulder, 12.279763",
        "suppressed, 12.5",
        "side_x, 23.053",
    })
    void theLengthsAreThoseOfTheExample(String name, double cm) {
        assertThat(Drafts.value(block(), name) / 10).isCloseTo(cm, within(6e-4));
    }

    /** Points in the frame of the block: the front's own frame lies with its middle at 47.5 and the bust line at 20.617 cm. */
    @ParameterizedTest
    @CsvSource({
        "Back, blade, 9.888, 8",
        "Back, neck_pt, 7.058, -2.353",
        "Back, tip, 20.443, 1.996",
        "Back, underarm, 23.053, 20.617",
        "Front, bust_point, 38.513, 20.617",
        "Front, gauge, 28.331, 20.617",
        "Front, gauge_up, 28.331, 14.808",
        "Front, neck_pt, 40.642, -4.283",
        "Front, neck_cf, 47.5, 3.075",
        "Front, tip, 29.256, 0.317",
        "Front, leg_up, 30.662, 11.912",
        "Front, underarm, 23.053, 20.617",
    })
    void thePointsAreThoseOfTheExample(String piece, String name, double x, double y) {
        Point point = Drafts.point(block(), piece + "." + name);
        double right = piece.equals("Front") ? 47.5 : 0;
        double down = piece.equals("Front") ? 20.616667 : 0;
        assertThat(point.x() / 10 + right).isCloseTo(x, within(1e-3));
        assertThat(point.y() / 10 + down).isCloseTo(y, within(1e-3));
    }

    /** The darts of the example: bust 18.25 deg, 3.718 cm on legs of 11.722; waist 14, 15, 11, 35, 18 and 7 of 100. */
    @Test
    void theDartsAreThoseOfTheExample() {
        Drawing drawing = block();
        assertThat(Drafts.length(drawing, "Front.mouth") / 10).isCloseTo(3.717813, within(1e-3));
        Point bust = Drafts.point(drawing, "Front.bust_point");
        assertThat(bust.distance(Drafts.point(drawing, "Front.gauge_up")) / 10).isCloseTo(11.7215, within(1e-3));
        double back = Drafts.length(drawing, "Back.waist_edge") - sewn(drawing, "Back", "waist_edge");
        double front = Drafts.length(drawing, "Front.waist_edge") - sewn(drawing, "Front", "waist_edge");
        assertThat(back / 10).isCloseTo(4.375 + 2.25, within(1e-6));
        assertThat(front / 10).isCloseTo(1.75 + 1.875, within(1e-6));
        assertThat(Drafts.point(drawing, "Back.waist_back").x() / 10).isCloseTo(0.875, within(1e-6));
        double side = 2 * Drafts.value(drawing, "side_x")
                - 2 * Drafts.point(drawing, "Back.waist_side").x();
        assertThat(side / 10).isCloseTo(1.375, within(1e-6));
        // Finished waist = W + 6; shoulders equal when the dart is sewn.
        assertThat(Drafts.value(drawing, "waist_sewn") / 10).isCloseTo(70, within(1e-6));
        assertThat(sewn(drawing, "Back", "shoulder")).isCloseTo(Drafts.length(drawing, "Front.shoulder"), within(1e-6));
    }

    private static double sewn(Drawing drawing, String piece, String edge) {
        return Drafts.piece(drawing, piece).lines().stream()
                .filter(l -> l.name().equals(edge))
                .findFirst()
                .orElseThrow()
                .sewn();
    }

    /** The head is a quarter of the armhole and 2.5 cm high (SL-03, from memory) and is solved to the armhole and its ease. */
    @Test
    void theSleeveIsSolvedToTheArmhole() {
        Drawing drawing = block();
        double armhole = Drafts.value(drawing, "armhole_round");
        assertThat(Drafts.length(drawing, "Sleeve.cap")).isCloseTo(armhole + 20, within(1e-6));
        assertThat(Drafts.point(drawing, "Sleeve.arm_mid").y()).isCloseTo(armhole / 4 + 25, within(1e-9));
        // An armhole of a size 9 is about 41 to 43 cm (common practice, no source).
        assertThat(armhole / 10).isBetween(39.0, 45.0);
    }

    /** The triangle method (SL-04, SL-05, derived): slants of 20.5 and 22.5 cm are 34.215 wide at 13 high, 38.051 at 10. */
    @ParameterizedTest
    @CsvSource({"13, 34.215235", "10, 38.051175"})
    void theWidthOfASleeveFollowsFromItsSlants(double high, double wide) {
        Drawing drawing = Drafts.drawn("""
                draft "Test"
                piece Head {
                  point crown = origin
                  guide arm_line = across from crown down %s cm
                  point front = crown swept by 20.5 cm to arm_line nearest (arm_line.start right 9 cm)
                  point back  = crown swept by 22.5 cm to arm_line nearest (arm_line.start left 9 cm)
                  line front_slant = crown to front
                  line back_slant  = back to crown
                  line width_line  = front to back
                  outline front_slant, width_line, back_slant
                  allow 1 cm
                  cut 1
                  grain along width_line
                }
                """.formatted(high));
        assertThat(Drafts.length(drawing, "Head.width_line") / 10).isCloseTo(wide, within(1e-3));
    }

    /**
     * Common practice, no source: a half sleeve head drawn 9 1/2 in with its allowance, for a half armhole of 10 in sewn and an
     * allowance of 1/2 in, must become 10 1/2 in.
     */
    @Test
    void aHalfHeadIsSolvedToTheHalfArmholeAndItsAllowance() {
        Drawing drawing = Drafts.drawn("""
                draft "Test"
                piece Head {
                  unknown growth from 0.5 to 2
                  point crown = origin
                  point under = crown right 7 1/2 in * growth down 5 1/2 in * growth
                  curve half_head = from crown heading right to under heading -20 deg
                  let as_drawn = length(half_head) / growth
                  solve growth so that length(half_head) - 1/2 in = 10 in
                  line low   = under to crown down 12 in
                  line back  = crown down 12 in to crown
                  outline half_head, low, back
                  allow 0 cm
                  cut 1
                  grain along back
                }
                """);
        double inch = 25.4;
        assertThat(Drafts.value(drawing, "Head.as_drawn") / inch).isBetween(9.2, 9.8);
        assertThat(Drafts.length(drawing, "Head.half_head") / inch).isCloseTo(10.5, within(1e-6));
    }

    /** C. C. Ingalls, Text-Book on Domestic Art, 1911 (IN-01, IN-02): (36 - 13) / 2 = 11.5 in; neck 13 / 5 + 1/4 = 2.85 in. */
    @Test
    void aLiningHasTheFrontOfItsBook() {
        Drawing drawing = Drafts.drawn(
                """
                draft "Test"
                measure bust from 20 in to 60 in
                measure back_width from 8 in to 24 in
                measure neck from 8 in to 24 in
                measure waist from 15 in to 60 in
                let across = (bust - back_width) / 2
                let neck_depth = neck / 5 + 1/4 in
                """.replace("let across", "let front_across"),
                "bust",
                36 * 2.54,
                "back_width",
                13 * 2.54,
                "neck",
                13 * 2.54,
                "waist",
                25 * 2.54);
        assertThat(Drafts.value(drawing, "front_across") / 25.4).isCloseTo(11.5, within(1e-9));
        assertThat(Drafts.value(drawing, "neck_depth") / 25.4).isCloseTo(2.85, within(1e-9));
    }

    /** The same book's dart takes up what the waist line has beyond a quarter waist: 10.762 - 6.25 in; a waist of 45 in gives none. */
    @Test
    void aWaistTooWideForItsDartIsRefused() {
        String text = """
                draft "Test"
                measure waist from 15 in to 60 in
                piece Front {
                  point a = origin
                  point b = a right 10.762 in
                  point c = b down 12 in
                  point d = a down 12 in
                  line waist_edge = d to c
                  line top = b to a
                  line side = c to b
                  line centre = a to d
                  dart waist_dart = on waist_edge halfway intake length(waist_edge) - waist / 4 to a right 5 in down 2 in
                  outline top, side, waist_edge, centre
                  allow 1/2 in
                  cut 1 pair
                  grain along centre
                  let taken = waist_dart.intake
                }
                """;
        Drawing drawing = Drafts.drawn(text, "waist", 25 * 2.54);
        assertThat(Drafts.value(drawing, "Front.taken") / 25.4).isCloseTo(4.512, within(1e-9));
        Drawing wide = Drafts.draw(Drafts.sound(text), Drafts.body("waist", 45 * 2.54));
        assertThat(Drafts.codes(wide.diagnostics())).contains("PCE101");
    }

    /**
     * A sleeve as a tube cut askew (SL-12 to SL-14, derived): unrolled, the head is a cosine, and as long as the ellipse of the cut. A
     * smooth curve through seventeen of its points measures the same to a tenth of a millimetre.
     */
    @ParameterizedTest
    @CsvSource({"30, 52.42679", "45, 41.344229", "60, 36.677129"})
    void theHeadOfATubeCutAskewIsAsLongAsItsEllipse(double degrees, double cm) {
        double radius = 34 / (2 * Math.PI);
        double cot = 1 / Math.tan(Math.toRadians(degrees));
        StringBuilder points = new StringBuilder();
        StringBuilder through = new StringBuilder();
        for (int i = 0; i <= 16; i++) {
            double x = 34.0 * i / 16;
            double y = radius * cot * (1 - Math.cos(x / radius));
            points.append(String.format(java.util.Locale.ROOT, "  point k%d = at (%.9f cm, %.9f cm)\n", i, x, -y));
            through.append(
                    i == 0
                            ? "from k0 heading right"
                            : i == 1 ? " through k1" : i < 16 ? ", k" + i : " to k16 heading right");
        }
        Drawing drawing = Drafts.drawn("""
                draft "Tube"
                piece Sleeve {
                %s  curve cap = %s
                  line right_side = k16 to (k16 down 20 cm)
                  line hem = (k16 down 20 cm) to (k0 down 20 cm)
                  line left_side = (k0 down 20 cm) to k0
                  outline cap, right_side, hem, left_side
                  allow 1 cm
                  cut 1
                  grain along left_side
                }
                """.formatted(points, through));
        assertThat(Drafts.length(drawing, "Sleeve.cap") / 10).isCloseTo(cm, within(0.01));
    }
}
