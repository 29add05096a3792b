package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.gusset.dsl.drafts.Lays.ACROSS;
import static org.gusset.dsl.drafts.Lays.PLAIN;
import static org.gusset.dsl.drafts.Lays.drawn;
import static org.gusset.dsl.drafts.Lays.oblong;
import static org.gusset.dsl.drafts.Lays.of;
import static org.gusset.dsl.drafts.Lays.plan;
import static org.gusset.dsl.drafts.Lays.strip;
import static org.gusset.dsl.drafts.Lays.wedge;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.gusset.core.cloth.CuttingOrder;
import org.gusset.core.cloth.Folding;
import org.gusset.core.cloth.LaidPiece;
import org.gusset.core.cloth.LaidWay;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.junit.jupiter.api.Test;

/** Strips on cloth: in the lengths of which they are joined, across, along and on the bias. */
class LayStripsTest {
    /** 215 cm and 1 cm at each end from cloth 140 cm wide: two lengths of 109.5 cm (one join takes 2 cm). */
    @Test
    void aLongStripAcrossIsLaidInItsLengths() {
        Drawing drawing = drawn("cloth shell wide 140 cm", strip("Sash", "215 cm", "20 cm", ACROSS));
        LayPlan open = plan(drawing, PLAIN.withOnly(Folding.OPEN));
        assertThat(open.laid()).hasSize(2).allSatisfy(p -> {
            assertThat(p.join().orElseThrow().each()).isCloseTo(1095, within(1e-9));
            assertThat(p.ring().stream().mapToDouble(Point::y).max().orElse(0)
                            - p.ring().stream().mapToDouble(Point::y).min().orElse(0))
                    .isCloseTo(1095, within(1e-6));
        });
        assertThat(open.length()).isCloseTo(440, within(1e-6));
        LayPlan folded = plan(drawing, PLAIN.withOnly(Folding.LENGTHWISE));
        assertThat(folded.laid()).hasSize(2).allMatch(p -> p.way() == LaidWay.AT_FOLD);
        assertThat(folded.length()).isCloseTo(440, within(1e-6));
        assertThat(CuttingOrder.of(folded).stream().map(s -> s.words().toString()))
                .anySatisfy(w -> assertThat(w).contains("length 1 of 2"))
                .anySatisfy(w -> assertThat(w).contains("length 2 of 2"));
    }

    /** 202 cm of which 56 cm are at hand: four lengths of 52 cm (three joins of 2 cm), cut at once through four layers. */
    @Test
    void allLengthsOfAStripCanBeCutAtOnce() {
        Drawing drawing = drawn("cloth shell wide 80 cm folded twice", strip("Tie", "200 cm", "4 cm", "allow 1 cm"));
        LayPlan plan = plan(drawing, LayPlanner.cloths(drawing).get(0).withAtHand(560), PLAIN.withOnly(Folding.TWICE));
        assertThat(CuttingOrder.of(plan).stream().map(s -> s.words().toString()))
                .containsExactly("Tie, 2 pairs, 4 lengths, 4 to each strip");
        assertThat(plan.laid().get(0).join().orElseThrow().each()).isCloseTo(520, within(1e-9));
    }

    /** A bias binding finds room beside a wedge whose cloth is wide enough for it: nothing is added to the length. */
    @Test
    void aBiasStripIsCutFromWhatIsLeftBesideThePieces() {
        Drawing without = drawn("cloth shell wide 90 cm", wedge("Gore", "cut 1 from shell"));
        Drawing drawing = drawn(
                "cloth shell wide 90 cm",
                wedge("Gore", "cut 1 from shell"),
                strip("Binding", "80 cm", "2 cm on bias", "allow 5 mm"));
        LayPlan plan = plan(drawing, PLAIN);
        assertThat(plan.length()).isCloseTo(plan(without, PLAIN).length(), within(1e-6));
        assertThat(of(plan, "Binding")).isNotEmpty();
        assertThat(CuttingOrder.of(plan).stream().map(s -> s.words().toString()))
                .anySatisfy(w -> assertThat(w).startsWith("Binding").contains("on the bias"));
    }

    /**
     * Binding of several lengths and widths beside pieces by chance, on cloth of several widths, folded, open and one way. The plan is held
     * to the cutting lists layer by layer where it is made; here the lengths are measured with nothing but their corners: every side runs
     * along the warp or at 45 degrees to it, and joined along the warp they are as long as all the binding that is asked for.
     */
    @Test
    void bindingByChanceLiesAtHalfARightAngleAndIsLongEnough() {
        int joined = 0;
        for (long seed = 1; seed <= 10; seed++) {
            Random random = new Random(seed);
            int wide = 60 + random.nextInt(91);
            int strip = 15 + random.nextInt(60);
            int allowance = random.nextInt(3) * 5;
            int longCm = 20 + random.nextInt(180);
            int strips = 1 + random.nextInt(3);
            String ways = List.of(" folded lengthwise", " open", " one way", "").get(random.nextInt(4));
            Drawing drawing = drawn(
                    "cloth shell wide " + wide + " cm" + ways,
                    wedge("Gore", random.nextBoolean() ? "cut 1 pair from shell" : "cut 3 from shell"),
                    oblong("Flap", 10 + random.nextInt(15), 20 + random.nextInt(30), "cut 2 from shell"),
                    String.format(
                            Locale.ROOT,
                            "strip Binding long %d cm wide %d mm on bias {\n  allow %d mm\n  cut %d from shell\n}",
                            longCm,
                            strip,
                            allowance,
                            strips));
            List<LaidPiece> lengths = of(plan(drawing, PLAIN), "Binding");
            assertThat(lengths).as("seed " + seed).isNotEmpty();
            double cutWidth = strip + 2.0 * allowance;
            double total = 0;
            int copies = 0;
            for (LaidPiece length : lengths) {
                assertThat(length.ring()).hasSize(4);
                for (int i = 0; i < 4; i++) {
                    Vector side =
                            length.ring().get((i + 1) % 4).minus(length.ring().get(i));
                    boolean along = Math.abs(side.dy()) < 1e-6 && length.join().isPresent();
                    assertThat(along || Math.abs(Math.abs(side.dx()) - Math.abs(side.dy())) < 1e-6)
                            .as("seed %d: a side runs %s", seed, side)
                            .isTrue();
                }
                int useful = length.gives().minus(length.spare()).all();
                copies += useful;
                total += useful * area(length.ring()) / cutWidth;
            }
            double join = 2 * allowance * Math.sqrt(2);
            assertThat(total - (copies - strips) * join)
                    .as("seed %d: %d lengths", seed, copies)
                    .isCloseTo(strips * (longCm * 10 + 2.0 * allowance), within(1e-3));
            joined += copies > strips ? 1 : 0;
        }
        assertThat(joined).isBetween(3, 9);
    }

    private static double area(List<Point> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % ring.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return Math.abs(twice) / 2;
    }
}
