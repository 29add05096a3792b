package org.gusset.core.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthStyleTest {
    // 1 in = 25.4 mm: international yard and pound agreement, 1959.
    @ParameterizedTest
    @CsvSource({
        "241.3, 16, 9 1/2 in",
        "15.875, 16, 5/8 in",
        "15.875, 2, 1/2 in",
        "0, 16, 0 in",
        "-0.0, 16, 0 in",
        "-0.1, 8, 0 in",
        "-9.525, 8, -3/8 in",
        "-241.3, 8, -9 1/2 in",
        "406.146, 8, 16 in",
        "1.5875, 8, 1/8 in",
        "-1.5875, 8, -1/8 in",
        "1.5874, 8, 0 in",
        "4.7625, 8, 1/4 in",
        "977.9, 1, 39 in",
        "25.4, 64, 1 in",
        "0.396875, 64, 1/64 in"
    })
    void showsTapeFractions(double mm, int denominator, String text) {
        assertThat(new LengthStyle(Unit.IN, denominator, 0).show(mm)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "241, CM, 2, 24.1 cm",
        "2.05, MM, 1, 2.1 mm",
        "-2.05, MM, 1, -2.1 mm",
        "-0.04, MM, 1, 0 mm",
        "1000, CM, 2, 100 cm",
        "999.96, MM, 1, 1000 mm",
        "1234.5678, M, 3, 1.235 m",
        "1e9, MM, 1, 1000000000 mm",
        "12.7, IN, 2, 0.5 in",
        "0.1, CM, 0, 0 cm"
    })
    void showsDecimals(double mm, Unit unit, int decimals, String text) {
        assertThat(new LengthStyle(unit, 0, decimals).show(mm)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "1600.2, 5 ft 3 in",
        "1612.9, 5 ft 3 1/2 in",
        "-1612.9, -5 ft 3 1/2 in",
        "1523.99, 5 ft",
        "12.7, 1/2 in",
        "-12.7, -1/2 in",
        "0, 0 ft"
    })
    void showsFeetAndInches(double mm, String text) {
        assertThat(new LengthStyle(Unit.FT, 8, 0).show(mm)).isEqualTo(text);
    }

    @Test
    void whatIsShownReadsBackAsTheRoundedLength() {
        long seed = 1959_07_01L;
        System.out.println("LengthStyleTest.whatIsShownReadsBack seed " + seed);
        Random random = new Random(seed);
        List<LengthStyle> styles = List.of(
                LengthStyle.MM,
                LengthStyle.CM,
                LengthStyle.INCHES,
                new LengthStyle(Unit.IN, 2, 0),
                new LengthStyle(Unit.IN, 64, 0),
                new LengthStyle(Unit.IN, 0, 3),
                new LengthStyle(Unit.FT, 8, 0),
                new LengthStyle(Unit.YD, 8, 0),
                new LengthStyle(Unit.M, 0, 4));
        for (int i = 0; i < 5_000; i++) {
            double mm = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(7) - 1);
            for (LengthStyle style : styles) {
                String shown = style.show(mm);
                assertThat(QuantityText.parse(shown, Place.nowhere()).orThrow())
                        .as("%s for %s", shown, mm)
                        .isEqualTo(Quantity.length(style.rounded(mm)));
                assertThat(style.show(style.rounded(mm))).isEqualTo(shown);
                Unit counted = style.denominator() > 0 && style.unit() == Unit.FT ? Unit.IN : style.unit();
                double step = counted.factor()
                        / (style.denominator() > 0 ? style.denominator() : Math.pow(10, style.decimals()));
                assertThat(style.rounded(mm)).isCloseTo(mm, Offset.offset(step / 2 * (1 + 1e-9)));
            }
        }
    }

    @Test
    void showsEveryKindOfQuantity() {
        assertThat(LengthStyle.CM.show(Quantity.length(241))).isEqualTo("24.1 cm");
        assertThat(LengthStyle.CM.show(new Quantity(12_345, Dimension.AREA))).isEqualTo("123.45 cm²");
        assertThat(LengthStyle.INCHES.show(new Quantity(645.16, Dimension.AREA)))
                .isEqualTo("1 in²");
        assertThat(LengthStyle.CM.show(new Quantity(1000, new Dimension(3, 0)))).isEqualTo("1 cm³");
        assertThat(LengthStyle.CM.show(new Quantity(0.5, new Dimension(-1, 0)))).isEqualTo("5 cm^-1");
        assertThat(LengthStyle.CM.show(Quantity.angle(12.5))).isEqualTo("12.5 deg");
        assertThat(LengthStyle.CM.show(Quantity.number(1.0 / 3))).isEqualTo("0.3333");
        assertThat(LengthStyle.CM.show(Double.NaN)).isEqualTo("no value");
        assertThat(LengthStyle.INCHES.rounded(Double.POSITIVE_INFINITY)).isInfinite();
    }

    @Test
    void sentencesSpeakInTheStyleAndNeverHideAGap() {
        Phrase phrase = Phrase.of(
                "k",
                "{a} is {gap} from {b} at {w}",
                "a",
                "Back",
                "gap",
                Fact.length(0.0031),
                "b",
                Fact.length(241.3),
                "w",
                Fact.angle(30));
        assertThat(LengthStyle.INCHES.wording().say(phrase)).isEqualTo("Back is 0.00012 in from 9 1/2 in at 30 deg");
        assertThat(LengthStyle.MM.wording().say(phrase)).isEqualTo("Back is 0.0031 mm from 241.3 mm at 30 deg");
        assertThat(LengthStyle.CM.wording().say(Phrase.of("k", "{x}", "x", Fact.length(0))))
                .isEqualTo("0 cm");
    }

    @Test
    void refusesStylesThatNoTapeHas() {
        assertThatIllegalArgumentException().isThrownBy(() -> new LengthStyle(Unit.CM, 8, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new LengthStyle(Unit.IN, 10, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new LengthStyle(Unit.IN, 128, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new LengthStyle(Unit.DEG, 0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new LengthStyle(Unit.MM, 0, -1));
    }
}
