package org.gusset.workbench.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How far and in what steps an amount on the measuring card is slid. */
class SlideTest {
    @ParameterizedTest
    @CsvSource({
        "97 cm, 67.5, 126.5, 0.5, cm, 0, 97",
        "8 cm, 5.6, 10.4, 0.1, cm, 0, 8",
        "12 mm, 8, 16, 0.5, mm, 0, 12",
        "1.5 m, 105, 195, 0.5, cm, 0, 150",
        "38 1/2 in, 26.875, 50.125, 0.125, in, 8, 38.5",
        "12½ in, 8.75, 16.25, 0.125, in, 8, 12.5",
        "5 ft 6 in, 46.125, 85.875, 0.125, in, 8, 66",
        "12 deg, 8, 16, 0.5, deg, 0, 12",
        "4%, 2.5, 5.5, 0.5, %, 0, 4",
        "3, 2.1, 3.9, 0.1, '', 0, 3"
    })
    void theSlideOfAnAmount(String text, double from, double to, double step, String unit, int parts, double at) {
        assertThat(Slide.of(text))
                .hasValueSatisfying(slide -> assertThat(slide.json(text))
                        .containsEntry("from", from)
                        .containsEntry("to", to)
                        .containsEntry("step", step)
                        .containsEntry("unit", unit)
                        .containsEntry("parts", parts)
                        .containsEntry("at", at));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0 cm", "-2 cm", "a wagon"})
    void whatCannotBeSlid(String text) {
        assertThat(Slide.of(text)).isEmpty();
    }

    @Test
    void whatIsWrittenWronglyStandsNowhere() {
        assertThat(Slide.of("97 cm")).hasValueSatisfying(slide -> {
            assertThat(slide.json("a wagon")).doesNotContainKey("at");
            assertThat(slide.json("38 1/2 in")).containsEntry("at", 97.79);
        });
    }
}
