package org.gusset.core.stress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.gusset.core.stress.Bare.input;
import static org.gusset.core.stress.Bare.minus;
import static org.gusset.core.stress.Bare.mm;
import static org.gusset.core.stress.Bare.number;
import static org.gusset.core.stress.Bare.plus;
import static org.gusset.core.stress.Bare.times;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.assertj.core.data.Offset;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.NumberFunction;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.graph.Handle;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.junit.jupiter.api.Test;

/** The search against drafts whose failing bodies are known in closed form. */
class StressTest {
    /** Two thousand evenly spread bodies tell a share to two in a hundred. */
    private static final Offset<Double> SHARE = Offset.offset(0.02);

    private static final Offset<Double> MM = Offset.offset(1e-9);

    private static double mmOf(Body body, String name) {
        return body.measurements().entry(name).orElseThrow().quantity().value();
    }

    private static Tightening.Bound bound(Failure failure) {
        return (Tightening.Bound) failure.cure().orElseThrow().change();
    }

    @Test
    void aCheckThatFailsAtTheTopOfARangeIsFoundWithItsShareItsWorstBodyAndTheEndThatCuresIt() {
        Bare bare = new Bare();
        Handle<Double> a = bare.measure("a", 100, 200);
        StressReport report = bare.atMost("a <= 18 cm", input(0), mm(180), a).stressed(2000);
        // Uniform from 10 to 20 cm: a fifth lies above 18 cm.
        assertThat(1 - report.spread().share()).isCloseTo(0.2, SHARE);
        assertThat(report.corners()).isEqualTo(new Tally(2, 2, 1, 0));
        WorstFigure worst = report.worst().get(0);
        assertThat(mmOf(worst.body(), "a")).isEqualTo(200);
        // 18 - 20 cm, and the tolerance of comparing lengths.
        assertThat(worst.margin()).isCloseTo(-20 + 1e-3, MM);
        assertThat(report.failures()).hasSize(1);
        Failure failure = report.failures().get(0);
        assertThat(failure.code()).isEqualTo("SEW002");
        assertThat(failure.subject()).isEqualTo("a <= 18 cm");
        assertThat(mmOf(failure.worst(), "a")).isEqualTo(200);
        Tightening.Bound cure = bound(failure);
        assertThat(cure.variable()).isEqualTo("a");
        assertThat(cure.end()).isEqualTo(Tightening.End.MOST);
        assertThat(cure.form()).isEqualTo(Tightening.Form.AMOUNT);
        assertThat(cure.from()).isEqualTo(Quantity.length(200));
        assertThat(cure.to()).isEqualTo(Quantity.length(180));
        assertThat(failure.cure().orElseThrow().lost()).isCloseTo(0.2, SHARE);
        assertThat(report.passes()).isFalse();
    }

    @Test
    void aDraftThatHoldsForAllBodiesPasses() {
        Bare bare = new Bare();
        Handle<Double> a = bare.measure("a", 100, 200);
        StressReport report = bare.atMost("a <= 20 cm", input(0), mm(200), a).stressed(500);
        assertThat(report.passes()).isTrue();
        assertThat(report.spread().share()).isEqualTo(1);
        assertThat(report.worst().get(0).margin()).isCloseTo(1e-3, MM);
    }

    @Test
    void anEndThatRestsOnAnotherMeasureIsWorkedOutForEachBody() {
        Bare bare = new Bare();
        Handle<Double> waist = bare.measure("waist", 460, 1500);
        Handle<Double> hip = bare.measure("hip", plus(input(1), mm(100)), plus(input(1), mm(600)), waist);
        StressReport report = bare.atMost("hip is 20 cm more", plus(input(0), mm(200)), input(1), waist, hip)
                .stressed(2000);
        assertThat(report.all().legal()).isEqualTo(report.all().tried());
        assertThat(report.failures()).hasSize(1);
        // hip - waist runs evenly from 10 to 60 cm: a fifth of it lies below 20 cm.
        assertThat(1 - report.spread().share()).isCloseTo(0.2, SHARE);
        Body worst = report.worst().get(0).body();
        assertThat(mmOf(worst, "hip") - mmOf(worst, "waist")).isCloseTo(100, MM);
        Tightening.Bound cure = bound(report.failures().get(0));
        assertThat(cure.variable()).isEqualTo("hip");
        assertThat(cure.end()).isEqualTo(Tightening.End.LEAST);
        assertThat(cure.form()).isEqualTo(Tightening.Form.MORE_THAN);
        assertThat(cure.other()).isEqualTo("waist");
        assertThat(cure.to().value()).isCloseTo(200, Offset.offset(0.11));
        assertThat(report.failures().get(0).cure().orElseThrow().lost()).isCloseTo(0.2, SHARE);
    }

    @Test
    void aRatioIsOfferedWhereItKeepsMoreBodiesThanAnAmount() {
        Bare bare = new Bare();
        Handle<Double> chest = bare.measure("chest", 600, 1700);
        Handle<Double> waist = bare.measure("waist", 460, 1500);
        StressReport report =
                bare.atMost("waist <= chest", input(1), input(0), chest, waist).stressed(2000);
        Tightening.Bound cure = bound(report.failures().get(0));
        assertThat(cure.form()).isNotEqualTo(Tightening.Form.AMOUNT);
        assertThat(cure.other()).isEqualTo("chest");
        // Either way it says: no larger than the chest.
        if (cure.form() == Tightening.Form.TIMES) {
            assertThat(cure.to().value()).isCloseTo(1, Offset.offset(1e-6));
        } else {
            assertThat(cure.to().value()).isCloseTo(0, Offset.offset(1e-2));
        }
    }

    @Test
    void whereARangeHasNoRoomThereIsNoBody() {
        Bare bare = new Bare();
        Handle<Double> a = bare.measure("a", 100, 200);
        bare.measure("b", input(1), mm(150), a);
        StressReport report = bare.stressed(2000);
        // b runs from a to 15 cm, and half of all a lie above.
        assertThat(report.spread().legal() / (double) report.spread().tried()).isCloseTo(0.5, SHARE);
        assertThat(report.noRoom()).containsOnlyKeys("b");
        assertThat(report.noRoom().get("b"))
                .isEqualTo(report.all().tried() - report.all().legal());
        assertThat(report.passes()).isTrue();
    }

    @Test
    void aMeasureWhoseRangeRestsOnAChoiceComesAfterIt() {
        Bare bare = new Bare();
        Handle<Double> drop = bare.amount("drop", Dimension.LENGTH, 20, mm(10), mm(40));
        bare.measure("depth", plus(input(1), mm(100)), mm(300), drop);
        StressReport report = bare.stressed(500);
        assertThat(report.variables().stream().map(Variable::name)).containsExactly("drop", "depth");
        assertThat(report.passes()).isTrue();
        assertThat(report.all().legal()).isEqualTo(report.all().tried());
    }

    @Test
    void theSameSeedGivesTheSameReportOnOneThreadAndOnTwo() {
        Bare bare = new Bare();
        Handle<Double> waist = bare.measure("waist", 460, 1500);
        Handle<Double> hip = bare.measure("hip", plus(input(1), mm(100)), plus(input(1), mm(600)), waist);
        Handle<Double> depth = bare.estimated("depth", 140, 280, 206);
        bare.atMost("depth", times(input(0), number(5)), input(1), depth, waist);
        bare.atMost("hip", input(0), times(input(1), number(1.4)), hip, waist);
        Draft draft = bare.draft.build();
        Settings settings = Settings.defaults().withBodies(1500).withSeed(7);
        List<Measurements> people = List.of(
                Measurements.of("Ottilie").with("waist", Quantity.length(700)).with("hip", Quantity.length(1200)),
                Measurements.of("Barnaby").with("waist", Quantity.length(1100)).with("hip", Quantity.length(1250)));
        StressReport alone = Stress.of(draft, people, settings);
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            assertThat(Stress.of(draft, people, settings.withExecutor(two))).isEqualTo(alone);
        } finally {
            two.shutdownNow();
        }
        assertThat(alone.failures()).hasSize(2);
        assertThat(Stress.of(draft, people, settings.withSeed(8))).isNotEqualTo(alone);
    }

    @Test
    void anExceptionInsideAnOperationIsCountedAndNotThrown() {
        Bare bare = new Bare();
        Handle<Double> a = bare.measure("a", 100, 200);
        StressReport report = bare.check(
                        "breaks",
                        in -> {
                            throw new IllegalStateException(in.number(0) > 150 ? "on purpose" : "always");
                        },
                        a)
                .stressed(300);
        assertThat(report.exceptions()).isEqualTo(report.all().tried()).isEqualTo(300);
        Failure failure = report.failures().get(0);
        assertThat(failure.kind()).isEqualTo(Failure.Kind.EXCEPTION);
        assertThat(failure.code()).isEqualTo("IllegalStateException");
        assertThat(failure.words()).isIn("on purpose", "always");
        assertThat(mmOf(failure.first(), "a")).isEqualTo(100);
        assertThat(report.passes()).isFalse();
    }

    @Test
    void anExceptionInWhatARangeRestsOnIsCountedToo() {
        Bare bare = new Bare();
        Handle<Double> a = bare.measure("a", 100, 200);
        Handle<Double> broken = bare.draft
                .graph()
                .define(
                        "broken",
                        Double.class,
                        in -> {
                            throw new ArithmeticException("" + in.number(0));
                        },
                        org.gusset.core.diagnostic.Place.named("broken"),
                        List.of(a));
        bare.measure("b", input(1), mm(300), broken);
        StressReport report = bare.stressed(100);
        assertThat(report.exceptions()).isEqualTo(100);
        assertThat(report.failures()).hasSize(1);
        assertThat(report.failures().get(0).code()).isEqualTo("ArithmeticException");
    }

    @Test
    void aWordThatAlwaysFailsIsToBeLeftOut() {
        Bare bare = new Bare();
        Handle<String> shape = bare.word("shape", "vee", "round", "square");
        bare.measure("a", 100, 200);
        StressReport report = bare.check("not round", new Condition.Not(new Condition.WordIs(0, "round")), shape)
                .stressed(900);
        assertThat(report.corners().tried()).isEqualTo(6);
        Cure cure = report.failures().get(0).cure().orElseThrow();
        assertThat(cure.change()).isEqualTo(new Tightening.Without("shape", "round"));
        assertThat(cure.lost()).isCloseTo(1 / 3.0, SHARE);
    }

    @Test
    void whereEveryBodyFailsThereIsNoCure() {
        Bare bare = new Bare();
        Handle<Double> a = bare.measure("a", 100, 200);
        StressReport report = bare.atMost("never", input(0), mm(50), a).stressed(200);
        assertThat(report.all().passed()).isZero();
        assertThat(report.failures().get(0).cure()).isEmpty();
    }

    @Test
    void theSearchFindsAFailureThatEvenlySpreadBodiesMiss() {
        Bare bare = new Bare();
        Handle<Double> a = bare.measure("a", 0, 1000);
        Handle<Double> b = bare.measure("b", 0, 1000);
        Handle<Double> c = bare.measure("c", 0, 1000);
        // An octahedron of 4 mm round one point: 85 cubic mm out of a cubic metre.
        Formula far = plus(plus(off(0, 313.7), off(1, 641.2)), off(2, 777.1));
        StressReport report = bare.atMost("far off", mm(4), far, a, b, c).stressed(1000);
        assertThat(report.spread().passed()).isEqualTo(report.spread().legal());
        assertThat(report.worst().get(0).margin()).isNegative();
        assertThat(report.failures()).hasSize(1);
        assertThat(report.failures().get(0).spread()).isZero();
        assertThat(mmOf(report.worst().get(0).body(), "b")).isCloseTo(641.2, Offset.offset(4.0));
    }

    private static Formula off(int input, double from) {
        return new Formula.Applied(NumberFunction.ABS, List.of(minus(input(input), mm(from))));
    }

    @Test
    void aQuarterOfTheBodiesLacksAMeasureThatARuleEstimates() {
        Bare bare = new Bare();
        bare.estimated("depth", 140, 280, 206);
        Space space = new Space(bare.draft.build(), Choices.none());
        Points points = new Points(space.axes(), 3);
        int lacking = 0;
        for (int i = 0; i < 4000; i++) {
            lacking += Double.isNaN(points.spread(i)[0]) ? 1 : 0;
        }
        assertThat(lacking / 4000.0).isCloseTo(0.25, SHARE);
    }

    @Test
    void aRuleThatLeavesItsOwnRangeFailsForBodiesThatLackTheMeasure() {
        Bare bare = new Bare();
        bare.estimated("depth", 140, 280, 300);
        StressReport report = bare.stressed(1000);
        assertThat(1 - report.spread().share()).isCloseTo(0.25, SHARE);
        assertThat(report.failures().get(0).code()).isEqualTo("MEA112");
        // No range binds a body that lacks the measure.
        assertThat(report.failures().get(0).cure()).isEmpty();
    }

    @Test
    void countsStayWhole() {
        Bare bare = new Bare();
        Handle<Double> gores = bare.amount("gores", Dimension.NUMBER, 6, number(4), number(12));
        Set<Double> met = java.util.Collections.synchronizedSet(new java.util.TreeSet<>());
        bare.check(
                "seen",
                in -> {
                    met.add(in.number(0));
                    return new org.gusset.core.check.Finding(
                            "seen",
                            org.gusset.core.check.Finding.Verdict.PASSED,
                            org.gusset.core.diagnostic.Phrase.of("seen", "seen"),
                            org.gusset.core.diagnostic.Place.nowhere(),
                            java.util.Optional.empty());
                },
                gores);
        bare.stressed(500);
        assertThat(met).containsExactly(4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0, 12.0);
    }

    @Test
    void choicesThatAreFixedAreNotVaried() {
        Bare bare = new Bare();
        Handle<Double> ease = bare.amount("ease", Dimension.LENGTH, 50, mm(0), mm(100));
        bare.atMost("ease", input(0), mm(60), ease);
        Draft draft = bare.draft.build();
        Settings settings = Settings.defaults().withBodies(300);
        StressReport at60 = Stress.of(draft, settings.withFixed(Choices.none().with("ease", Quantity.length(60))));
        assertThat(at60.variables()).isEmpty();
        assertThat(at60.passes()).isTrue();
        assertThat(Stress.of(draft, settings).passes()).isFalse();
    }

    @Test
    void aMeasureWithoutRangeAndRuleIsTold() {
        Bare bare = new Bare();
        bare.withoutRange("a");
        StressReport report = bare.stressed(300);
        assertThat(report.withoutRange()).containsExactly("a");
        assertThat(report.all().tried()).isZero();
        assertThat(report.passes()).isFalse();
    }

    @Test
    void peopleAreTakenPassOrFailOrLieOutside() {
        Bare bare = new Bare();
        Handle<Double> a = bare.measure("a", 100, 200);
        bare.atMost("a <= 18 cm", input(0), mm(180), a);
        List<Measurements> people = new ArrayList<>();
        double[] lengths = {150, 190, 99, 201, 170, 250};
        for (double length : lengths) {
            people.add(Measurements.of("P" + length).with("a", Quantity.length(length)));
        }
        people.add(Measurements.of("nothing"));
        StressReport report =
                Stress.of(bare.draft.build(), people, Settings.defaults().withBodies(0));
        PeopleReport of = report.people().orElseThrow();
        assertThat(of.tally()).isEqualTo(new Tally(7, 3, 2, 0));
        assertThat(of.outside())
                .contains(
                        new PeopleReport.Outside("a", PeopleReport.Why.TOO_SMALL, 1, "P99.0"),
                        new PeopleReport.Outside("a", PeopleReport.Why.TOO_LARGE, 2, "P201.0"),
                        new PeopleReport.Outside("a", PeopleReport.Why.MISSING, 1, "nothing"));
        assertThat(of.failures()).hasSize(1);
        assertThat(of.failures().get(0).worst().measurements().body()).isEqualTo("P190.0");
        assertThat(of.failures().get(0).bodies()).isEqualTo(1);
    }

    @Test
    void itStopsWhenToldAndSaysSo() {
        Bare bare = new Bare();
        Handle<Double> a = bare.measure("a", 100, 200);
        bare.atMost("a <= 18 cm", input(0), mm(180), a);
        AtomicInteger asked = new AtomicInteger();
        StressReport report =
                Stress.of(bare.draft.build(), Settings.defaults().withKeepGoing(() -> asked.incrementAndGet() <= 100));
        assertThat(report.stoppedEarly()).isTrue();
        assertThat(report.all().tried()).isBetween(50, 100);
    }

    @Test
    void progressIsToldForEachStageUpToItsEnd() {
        Bare bare = new Bare();
        Handle<Double> a = bare.measure("a", 100, 200);
        bare.atMost("a <= 18 cm", input(0), mm(180), a);
        Set<Settings.Stage> ended = EnumSet.noneOf(Settings.Stage.class);
        Stress.of(bare.draft.build(), Settings.defaults().withProgress((stage, done, all) -> {
            assertThat(done).isBetween(1, all);
            if (done == all) {
                ended.add(stage);
            }
        }));
        assertThat(ended)
                .containsExactlyInAnyOrder(
                        Settings.Stage.CORNERS, Settings.Stage.SPREAD, Settings.Stage.SEARCH, Settings.Stage.CURES);
    }

    @Test
    void roundNumbersAreChosenBetweenWhatFailsAndWhatHolds() {
        assertThat(Roundest.below(180.2, 179.9)).isEqualTo(180);
        assertThat(Roundest.below(180, 150)).isEqualTo(150);
        assertThat(Roundest.below(180, 179.9)).isEqualTo(179.9);
        assertThat(Roundest.below(0.84, 0.83)).isEqualTo(0.83);
        assertThat(Roundest.above(179.9, 180.2)).isEqualTo(180);
        assertThat(Roundest.above(-0.4, 0.3)).isEqualTo(0);
    }
}
