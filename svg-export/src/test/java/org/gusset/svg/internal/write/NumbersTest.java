package org.gusset.svg.internal.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NumbersTest {
    @Test
    void wholeNumbersHaveNoDecimals() {
        assertThat(Numbers.text(0)).isEqualTo("0");
        assertThat(Numbers.text(100)).isEqualTo("100");
        assertThat(Numbers.text(-2540)).isEqualTo("-2540");
    }

    @Test
    void minusZeroIsZeroAlsoAfterRounding() {
        assertThat(Numbers.text(-0.0)).isEqualTo("0");
        assertThat(Numbers.text(-0.00004)).isEqualTo("0");
        assertThat(Numbers.text(0.00004)).isEqualTo("0");
        assertThat(Numbers.text(Double.MIN_VALUE)).isEqualTo("0");
    }

    @Test
    void atMostFourDecimalsAreWrittenAndZerosAtTheEndAreLeftOut() {
        assertThat(Numbers.text(0.5)).isEqualTo("0.5");
        assertThat(Numbers.text(222.81692032865347)).isEqualTo("222.8169");
        assertThat(Numbers.text(-15.87500000001)).isEqualTo("-15.875");
        assertThat(Numbers.text(9.99999)).isEqualTo("10");
    }

    @Test
    void veryLargeAndVerySmallNumbersHaveNoExponent() {
        assertThat(Numbers.text(1e15)).isEqualTo("1000000000000000");
        assertThat(Numbers.text(1.5e7)).isEqualTo("15000000");
        assertThat(Numbers.text(1e-3)).isEqualTo("0.001");
        assertThat(Numbers.text(1e-12)).isEqualTo("0");
    }

    @Test
    void whatIsNoNumberIsRefused() {
        assertThatThrownBy(() -> Numbers.text(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Numbers.text(Double.NEGATIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Against the decimal value of the double itself, rounded half to even: java.math.BigDecimal. */
    @Test
    void everyNumberIsTheExactValueRounded() {
        Random random = new Random(35);
        for (int i = 0; i < 100_000; i++) {
            double size = Math.pow(10, random.nextInt(16) - 5);
            double value = (random.nextDouble() - 0.5) * size;
            // Halves of the last digit, and their neighbours, where the rounding turns.
            double half = (Math.floor(value * 10_000) + 0.5) / 10_000;
            for (double near : new double[] {value, half, Math.nextUp(half), Math.nextDown(half)}) {
                BigDecimal exact = new BigDecimal(near).setScale(4, RoundingMode.HALF_EVEN);
                String text =
                        exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
                assertThat(Numbers.text(near)).isEqualTo(text);
            }
        }
    }

    @Test
    void readBackNumbersAreOffByHalfTheLastDigitAtMost() {
        Random random = new Random(20261125);
        for (int i = 0; i < 10_000; i++) {
            double value = (random.nextDouble() - 0.5) * 4000;
            String text = Numbers.text(value);
            assertThat(text).matches("-?\\d+(\\.\\d{1,4})?");
            assertThat(Math.abs(Double.parseDouble(text) - value)).isLessThan(0.0000501);
        }
    }
}
