package org.gusset.core.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.junit.jupiter.api.Test;

class FillingInTest {
    /** Misses 6 to 20 of the pattern industry of the United States, about 1967 to the 1990s, in inches as centimetres. */
    private static final SizeChart MISSES = ChartFaultsTest.chart(
            "bust 30.5 31.5 32.5 34 36 38 40 42",
            "waist 23 24 25 26.5 28 30 32 34",
            "hip 32.5 33.5 34.5 36 38 40 42 44",
            "back_length 15.5 15.75 16 16.25 16.5 16.75 17 17.25");

    private static Measurements body(String measure, double cm) {
        return Measurements.of("Tansy").with(measure, Quantity.length(cm * 10));
    }

    private static double cm(Measurements measurements, String name) {
        return measurements.entry(name).orElseThrow().quantity().value() / 10;
    }

    private static FilledIn filled(FillingIn filling, Measurements body) {
        Outcome<FilledIn> outcome = filling.fill(body);
        assertThat(outcome.diagnostics()).isEmpty();
        return outcome.value().orElseThrow();
    }

    private static Diagnostic refused(FillingIn filling, Measurements body) {
        Outcome<FilledIn> outcome = filling.fill(body);
        assertThat(outcome.value()).isEmpty();
        assertThat(outcome.diagnostics()).hasSize(1);
        return outcome.diagnostics().get(0);
    }

    @Test
    void aShareOfTheWayIsAShareOfEachMeasure() {
        Measurements between = MISSES.between("D", "E", 0.25).orThrow();
        // 34 to 36, 26.5 to 28, 36 to 38, 16.25 to 16.5: a quarter of each step.
        assertThat(cm(between, "bust")).isCloseTo(34.5, Offset.offset(1e-12));
        assertThat(cm(between, "waist")).isCloseTo(26.875, Offset.offset(1e-12));
        assertThat(cm(between, "hip")).isCloseTo(36.5, Offset.offset(1e-12));
        assertThat(cm(between, "back_length")).isCloseTo(16.3125, Offset.offset(1e-12));
        assertThat(between.body()).isEqualTo("between D and E");
        assertThat(between.entries().values())
                .allSatisfy(e -> assertThat(e.place()).isEqualTo(Place.named("between D and E")));
    }

    @Test
    void atTheEndsAreTheSizesThemselves() {
        SizeChart chart = ChartFaultsTest.chart("chest 0.1 0.7", "waist 66.6 -");
        assertThat(chart.between("A", "B", 0).orThrow()).isSameAs(chart.sizes().get(0));
        assertThat(chart.between("A", "B", 1).orThrow()).isSameAs(chart.sizes().get(1));
    }

    @Test
    void whatOneOfTheTwoLacksIsLeftOutAndTold() {
        SizeChart chart = ChartFaultsTest.chart("chest 84 88", "neck 35 -", "head - 56", "slope 20deg 3");
        Outcome<Measurements> between = chart.between("A", "B", 0.5);
        assertThat(between.value().orElseThrow().entries()).containsOnlyKeys("chest");
        assertThat(between.diagnostics()).extracting(Diagnostic::code).containsExactly(ChartCode.NOT_IN_BOTH);
        assertThat(between.diagnostics())
                .extracting(Diagnostic::message)
                .containsExactly("Left out between A and B, since one of the two lacks it: neck, slope, head.");
    }

    @Test
    void aSizeThatIsNotThereAndAShareThatIsNoneAreTold() {
        assertThat(MISSES.between("D", "Z", 0.5).diagnostics())
                .extracting(Diagnostic::code)
                .containsExactly(ChartCode.NO_SUCH_SIZE);
        for (double share : new double[] {-0.1, 1.1, Double.NaN}) {
            assertThat(MISSES.between("D", "E", share).diagnostics())
                    .extracting(Diagnostic::code)
                    .containsExactly(ChartCode.SHARE_OUTSIDE);
        }
    }

    @Test
    void herFirstMeasureOfTheChartLeads() {
        FilledIn tansy = filled(FillingIn.from(MISSES), body("bust", 35).with("wrist", Quantity.length(150)));
        assertThat(cm(tansy.measurements(), "waist")).isCloseTo(27.25, Offset.offset(1e-12));
        assertThat(cm(tansy.measurements(), "hip")).isCloseTo(37, Offset.offset(1e-12));
        assertThat(cm(tansy.measurements(), "bust")).isEqualTo(35);
        assertThat(cm(tansy.measurements(), "wrist")).isEqualTo(15);
        assertThat(tansy.measurements().body()).isEqualTo("Tansy");
        assertThat(tansy.measurements().entry("waist").orElseThrow().place()).isEqualTo(Place.named("between D and E"));
        assertThat(tansy.taken()).extracting(FilledIn.Taken::measure).containsExactly("waist", "hip", "back_length");
        assertThat(tansy.taken("back length").orElseThrow())
                .isEqualTo(new FilledIn.Taken("back_length", "bust", "D", "E", 0.5));
        assertThat(tansy.taken("bust")).isEmpty();
    }

    @Test
    void onASizeItsFiguresComeBackToTheBit() {
        for (Measurements size : MISSES.sizes()) {
            FilledIn filled = filled(
                    FillingIn.from(MISSES),
                    body("bust", 1)
                            .with("bust", size.entry("bust").orElseThrow().quantity()));
            for (String measure : size.entries().keySet()) {
                assertThat(filled.measurements().entry(measure).orElseThrow().quantity())
                        .isEqualTo(size.entry(measure).orElseThrow().quantity());
            }
            assertThat(filled.taken()).extracting(FilledIn.Taken::words).containsOnly("as " + size.body());
        }
    }

    @Test
    void anotherMeasureLeadsIfToldAndOneMeasureMayFollowItsOwn() {
        Measurements hers = body("bust", 35).with("hip", Quantity.length(410));
        FilledIn byHip = filled(FillingIn.from(MISSES).ledBy("Hip"), hers);
        assertThat(byHip.taken("waist").orElseThrow().words()).isEqualTo("between F and G");
        assertThat(cm(byHip.measurements(), "waist")).isCloseTo(31, Offset.offset(1e-12));
        FilledIn mixed = filled(FillingIn.from(MISSES).withLead("waist", "hip"), hers);
        assertThat(mixed.taken("waist").orElseThrow().words()).isEqualTo("between F and G");
        assertThat(mixed.taken("back_length").orElseThrow().words()).isEqualTo("between D and E");
        // She has no hip that the waist could follow.
        FilledIn without = filled(FillingIn.from(MISSES).withLead("waist", "hip"), body("bust", 35));
        assertThat(without.taken("waist").orElseThrow()).isEqualTo(new FilledIn.Taken("waist", "bust", "D", "E", 0.5));
    }

    @Test
    void beyondTheChartIsRefusedWithItsRangeUnlessTheStepIsCarriedOn() {
        Diagnostic refused = refused(FillingIn.from(MISSES), body("bust", 43));
        assertThat(refused.code()).isEqualTo(ChartCode.BEYOND_CHART);
        assertThat(refused.message())
                .isEqualTo(
                        "The bust of Tansy, 43 cm, lies beyond stock: its sizes run from 30.5 cm in A to 42 cm in H.");
        FillingIn carried = FillingIn.from(MISSES).carriedOn();
        FilledIn above = filled(carried, body("bust", 43));
        // Half of the last step, 40 to 42, 32 to 34, 42 to 44, 17 to 17.25.
        assertThat(cm(above.measurements(), "waist")).isCloseTo(35, Offset.offset(1e-12));
        assertThat(cm(above.measurements(), "back_length")).isCloseTo(17.375, Offset.offset(1e-12));
        assertThat(above.taken("waist").orElseThrow().words()).isEqualTo("beyond H");
        FilledIn below = filled(carried, body("bust", 30));
        // Half of the first step down, 31.5 to 30.5 and 24 to 23.
        assertThat(cm(below.measurements(), "waist")).isCloseTo(22.5, Offset.offset(1e-12));
        assertThat(below.taken("waist").orElseThrow().words()).isEqualTo("beyond A");
    }

    @Test
    void oneSizeCanBeCarriedNowhere() {
        SizeChart one = ChartFaultsTest.chart("chest 84", "waist 66");
        assertThat(refused(FillingIn.from(one).carriedOn(), body("chest", 85)).code())
                .isEqualTo(ChartCode.BEYOND_CHART);
        assertThat(filled(FillingIn.from(one), body("chest", 84))
                        .taken("waist")
                        .orElseThrow()
                        .words())
                .isEqualTo("as A");
    }

    @Test
    void aBodyWithNothingInCommonAndALeadThatIsNotHersAreTold() {
        assertThat(refused(FillingIn.from(MISSES), body("wrist", 15)).code()).isEqualTo(ChartCode.NOTHING_IN_COMMON);
        assertThat(refused(FillingIn.from(MISSES).ledBy("hip"), body("bust", 35))
                        .message())
                .isEqualTo("The hip cannot lead for Tansy: Tansy has none.");
        assertThat(refused(FillingIn.from(MISSES).ledBy("wrist"), body("wrist", 15))
                        .message())
                .isEqualTo("The wrist cannot lead for Tansy: stock has none.");
    }

    @Test
    void aLeadOfOneMeasureThatTheChartLacksIsTold() {
        Measurements hers = body("bust", 35).with("wrist", Quantity.length(150));
        assertThat(refused(FillingIn.from(MISSES).withLead("waist", "wrist"), hers)
                        .code())
                .isEqualTo(ChartCode.NO_LEAD);
    }

    @Test
    void aChartFromLargeToSmallIsFilledInAlike() {
        SizeChart reversed = ChartFaultsTest.chart("chest 96 92 88", "waist 78 74 70");
        assertThat(cm(filled(FillingIn.from(reversed), body("chest", 91)).measurements(), "waist"))
                .isCloseTo(73, Offset.offset(1e-12));
    }

    /** ASTM D5585-11e1, table 1: the head is 21.25 in in sizes 00 and 0, whose bust is 31.125 and 31.75 in. */
    @Test
    void aLeadThatStandsStillHasTwoPlacesAndTheFirstIsTakenAndTold() {
        SizeChart chart = ChartFaultsTest.chart("head 21.25 21.25 21.5", "bust 31.125 31.75 33");
        Outcome<FilledIn> outcome = FillingIn.from(chart).fill(body("head", 21.25));
        assertThat(outcome.diagnostics())
                .extracting(Diagnostic::message)
                .containsExactly(
                        "The head of Tansy, 21.25 cm, has more than one place in stock: as A, as B; the first is taken.");
        assertThat(cm(outcome.value().orElseThrow().measurements(), "bust")).isEqualTo(31.125);
    }

    @Test
    void aBlankCellIsBridgedAndOneAtTheEndLeavesTheMeasureBlank() {
        SizeChart chart = ChartFaultsTest.chart("chest 84 88 92 96", "neck 35 - 37 -", "head 55 55.5 56 56.5");
        FilledIn bridged = filled(FillingIn.from(chart), body("chest", 86));
        assertThat(cm(bridged.measurements(), "neck")).isCloseTo(35.5, Offset.offset(1e-12));
        assertThat(bridged.taken("neck").orElseThrow().words()).isEqualTo("between A and C");
        Outcome<FilledIn> end = FillingIn.from(chart).fill(body("chest", 95));
        assertThat(end.diagnostics())
                .extracting(Diagnostic::message)
                .containsExactly("The neck of Tansy stays blank: stock does not tell it for a chest of 95 cm.");
        assertThat(end.value().orElseThrow().measurements().entries()).containsOnlyKeys("chest", "head");
    }

    @Test
    void aFilledInBodyIsItsOwnAndTheChartStaysAsItWas() {
        List<Measurements> before = MISSES.sizes();
        Measurements hers = body("bust", 35);
        filled(FillingIn.from(MISSES), hers);
        assertThat(hers.entries()).hasSize(1);
        assertThat(MISSES.sizes()).isEqualTo(before);
    }
}
