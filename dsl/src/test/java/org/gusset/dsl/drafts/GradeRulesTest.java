package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.geometry.Vector;
import org.gusset.core.grade.CornerRule;
import org.gusset.core.grade.Course;
import org.gusset.core.grade.Grade;
import org.gusset.core.grade.GradeRules;
import org.gusset.core.grade.GradeWords;
import org.gusset.core.measure.SizeChart;
import org.gusset.core.measure.Unit;
import org.junit.jupiter.api.Test;

class GradeRulesTest {
    /** Moves of drafts without unknowns, in mm. */
    private static final double SHARP = 1e-9;

    /** A quarter of the chest wide, a sixth of it and 20 cm high; the corner at the hem has no point of its own name. */
    private static final String QUARTER = """
            draft "Quarter"
            measure chest from 20 cm to 400 cm
            piece Back {
              point nape = origin
              point side_top = nape right chest / 4
              point side_low = side_top down chest / 6 + 20 cm
              line top = nape to side_top
              line side = side_top to side_low
              line hem = side_low to (nape down chest / 6 + 20 cm)
              line centre = hem.end to nape
              outline top, side, hem, centre
              allow 1 cm
              cut 2
              grain along centre
            }
            """;

    private static GradeRules rules(String draft, SizeChart chart) {
        return Grade.of(Drafts.sound(draft), chart, Choices.none())
                .value()
                .orElseThrow()
                .rules();
    }

    private static CornerRule corner(GradeRules rules, String piece, String corner) {
        return rules.corner(piece, corner)
                .orElseThrow(() -> new AssertionError("no corner " + corner + " but "
                        + rules.corners().stream().map(CornerRule::corner).toList()));
    }

    private static List<String> breaks(GradeRules rules, CornerRule rule) {
        return rule.breaks().stream().map(rules.sizes()::get).toList();
    }

    /** A draft whose one corner lies at a formula of the chest to the right. */
    private static String at(String formula) {
        return QUARTER.replace("nape right chest / 4", "nape right " + formula);
    }

    // ---- outside figures

    /**
     * EN 13402-3:2004, bust of women, from memory: steps of 4 cm up to 104 cm, then of 6 cm. A girth's step is quartered: Fasanella;
     * Horlamus, "Quick reference for cut-and-spread grading", Threads 101, pages 66 to 70 (overall / 4 = allocated).
     */
    private static final double[] EN_BUST = {76, 80, 84, 88, 92, 96, 100, 104, 110, 116, 122, 128, 134, 140, 146, 152};

    @Test
    void aQuarterOfTheBustMovesByAQuarterOfTheStepAndBreaksWhereTheEuropeanChartDoes() {
        SizeChart chart = Sizes.with(
                Sizes.named(Arrays.stream(EN_BUST)
                        .mapToObj(b -> String.valueOf((int) b))
                        .toArray(String[]::new)),
                "chest",
                Unit.CM,
                EN_BUST);
        GradeRules rules = rules(QUARTER, chart);
        CornerRule side = corner(rules, "Back", "side_top");
        for (int i = 1; i < EN_BUST.length; i++) {
            Vector move = side.move(i).orElseThrow();
            assertThat(move.dx()).isCloseTo((EN_BUST[i] - EN_BUST[i - 1]) * 10 / 4, within(SHARP));
            assertThat(move.dy()).isEqualTo(0);
        }
        assertThat(side.course()).isEqualTo(Course.WITH_CHART);
        assertThat(breaks(rules, side)).containsExactly("110");
        assertThat(GradeWords.rule(side, rules.sizes()))
                .hasToString("breaks with the chart at 110: right 1 cm from 80 on; right 1.5 cm from 110 on");
        assertThat(corner(rules, "Back", "nape").course()).isEqualTo(Course.CONSTANT);
        assertThat(corner(rules, "Back", "nape").stays()).isTrue();
    }

    @Test
    void whereTheDraftIsLinearAndTheStepsAreEvenTheMovesAreTheSameToABillionthOfAMillimetre() {
        GradeRules rules = rules(QUARTER, Sizes.of("chest", Arrays.copyOf(EN_BUST, 8)));
        assertThat(rules.corners()).hasSize(4);
        for (CornerRule rule : rules.corners()) {
            assertThat(rule.course()).as(rule.corner()).isEqualTo(Course.CONSTANT);
            for (Vector move : rule.moves()) {
                assertThat(move.dx()).isCloseTo(rule.moves().get(0).dx(), within(SHARP));
                assertThat(move.dy()).isCloseTo(rule.moves().get(0).dy(), within(SHARP));
            }
        }
        assertThat(corner(rules, "Back", "side_low").moves().get(0).dy()).isCloseTo(40.0 / 6, within(SHARP));
    }

    /** ASTM D5585-11e1, Table 1, bust girth of the Misses in inches, sizes 00 to 20: the grade is not uniform. */
    @Test
    void theUnevenStepsOfTheAmericanChartAreItsOwnBreaksAndNotTheDrafts() {
        double[] bust = {31.125, 31.75, 33, 34.125, 35.25, 36.25, 37.25, 38.75, 40.375, 42.125, 44, 46};
        double[] step = {0.625, 1.25, 1.125, 1.125, 1, 1, 1.5, 1.625, 1.75, 1.875, 2};
        GradeRules rules = rules(
                QUARTER,
                Sizes.with(
                        Sizes.named("00", "0", "2", "4", "6", "8", "10", "12", "14", "16", "18", "20"),
                        "chest",
                        Unit.IN,
                        bust));
        CornerRule side = corner(rules, "Back", "side_top");
        for (int i = 0; i < step.length; i++) {
            assertThat(side.moves().get(i).dx()).isCloseTo(step[i] * 25.4 / 4, within(SHARP));
        }
        assertThat(side.course()).isEqualTo(Course.WITH_CHART);
        assertThat(breaks(rules, side)).containsExactly("2", "4", "8", "12", "14", "16", "18", "20");
        assertThat(rules.count(Course.BENDS)).isZero();
    }

    /** Rosenfeld 1911: from 36 to 38 a box coat grows 1/8 in at the centre and 3/8 in at the side, four times 1/2 in in all. */
    @Test
    void aBoxCoatGrowsByAnEighthAtTheNeckAndAHalfAtTheSide() {
        String coat = """
                draft "Box coat"
                measure breast from 50 cm to 150 cm
                piece Back {
                  point nape = origin
                  point neck_pt = nape right breast / 16
                  point side_top = neck_pt right breast * 3 / 16
                  point hem_side = side_top down 50 cm
                  line neck = nape to neck_pt
                  line top = neck_pt to side_top
                  line side = side_top to hem_side
                  line hem = hem_side to (nape down 50 cm)
                  line centre = hem.end to nape
                  outline neck, top, side, hem, centre
                  allow 1 cm
                  cut 2
                }
                """;
        GradeRules rules = rules(coat, Sizes.with(Sizes.named("36", "38"), "breast", Unit.IN, 36, 38));
        assertThat(corner(rules, "Back", "neck_pt").moves().get(0).dx()).isCloseTo(25.4 / 8, within(SHARP));
        assertThat(corner(rules, "Back", "side_top").moves().get(0).dx()).isCloseTo(25.4 / 2, within(SHARP));
    }

    // ---- the three courses

    @Test
    void halfSizesMoveByHalfAndAreNoBend() {
        GradeRules rules = rules(QUARTER, Sizes.of("chest", 84, 88, 90, 92, 96, 102));
        CornerRule side = corner(rules, "Back", "side_top");
        assertThat(side.moves().stream().map(Vector::dx).toList()).containsExactly(10.0, 5.0, 5.0, 10.0, 15.0);
        assertThat(side.course()).isEqualTo(Course.WITH_CHART);
        assertThat(breaks(rules, side)).containsExactly("3", "5", "6");
    }

    @Test
    void aDraftThatIsNotLinearBendsAndTheSizeIsTold() {
        GradeRules rules = rules(at("min(chest / 4, 24 cm)"), Sizes.of("chest", 84, 88, 92, 96, 100, 104));
        CornerRule side = corner(rules, "Back", "side_top");
        assertThat(side.course()).isEqualTo(Course.BENDS);
        assertThat(breaks(rules, side)).containsExactly("5");
        assertThat(GradeWords.rule(side, rules.sizes()))
                .hasToString("bends at 5: right 1 cm from 2 on; stays where it is from 5 on");
    }

    /** Closed form: (b * b - a * a) / 400 cm. */
    @Test
    void aSquareBendsAtEverySizeWithTheRangeOfItsMoves() {
        GradeRules rules = rules(at("chest * chest / 400 cm"), Sizes.of("chest", 80, 84, 88, 92, 96, 100));
        CornerRule side = corner(rules, "Back", "side_top");
        double[] chest = {80, 84, 88, 92, 96, 100};
        for (int i = 1; i < chest.length; i++) {
            assertThat(side.move(i).orElseThrow().dx())
                    .isCloseTo((chest[i] * chest[i] - chest[i - 1] * chest[i - 1]) / 40, within(SHARP));
        }
        assertThat(breaks(rules, side)).containsExactly("3", "4", "5", "6");
        assertThat(GradeWords.rule(side, rules.sizes())).hasToString("bends at 3, 4, 5, 6: right 1.64 cm to 1.96 cm");
    }

    @Test
    void unevenStepsDoNotHideABend() {
        GradeRules rules = rules(at("chest * chest / 400 cm"), Sizes.of("chest", 80, 84, 89, 95, 102));
        assertThat(corner(rules, "Back", "side_top").course()).isEqualTo(Course.BENDS);
        assertThat(breaks(rules, corner(rules, "Back", "side_top"))).containsExactly("3", "4", "5");
    }

    /** The height grows with its own steps, which say nothing about a piece that does not ask for it. */
    @Test
    void onlyMeasuresThatThePieceRestsOnExplainItsBreaks() {
        String two =
                at("min(chest / 4, 24 cm)").replace("piece Back", "measure arm from 10 cm to 90 cm\npiece Back") + """
                piece Sleeve {
                  point crown = origin
                  point wrist = crown right arm
                  line top = crown to wrist
                  line low = wrist to (crown down 10 cm)
                  line back = low.end to crown
                  outline top, low, back
                  allow 1 cm
                  cut 2
                }
                """;
        SizeChart chart =
                Sizes.with(Sizes.of("chest", 84, 88, 92, 96, 100, 104), "arm", Unit.CM, 50, 51, 52, 53, 55, 57);
        GradeRules rules = rules(two, chart);
        assertThat(corner(rules, "Back", "side_top").course()).isEqualTo(Course.BENDS);
        assertThat(corner(rules, "Sleeve", "wrist").course()).isEqualTo(Course.WITH_CHART);
        assertThat(breaks(rules, corner(rules, "Sleeve", "wrist"))).containsExactly("5");
    }

    /** The height solved for is chest / 8 exactly; the solver is good to a millionth of a millimetre. */
    @Test
    void whatIsSolvedForIsNoBend() {
        String solved = QUARTER.replace("  point side_top = nape right chest / 4\n", """
                  unknown wide from 1 cm to 90 cm
                  point side_top = nape right wide
                  solve wide so that length(top) + length(top) = chest / 4
                """);
        GradeRules rules = rules(solved, Sizes.of("chest", 80, 84, 88, 92, 96));
        CornerRule side = corner(rules, "Back", "side_top");
        assertThat(side.course()).isEqualTo(Course.CONSTANT);
        assertThat(side.moves().get(2).dx()).isCloseTo(5, within(1e-6));
    }

    @Test
    void oneSizeHasNoRuleAndTwoSizesOneMove() {
        GradeRules one = rules(QUARTER, Sizes.of("chest", 80));
        assertThat(one.count(Course.NONE)).isEqualTo(4);
        assertThat(rules(QUARTER, Sizes.of("chest", 80, 84)).count(Course.CONSTANT))
                .isEqualTo(4);
    }

    // ---- names, missing corners, the table

    @Test
    void aCornerHasTheNameOfItsPointOrOfItsEdges() {
        assertThat(rules(QUARTER, Sizes.of("chest", 80, 84)).corners().stream()
                        .map(CornerRule::corner)
                        .toList())
                .containsExactly("side_top", "side_low", "hem/centre", "nape");
    }

    @Test
    void movesAreCountedFromTheNestingPoint() {
        GradeRules rules =
                rules(QUARTER.replace("  allow 1 cm", "  allow 1 cm\n  nest at side_top"), Sizes.of("chest", 80, 84));
        assertThat(corner(rules, "Back", "side_top").stays()).isTrue();
        assertThat(corner(rules, "Back", "nape").moves()).containsExactly(new Vector(-10, 0));
    }

    @Test
    void aPieceThatSizesLackIsToldWithTheReason() {
        String some = QUARTER.replace("piece Back {", "piece Back if chest > 85 cm {");
        Grade grade = Grade.of(Drafts.sound(some), Sizes.of("chest", 80, 84, 88, 92), Choices.none())
                .value()
                .orElseThrow();
        CornerRule side = corner(grade.rules(), "Back", "side_top");
        assertThat(side.lacks())
                .containsExactly(
                        new CornerRule.Lack(0, CornerRule.Why.LEFT_OUT),
                        new CornerRule.Lack(1, CornerRule.Why.LEFT_OUT));
        assertThat(side.move(2)).isEmpty();
        assertThat(side.moves()).containsExactly(new Vector(10, 0));
        assertThat(grade.diagnostics()).hasSize(1);
        assertThat(grade.diagnostics().get(0).toString())
                .startsWith("GRD102")
                .contains("Back is not there in size 1, 2: its condition does not hold");
        assertThat(grade.rules().csv())
                .contains("Back,side_top,1,,\nBack,side_top,2,,\nBack,side_top,3,,\nBack,side_top,4,10,0\n");
    }

    @Test
    void aPieceThatCannotBeMadeInOneSizeLeavesTheOthersGraded() {
        String fails = QUARTER.replace(
                "nape right chest / 4", "nape right sqrt((chest - 88 cm) * (88.5 cm - chest) + 100 cm * 4 cm)");
        Grade grade = Grade.of(Drafts.sound(fails), Sizes.of("chest", 84, 88, 112), Choices.none())
                .value()
                .orElseThrow();
        assertThat(corner(grade.rules(), "Back", "side_top").lacks())
                .containsExactly(new CornerRule.Lack(2, CornerRule.Why.REFUSED));
        assertThat(Drafts.codes(grade.diagnostics())).containsExactly("GRD102");
        assertThat(grade.proved()).isFalse();
    }

    @Test
    void aCornerThatSomeSizesLackIsTold() {
        String cut = """
                draft "Cut at the waist"
                measure waist_level from 10 cm to 90 cm
                piece Whole {
                  point nape = origin
                  point armpit = nape right 20 cm
                  point middle = armpit down 40 cm
                  point foot = middle down 40 cm
                  line top = nape to armpit
                  line high = armpit to middle
                  line low = middle to foot
                  line hem = foot to (nape down 80 cm)
                  line centre = hem.end to nape
                  guide cut_line = across from (nape down waist_level)
                  outline top, high, low, hem, centre
                  allow 1 cm
                  cut 2
                }
                piece Lower taken from Whole below cut_line { cut 2 }
                """;
        Grade grade = Grade.of(Drafts.sound(cut), Sizes.of("waist_level", 36, 38, 42, 44), Choices.none())
                .value()
                .orElseThrow();
        CornerRule middle = corner(grade.rules(), "Lower", "middle");
        assertThat(middle.lacks())
                .containsExactly(
                        new CornerRule.Lack(2, CornerRule.Why.OTHER_CORNERS),
                        new CornerRule.Lack(3, CornerRule.Why.OTHER_CORNERS));
        assertThat(grade.diagnostics())
                .anySatisfy(d -> assertThat(d.toString()).startsWith("GRD103").contains("`middle` in size 3, 4"));
        assertThat(corner(grade.rules(), "Whole", "middle").stays()).isTrue();
    }

    @Test
    void theTableHasARowForEachCornerAndSizeAndNoMinusZero() {
        SizeChart chart = Sizes.with(Sizes.named("small, short", "36"), "chest", Unit.CM, 80, 84.1);
        assertThat(rules(QUARTER, chart).csv()).isEqualTo("""
                        piece,corner,size,right_mm,down_mm
                        Back,side_top,"small, short",0,0
                        Back,side_top,36,10.25,0
                        Back,side_low,"small, short",0,0
                        Back,side_low,36,10.25,6.833333
                        Back,hem/centre,"small, short",0,0
                        Back,hem/centre,36,0,6.833333
                        Back,nape,"small, short",0,0
                        Back,nape,36,0,0
                        """);
        GradeRules turned = rules(QUARTER.replace("nape right", "nape left"), Sizes.of("chest", 80, 80.0000000001, 80));
        assertThat(turned.csv()).doesNotContain("-0,").doesNotContain("-0\n").doesNotContain("E-");
    }

    @Test
    void theApiHasAllDigits() {
        CornerRule low = corner(rules(QUARTER, Sizes.of("chest", 80, 84)), "Back", "side_low");
        assertThat(low.move(1).orElseThrow().dy()).isEqualTo((840.0 / 6 + 200) - (800.0 / 6 + 200));
    }

    /** Test idea of the trade notes: up n sizes and down again gives the base exactly. */
    @Test
    void upAndDownAgainIsTheBaseToTheLastBit() {
        GradeRules rules = rules(QUARTER, Sizes.of("chest", 88.3, 92.7, 96.1, 92.7, 88.3));
        for (CornerRule rule : rules.corners()) {
            assertThat(rule.places().get(4)).isEqualTo(rule.places().get(0));
            assertThat(rule.places().get(3)).isEqualTo(rule.places().get(1));
            Vector up = rule.move(2).orElseThrow();
            assertThat(rule.move(3)).isEqualTo(Optional.of(up.opposite()));
        }
    }

    @Test
    void aChartWithoutSizesIsToldAndAStopIsToldToo() {
        Outcome<Grade> none = Grade.of(Drafts.sound(QUARTER), new SizeChart("empty", List.of()), Choices.none());
        assertThat(none.value()).isEmpty();
        assertThat(Drafts.codes(none.diagnostics())).containsExactly("GRD106");
        int[] asked = {0};
        Outcome<Grade> stopped = Grade.of(
                Drafts.sound(QUARTER),
                Sizes.of("chest", 80, 84, 88, 92),
                Choices.none(),
                Runnable::run,
                () -> asked[0]++ < 2);
        assertThat(stopped.value().orElseThrow().rules().sizes()).containsExactly("1", "2");
        assertThat(stopped.diagnostics()).hasSize(1);
        assertThat(stopped.diagnostics().get(0).toString())
                .startsWith("GRD105")
                .contains("2 of 4 sizes are done, 2 is the last");
    }

    @Test
    void aRuleThatStandsInForSomeSizesIsToldWithTheSizesAndTheMeasure() {
        String estimates = QUARTER.replace(
                        "to 400 cm", "to 400 cm\nmeasure length_of from 10 cm to 90 cm else chest / 2")
                .replace("down chest / 6 + 20 cm", "down length_of");
        SizeChart chart = Sizes.with(Sizes.of("chest", 80, 84, 88), "length_of", Unit.CM, 40, Double.NaN, Double.NaN);
        Grade grade =
                Grade.of(Drafts.sound(estimates), chart, Choices.none()).value().orElseThrow();
        assertThat(Drafts.codes(grade.diagnostics())).containsExactly("GRD104");
        assertThat(grade.diagnostics().get(0).message())
                .isEqualTo("The chart has no length_of for size 2, 3; the draft's rule estimates it: 42 cm, 44 cm.");
    }

    @Test
    void ranksOfSizesDoNotMatter() {
        List<Integer> order = List.of(3, 0, 4, 1, 2);
        double[] chest = {80.1, 84.3, 88.2, 92.9, 96.4};
        GradeRules plain = rules(QUARTER, Sizes.of("chest", chest));
        GradeRules shuffled = rules(
                QUARTER,
                Sizes.of(
                        "chest",
                        IntStream.range(0, 5)
                                .mapToDouble(i -> chest[order.get(i)])
                                .toArray()));
        for (int c = 0; c < plain.corners().size(); c++) {
            for (int i = 0; i < 5; i++) {
                assertThat(shuffled.corners().get(c).places().get(i))
                        .isEqualTo(plain.corners().get(c).places().get(order.get(i)));
            }
        }
    }
}
