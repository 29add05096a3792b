package org.gusset.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.ChartCode;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.SizeChart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SizeFinderTest {
    /** EN 13402-3 (2004), women, cm, from memory. */
    private static final SizeChart WOMEN = chart(
            "bust 76 80 84 88 92 96 100 104 110 116",
            "waist 60 64 68 72 76 80 84 88 94 100",
            "hip 84 88 92 96 100 104 108 112 117 122");

    private static SizeChart chart(String... rows) {
        List<Measurements> sizes = new ArrayList<>();
        String[] names = rows[0].split(" ", -1);
        for (int i = 1; i < names.length; i++) {
            sizes.add(Measurements.of(names[i]));
        }
        for (String row : rows) {
            String[] cells = row.split(" ", -1);
            for (int i = 1; i < cells.length; i++) {
                if (!cells[i].equals("-")) {
                    sizes.set(i - 1, sizes.get(i - 1).with(cells[0], cm(cells[i])));
                }
            }
        }
        return new SizeChart("women", sizes);
    }

    private static Quantity cm(String text) {
        return Quantity.length(Double.parseDouble(text) * 10);
    }

    private static Measurements body(String... measures) {
        Measurements body = Measurements.of("Tansy");
        for (String measure : measures) {
            String[] parts = measure.split(" ", -1);
            body = body.with(parts[0], cm(parts[1]), Place.named("her " + parts[0]));
        }
        return body;
    }

    private static SizeChoice choice(SizeFinder finder, Measurements body) {
        return finder.find(body).value().orElseThrow();
    }

    private static String best(String... measures) {
        return choice(SizeFinder.of(WOMEN), body(measures)).best().size().body();
    }

    /** Each step covers half of it on either side: 88 covers 86 to 90, 104 covers 102 to 107 and 110 covers 107 to 113 (EN 13402-3). */
    @ParameterizedTest
    @CsvSource({
        "86, 88",
        "88, 88",
        "89.9, 88",
        "90, 92",
        "90.1, 92",
        "102, 104",
        "106.9, 104",
        "107, 110",
        "112.9, 110",
        "76, 76",
        "74.5, 76",
        "118.9, 116"
    })
    void aSizeCoversHalfAStepAndMidwayTheLargerIsTaken(String bust, String size) {
        assertThat(best("bust " + bust)).isEqualTo(size);
    }

    @Test
    void midwayInInchesTheLargerIsTakenToo() {
        SizeChart misses = new SizeChart(
                "misses",
                List.of(
                        Measurements.of("12").with("bust", Quantity.length(34 * 25.4)),
                        Measurements.of("14").with("bust", Quantity.length(36 * 25.4))));
        Measurements midway = Measurements.of("Tansy").with("bust", Quantity.length(889));
        assertThat(choice(SizeFinder.of(misses), midway).best().size().body()).isEqualTo("14");
    }

    @Test
    void whatIsTooSmallCannotBeWornSoTheLargerOfTwoIsTakenAndBothAreTold() {
        Outcome<SizeChoice> outcome = SizeFinder.of(WOMEN).find(body("bust 88", "waist 72", "hip 104"));
        SizeChoice choice = outcome.value().orElseThrow();
        assertThat(choice.best().size().body()).isEqualTo("96");
        assertThat(choice.best().canBeWorn()).isTrue();
        assertThat(choice.own())
                .containsExactly(
                        java.util.Map.entry("bust", "88"),
                        java.util.Map.entry("waist", "88"),
                        java.util.Map.entry("hip", "96"));
        assertThat(choice.split()).isTrue();
        assertThat(outcome.diagnostics())
                .extracting(Diagnostic::message)
                .containsExactly("The measures of Tansy are those of different sizes: bust, waist 88; hip 96.");
        assertThat(outcome.diagnostics().get(0).isError()).isFalse();
        MeasureFit bust = choice.best().measure("bust").orElseThrow();
        assertThat(bust.words().toString()).isEqualTo("take in 8 cm");
        assertThat(bust.covered()).isFalse();
        MeasureFit hip = choice.best().measure("hip").orElseThrow();
        assertThat(hip.alteration()).isEqualTo(Alteration.NONE);
        assertThat(hip.covered()).isTrue();
        // The next is larger everywhere, for in a smaller one the hip does not close.
        assertThat(choice.second().orElseThrow().size().body()).isEqualTo("100");
        SizeFit smaller = choice.ranked().stream()
                .filter(f -> f.size().body().equals("92"))
                .findFirst()
                .orElseThrow();
        assertThat(smaller.canBeWorn()).isFalse();
        // 104 is 2 cm, half a step, beyond the 102 that a hip of 100 covers.
        assertThat(smaller.shortage()).isEqualTo(0.5);
        assertThat(smaller.measure("hip").orElseThrow().words().toString()).isEqualTo("too small by 4 cm");
    }

    @Test
    void everyKindOfMeasureIsAlteredInItsOwnWay() {
        SizeChart chart = chart(
                "chest 84 88 92",
                "upper_arm 26 28 30",
                "back_width 33 34 35",
                "arm_length 57 58 59",
                "back_length 40 41 42");
        Measurements hers = body("chest 88", "upper_arm 28.5", "back_width 35", "arm_length 60", "back_length 39.8")
                .with("shoulder_slope", Quantity.angle(20));
        SizeFit best = choice(SizeFinder.of(chart), hers).best();
        assertThat(best.size().body()).isEqualTo("88");
        assertThat(best.measures().stream().map(m -> m.measure() + ": " + m.words()))
                .containsExactly(
                        "chest: fits",
                        "upper_arm: let out 0.5 cm",
                        "back_width: widen by 1 cm",
                        "arm_length: lengthen by 2 cm",
                        "back_length: shorten by 1.2 cm");
    }

    @Test
    void aSlopeDiffers() {
        SizeChart chart = new SizeChart(
                "slopes", List.of(Measurements.of("A").with("chest", cm("88")).with("slope", Quantity.angle(21))));
        MeasureFit slope = choice(SizeFinder.of(chart), body("chest 88").with("slope", Quantity.angle(19)))
                .best()
                .measure("slope")
                .orElseThrow();
        assertThat(slope.words().toString()).isEqualTo("differs by 2 deg");
    }

    @Test
    void beyondTheChartTheLastSizeIsTheBestAndThatIsSaid() {
        Outcome<SizeChoice> outcome = SizeFinder.of(WOMEN).find(body("bust 121", "waist 100", "hip 122"));
        SizeChoice choice = outcome.value().orElseThrow();
        assertThat(choice.best().size().body()).isEqualTo("116");
        assertThat(choice.best().canBeWorn()).isFalse();
        assertThat(outcome.diagnostics())
                .extracting(Diagnostic::message)
                .containsExactly(
                        "The bust of Tansy, 121 cm, lies outside women: 116, the largest size, has 116 cm and covers no more than 119 cm.");
        assertThat(outcome.diagnostics().get(0).place()).isEqualTo(Place.named("her bust"));
        Outcome<SizeChoice> small = SizeFinder.of(WOMEN).find(body("bust 70"));
        assertThat(small.value().orElseThrow().best().size().body()).isEqualTo("76");
        assertThat(small.diagnostics())
                .extracting(Diagnostic::message)
                .containsExactly(
                        "The bust of Tansy, 70 cm, lies outside women: 76, the smallest size, has 76 cm and covers no more than 74 cm.");
    }

    @Test
    void whatTheBodyLacksIsToldAndTheOthersChoose() {
        SizeChoice choice = choice(SizeFinder.of(WOMEN), body("hip 100"));
        assertThat(choice.best().size().body()).isEqualTo("92");
        assertThat(choice.keys()).containsExactly("hip");
        assertThat(choice.lacking()).containsExactly("bust", "waist");
    }

    @Test
    void aBodyWithNothingInCommonIsTold() {
        Outcome<SizeChoice> outcome = SizeFinder.of(WOMEN).find(body("wrist 16"));
        assertThat(outcome.value()).isEmpty();
        assertThat(outcome.diagnostics()).extracting(Diagnostic::code).containsExactly(ChartCode.NOTHING_IN_COMMON);
    }

    @Test
    void toldMeasuresChooseAlone() {
        Measurements hers = body("bust 88", "waist 72", "hip 104");
        assertThat(choice(SizeFinder.of(WOMEN).withKeys(List.of("Bust")), hers)
                        .best()
                        .size()
                        .body())
                .isEqualTo("88");
        assertThat(choice(SizeFinder.of(WOMEN).withKeys(List.of("waist", "hip")), hers)
                        .best()
                        .size()
                        .body())
                .isEqualTo("96");
    }

    @Test
    void aSizeThatLacksAKeyMeasureComesLast() {
        SizeChart chart = chart("bust 84 88 92", "hip 92 - 100");
        SizeChoice choice = choice(SizeFinder.of(chart), body("bust 88", "hip 96"));
        assertThat(choice.ranked()).extracting(f -> f.size().body()).containsExactly("92", "84", "88");
    }

    @Test
    void whereNothingTellsThemApartTheFirstIsTaken() {
        SizeChart chart = chart("head 55 55 56", "wrist 15 16 17");
        SizeChoice choice = choice(SizeFinder.of(chart).withKeys(List.of("head")), body("head 55"));
        assertThat(choice.ranked().get(0).size()).isSameAs(chart.sizes().get(0));
    }

    @Test
    void theOrderOfTheChartChangesNothing() {
        List<Measurements> turned = new ArrayList<>(WOMEN.sizes());
        java.util.Collections.reverse(turned);
        SizeChart reversed = new SizeChart("women", turned);
        for (double bust = 72; bust < 122; bust += 0.5) {
            Measurements hers = body("bust " + bust, "hip " + (bust + 10));
            assertThat(choice(SizeFinder.of(reversed), hers).best().size())
                    .isSameAs(choice(SizeFinder.of(WOMEN), hers).best().size());
        }
    }

    @Test
    void oneSizeFitsWhomItFits() {
        SizeChoice choice = choice(SizeFinder.of(chart("chest 88")), body("chest 89"));
        assertThat(choice.second()).isEmpty();
        assertThat(choice.best().canBeWorn()).isTrue();
    }

    /** The lists of ISO 8559: lengths, widths, girths. */
    @ParameterizedTest
    @CsvSource({
        "chest, GIRTH",
        "bust_girth, GIRTH",
        "upper_arm, GIRTH",
        "neck, GIRTH",
        "head, GIRTH",
        "shoulder_girth, GIRTH",
        "back_width, WIDTH",
        "shoulder_width, WIDTH",
        "biacromial breadth, WIDTH",
        "shoulder_length, WIDTH",
        "scye_depth, LENGTH",
        "body-rise, LENGTH",
        "waist_to_floor, LENGTH",
        "Inside Leg, LENGTH",
        "height, LENGTH",
        "arm_length, LENGTH"
    })
    void whatKindAMeasureIsStandsInItsName(String name, MeasureKind kind) {
        assertThat(MeasureKind.of(name, Dimension.LENGTH)).isEqualTo(kind);
        assertThat(MeasureKind.of(name, Dimension.ANGLE)).isEqualTo(MeasureKind.ANGLE);
    }

    @Test
    void howItIsTakenTellsMoreThanTheName() {
        assertThat(MeasureKind.of("knee", Dimension.LENGTH, "round the knee, a little bent"))
                .isEqualTo(MeasureKind.GIRTH);
        assertThat(MeasureKind.of("back", Dimension.LENGTH, "across the back, between the arms"))
                .isEqualTo(MeasureKind.WIDTH);
        assertThat(MeasureKind.of("hip_depth", Dimension.LENGTH, "waist straight down to hip level"))
                .isEqualTo(MeasureKind.LENGTH);
    }
}
