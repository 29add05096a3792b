package org.gusset.core.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.gusset.core.diagnostic.Place;
import org.junit.jupiter.api.Test;

class MeasurementsTest {
    @Test
    void namesAreComparedWithoutCaseBlanksHyphensAndUnderscores() {
        Place cell = new Place.Cell("cast.csv", 2, 2, "41 cm");
        Measurements body = Measurements.of("Ottilie").with("Shoulder width", Quantity.length(410), cell);
        assertThat(body.entry("shoulder_width")).contains(new Measurements.Entry(Quantity.length(410), cell));
        assertThat(body.entry("SHOULDER-WIDTH")).isPresent();
        assertThat(body.entry("shoulder")).isEmpty();
        Measurements other = body.with("shoulder_width", Quantity.length(420));
        assertThat(other.entries()).hasSize(1);
        assertThat(other.entry("Shoulder width").orElseThrow().quantity()).isEqualTo(Quantity.length(420));
        assertThat(body.entry("shoulder_width").orElseThrow().quantity()).isEqualTo(Quantity.length(410));
    }

    @Test
    void aChartKeepsItsOrder() {
        SizeChart chart = new SizeChart("cast.csv", List.of(Measurements.of("b"), Measurements.of("a")));
        assertThat(chart.names()).containsExactly("b", "a");
        assertThat(chart.size("a")).contains(Measurements.of("a"));
        assertThat(chart.size("A")).isEmpty();
    }

    @Test
    void everyCodeHasAnIdOfItsOwn() {
        assertThat(Arrays.stream(MeasureCode.values()).map(MeasureCode::id))
                .doesNotHaveDuplicates()
                .allMatch(id -> id.matches("MEA\\d{3}"));
    }
}
