package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.grade.CornerRule;
import org.gusset.core.grade.Course;
import org.gusset.core.grade.Grade;
import org.gusset.core.grade.GradeRules;
import org.gusset.core.grade.SeamDrift;
import org.gusset.core.jts.JtsForms;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.SizeChart;
import org.gusset.core.measure.Unit;
import org.gusset.core.pattern.Piece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** The shipped drafts over a chart of four even sizes. */
class GradeShippedTest {
    private static final double SHARP = 1e-9;

    static List<String> drafts() {
        return Drafts.allShipped();
    }

    /** Steps of 4 cm in the girths, as the smaller sizes of EN 13402-3 (from memory) have; the lengths are made up. */
    private static SizeChart chart() {
        SizeChart chart = Sizes.named("36", "38", "40", "42");
        String[] names = {
            "chest",
            "waist",
            "hip",
            "neck",
            "shoulder_width",
            "upper_arm",
            "arm_length",
            "wrist",
            "head",
            "scye_depth",
            "back_length",
            "hip_depth",
            "knee",
            "side_length",
            "inside_leg",
            "body_rise",
            "waist_to_floor",
            "height"
        };
        double[] base = {84, 68, 92, 35, 39, 27, 58, 15, 55, 20, 40, 20, 50, 103, 76, 26, 104, 166};
        double[] step = {4, 4, 4, 1, 1, 1.2, 0.5, 0.5, 0.5, 0.5, 0.5, 0.2, 1, 1, 0.5, 0.6, 1, 1};
        for (int m = 0; m < names.length; m++) {
            double[] row = new double[4];
            for (int i = 0; i < 4; i++) {
                row[i] = base[m] + i * step[m];
            }
            chart = Sizes.with(chart, names[m], Unit.CM, row);
        }
        return chart;
    }

    private static final Map<String, Grade> GRADES = new ConcurrentHashMap<>();

    private static Grade grade(String draft) {
        return GRADES.computeIfAbsent(
                draft,
                name -> Grade.of(Drafts.shipped(name), chart(), Choices.none())
                        .value()
                        .orElseThrow());
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void everySeamOfEveryShippedDraftMatchesInEverySize(String draft) {
        Grade grade = grade(draft);
        assertThat(grade.diagnostics().stream().filter(d -> d.isError()).toList())
                .isEmpty();
        for (SeamDrift seam : grade.seams()) {
            assertThat(seam.firstFailing()).as(seam.seam()).isEmpty();
        }
        assertThat(grade.proved()).isTrue();
    }

    /** Each size by itself, with another size before it, in another order, on two threads: the same bits. */
    @ParameterizedTest
    @ValueSource(strings = {"fitted-bodice.gusset", "skirt-block.gusset", "half-circle-skirt.gusset"})
    void aSizeHasTheSameBitsWhateverStandsBesideIt(String name) throws InterruptedException {
        Draft draft = Drafts.shipped(name);
        SizeChart chart = chart();
        List<Measurements> turned = new ArrayList<>(chart.sizes());
        Collections.reverse(turned);
        Grade plain = Grade.of(draft, chart, Choices.none()).value().orElseThrow();
        ExecutorService two = Executors.newFixedThreadPool(2);
        Grade back;
        try {
            back = Grade.of(draft, new SizeChart("turned", turned), Choices.none(), two, () -> true)
                    .value()
                    .orElseThrow();
        } finally {
            two.shutdown();
        }
        Drawing on = plain.sizes().get(0).drawing();
        for (int i = 0; i < 4; i++) {
            List<Piece> own = plain.sizes().get(i).drawing().pieces();
            assertThat(back.sizes().get(3 - i).drawing().pieces()).isEqualTo(own);
            on = on.with(chart.sizes().get(i));
            assertThat(on.pieces()).isEqualTo(own);
        }
        for (CornerRule rule : plain.rules().corners()) {
            CornerRule other = back.rules().corner(rule.piece(), rule.corner()).orElseThrow();
            for (int i = 0; i < 4; i++) {
                assertThat(other.places().get(3 - i)).isEqualTo(rule.places().get(i));
            }
        }
    }

    /** The block's rules are linear: half of 4 cm over 16, 8 and so on; the sleeve follows the length of a curve. */
    @Test
    void theBodiceIsGradedAsItsRulesSay() {
        GradeRules rules = grade("fitted-bodice.gusset").rules();
        for (String piece : List.of("Back", "Front")) {
            rules.corners().stream().filter(rule -> rule.piece().equals(piece)).forEach(rule -> {
                assertThat(rule.course()).as(rule.corner()).isEqualTo(Course.CONSTANT);
                for (Vector move : rule.moves()) {
                    assertThat(move.dx()).isCloseTo(rule.moves().get(0).dx(), within(SHARP));
                    assertThat(move.dy()).isCloseTo(rule.moves().get(0).dy(), within(SHARP));
                }
            });
        }
        // Neck chest / 24; centre front chest / 5, less the neck; back and front underarm together half the chest.
        assertThat(rules.corner("Front", "neck_pt").orElseThrow().moves().get(0).dx())
                .isCloseTo(-40.0 / 24, within(SHARP));
        assertThat(rules.corner("Front", "neck_cf").orElseThrow().moves().get(0).dy())
                .isCloseTo(-40.0 / 5 + 40.0 / 24, within(SHARP));
        assertThat(rules.corner("Back", "underarm").orElseThrow().moves().get(0).dx()
                        - rules.corner("Front", "underarm")
                                .orElseThrow()
                                .moves()
                                .get(0)
                                .dx())
                .isCloseTo(20, within(SHARP));
        assertThat(rules.corner("Sleeve", "front_under").orElseThrow().course()).isEqualTo(Course.BENDS);
    }

    /** A girth's step is quartered (Fasanella; Horlamus, Threads 101): 4 cm in the hip are 1 cm in back and front. */
    @Test
    void theHipOfTheSkirtIsQuartered() {
        GradeRules rules = grade("skirt-block.gusset").rules();
        for (String piece : List.of("Back", "Front")) {
            CornerRule hem = rules.corner(piece, "hem_side").orElseThrow();
            assertThat(hem.course()).isEqualTo(Course.CONSTANT);
            for (Vector move : hem.moves()) {
                assertThat(move.dx()).isCloseTo(10, within(SHARP));
                assertThat(move.dy()).isZero();
            }
        }
    }

    /**
     * Nested sizes must not cross: the smaller piece lies in the larger one, by JTS. So it is where the nesting point lies within; a
     * waist or neck that rises at its end and grows wider crosses the size before near the fold.
     */
    @ParameterizedTest
    @CsvSource({
        "trouser-block, Front",
        "trouser-block, Back",
        "smock, Sleeve",
        "smock, Band",
        "skirt-block, Waistband",
        "tiered-skirt, TopTier",
        "tiered-skirt, LowTier",
        "wrap-robe, Sleeve",
        "shirt, Cuff"
    })
    void theSmallerSizeLiesInTheLarger(String draft, String piece) {
        List<Geometry> nested = nested(grade(draft + ".gusset"), piece);
        for (int i = 1; i < nested.size(); i++) {
            // In square mm; the curves are flattened to a thousandth of a millimetre.
            assertThat(nested.get(i - 1).difference(nested.get(i)).getArea())
                    .as(piece + " " + i)
                    .isLessThan(0.01);
            assertThat(nested.get(i).getArea()).isGreaterThan(nested.get(i - 1).getArea());
        }
    }

    private static List<Geometry> nested(Grade grade, String name) {
        List<Geometry> all = new ArrayList<>();
        for (Grade.Sized size : grade.sizes()) {
            Piece piece = size.drawing().pieces().stream()
                    .filter(p -> p.name().equals(name))
                    .findFirst()
                    .orElseThrow();
            Path own = piece.stitching().transformed(Transform.shift(Point.ORIGIN.minus(piece.nest())));
            all.add(JtsForms.polygon(own, 0.001, new GeometryFactory()));
        }
        return all;
    }
}
