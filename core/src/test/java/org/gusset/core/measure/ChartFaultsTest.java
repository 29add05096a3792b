package org.gusset.core.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Severity;
import org.junit.jupiter.api.Test;

class ChartFaultsTest {
    /** A chart out of rows of {@code measure 84 88 92}, in cm; a dash is a blank cell. Each entry's place is its size and measure. */
    static SizeChart chart(String... rows) {
        List<Measurements> sizes = new ArrayList<>();
        for (String row : rows) {
            String[] cells = row.split(" ", -1);
            for (int i = 1; i < cells.length; i++) {
                String name = Character.toString('A' + i - 1);
                if (sizes.size() < i) {
                    sizes.add(Measurements.of(name));
                }
                if (!cells[i].equals("-")) {
                    Quantity quantity = cells[i].endsWith("deg")
                            ? Quantity.angle(Double.parseDouble(cells[i].replace("deg", "")))
                            : Quantity.length(Double.parseDouble(cells[i]) * 10);
                    sizes.set(i - 1, sizes.get(i - 1).with(cells[0], quantity, Place.named(name + " " + cells[0])));
                }
            }
        }
        return new SizeChart("stock", sizes);
    }

    private static List<String> told(String... rows) {
        List<Diagnostic> faults = ChartFaults.of(chart(rows));
        assertThat(faults).allSatisfy(f -> {
            assertThat(f.severity()).isEqualTo(Severity.WARNING);
            assertThat(f.message()).doesNotContain("{");
            assertThat(f.place()).isInstanceOf(Place.Named.class);
        });
        return faults.stream()
                .map(f -> f.code().id() + " at " + ((Place.Named) f.place()).name())
                .toList();
    }

    @Test
    void nothingIsWrongWithEvenAndUnevenStepsAndHalfSizes() {
        assertThat(told("chest 84 88 92 96", "waist 66 70 74 78")).isEmpty();
        // Half sizes between whole ones, here the second and the fifth: common practice, no source.
        assertThat(told("chest 84 86 88 92 94 96", "waist 66 68 70 74 76 78")).isEmpty();
        assertThat(told("chest 84 88 93 99 106", "waist 66 70 75.5 82 89.5")).isEmpty();
    }

    /** ASTM D5585-11e1, table 1, inches: sizes 00 and 0 have one head girth. */
    @Test
    void aMeasureThatStandsStillIsNoFault() {
        assertThat(told("head 53.975 53.975 54.61 54.61 55.245", "bust 79.0575 80.645 83.82 86.6775 89.535"))
                .isEmpty();
        assertThat(told("wrist 16 16 16 16", "chest 84 88 92 96")).isEmpty();
    }

    @Test
    void oneSizeOrNoneIsNoFault() {
        assertThat(told("chest 84")).isEmpty();
        assertThat(ChartFaults.of(new SizeChart("none", List.of()))).isEmpty();
        assertThat(ChartFaults.of(new SizeChart("bare", List.of(Measurements.of("A"), Measurements.of("B")))))
                .isEmpty();
    }

    @Test
    void aMeasureThatFallsIsToldWithBothFiguresAndBothPlaces() {
        List<Diagnostic> faults = ChartFaults.of(chart("chest 84 88 92 96", "neck 35 36.5 36 38"));
        assertThat(faults).hasSize(1);
        Diagnostic fault = faults.get(0);
        assertThat(fault.code()).isEqualTo(ChartCode.FALLS);
        assertThat(fault.message()).isEqualTo("The neck falls from 36.5 cm in B to 36 cm in C.");
        assertThat(fault.place()).isEqualTo(Place.named("C neck"));
        assertThat(fault.related()).extracting(r -> r.place()).containsExactly(Place.named("B neck"));
    }

    @Test
    void aFallIsSeenOverABlankCell() {
        assertThat(told("chest 84 88 92 96", "neck 36 - 35 38"))
                .containsExactly("GRD007 at A neck", "GRD001 at C neck");
    }

    @Test
    void anglesMayFall() {
        assertThat(told("chest 84 88 92", "shoulder_slope 22deg 21deg 20deg")).isEmpty();
    }

    @Test
    void aChartFromLargeToSmallIsToldOnceAndItsOtherFaultsToo() {
        assertThat(told("chest 96 92 88 84", "waist 78 74 70 66")).containsExactly("GRD002 at A chest");
        // Read from its end, the neck falls between C and B.
        assertThat(told("chest 96 92 88 84", "waist 78 74 70 66", "neck 38 36 37 35"))
                .containsExactly("GRD002 at A chest", "GRD001 at B neck");
        assertThat(ChartFaults.of(chart("chest 96 92 88")).get(0).message())
                .isEqualTo(
                        "stock runs from large to small: the chest is 96 cm in A, the first size, and 88 cm in C, the last.");
    }

    @Test
    void twoSizesThatChangedPlacesAreToldOnce() {
        List<Diagnostic> faults = ChartFaults.of(chart("chest 84 92 88 96", "waist 66 74 70 78", "hip 91 99 95 103"));
        assertThat(faults).extracting(Diagnostic::code).containsExactly(ChartCode.OUT_OF_ORDER);
        assertThat(faults.get(0).message())
                .isEqualTo("C stands behind B and is smaller: chest, waist, hip fall, not grow.");
        assertThat(faults.get(0).related()).hasSize(3);
    }

    @Test
    void equalSizesAreToldBesideEachOtherOrNot() {
        assertThat(told("chest 84 88 88 92", "waist 66 70 70 74")).containsExactly("GRD004 at C chest");
        assertThat(ChartFaults.of(chart("chest 84 88 92 88", "waist 66 70 74 70")))
                .extracting(Diagnostic::message)
                .contains("B and D have the same measures.");
    }

    @Test
    void aSizeWithinHalfAStepOfItsNeighbourIsTold() {
        List<Diagnostic> faults = ChartFaults.of(chart("chest 84 88 89 96", "waist 66 70 71.5 78"));
        assertThat(faults).extracting(Diagnostic::code).containsExactly(ChartCode.CROWDED);
        assertThat(faults.get(0).message())
                .isEqualTo(
                        "C lies within half a step of B: the chest goes from 88 cm to 89 cm, by 1 cm, where the step beside it is 4 cm.");
        // Half of the smaller step beside it is no less than half.
        assertThat(told("chest 84 88 90 94", "waist 66 70 71 75")).isEmpty();
        // One measure that takes a whole step makes it a size of its own.
        assertThat(told("chest 84 88 89 96", "hip 91 95 99 103")).isEmpty();
    }

    @Test
    void aSlipIsToldAtItsCell() {
        assertThat(told("chest 84 88 29 96 100", "waist 66 70 74 78 82")).containsExactly("GRD006 at C chest");
        assertThat(told("chest 84 88 92 960", "waist 66 70 74 78")).containsExactly("GRD006 at D chest");
        assertThat(told("chest 8.4 88 92 96", "waist 66 70 74 78")).containsExactly("GRD006 at A chest");
        // Two sizes that were left out, or a slip: both figures are told.
        assertThat(told("chest 84 88 128 132", "waist 66 70 74 78")).containsExactly("GRD006 at C chest");
    }

    @Test
    void whatSizesLackIsToldForAllTheirMeasuresAtOnce() {
        List<Diagnostic> faults =
                ChartFaults.of(chart("chest 84 88 92", "neck 35 - 37", "wrist 15 - 16", "head - 56 57"));
        assertThat(faults)
                .extracting(Diagnostic::message)
                .containsExactly(
                        "Not in B, though other sizes have it: neck, wrist.",
                        "Not in A, though other sizes have it: head.");
    }

    @Test
    void aLengthBesideAnAngleIsTold() {
        List<Diagnostic> faults = ChartFaults.of(chart("chest 84 88 92", "slope 21deg 2 22deg"));
        assertThat(faults)
                .extracting(Diagnostic::message)
                .containsExactly("The slope is an angle in A and a length in B.");
    }
}
