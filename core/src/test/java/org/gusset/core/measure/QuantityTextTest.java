package org.gusset.core.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTextTest {
    private static final Place CELL = new Place.Cell("cast.csv", 3, 2, "x");

    private static Quantity read(String text) {
        return QuantityText.parse(text, CELL).orThrow();
    }

    private static Diagnostic refused(String text) {
        Outcome<Quantity> outcome = QuantityText.parse(text, CELL);
        assertThat(outcome.value()).as(text).isEmpty();
        assertThat(outcome.diagnostics()).as(text).hasSize(1);
        Diagnostic diagnostic = outcome.diagnostics().get(0);
        assertThat(diagnostic.place()).isEqualTo(CELL);
        assertThat(diagnostic.hints()).isNotEmpty();
        return diagnostic;
    }

    // The inch is 25.4 mm and the yard 0.9144 m exactly: international yard and pound agreement, 1959.
    @ParameterizedTest
    @CsvSource({
        "1 in, 25.4",
        "5/8 in, 15.875",
        "9 1/2 in, 241.3",
        "9½ in, 241.3",
        "9 ½ in, 241.3",
        "9.5 in, 241.3",
        "12 3/4 in, 323.85",
        "12¾in, 323.85",
        "-3/8 in, -9.525",
        "- 3/8 in, -9.525",
        "−3/8 in, -9.525",
        "38 1/2 in, 977.9",
        "38 1⁄2 in, 977.9",
        "97cm, 970",
        "97 CM, 970",
        "24.1 cm, 241",
        ".5 cm, 5",
        "+3 mm, 3",
        "5 ft 3 in, 1600.2",
        "5ft 3 1/2in, 1612.9",
        "-5 ft 3 in, -1600.2",
        "1 yd, 914.4",
        "1 yd 1 ft 6 in, 1371.6",
        "1 m 62 cm, 1620",
        "5/4 in, 31.75",
        "11/2 in, 139.7",
        "1 / 2 in, 12.7",
        "⅞ in, 22.225",
        "⅛ in, 3.175",
        "0 cm, 0"
    })
    void readsLengthsToTheNearestDouble(String text, double mm) {
        assertThat(read(text)).isEqualTo(Quantity.length(mm));
    }

    @Test
    void readsEveryFractionOfTheCharacterSet() {
        // Values as named in the Unicode character database (from memory).
        String signs = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
        int[][] values = {
            {1, 4}, {1, 2}, {3, 4}, {1, 7}, {1, 9}, {1, 10}, {1, 3}, {2, 3}, {1, 5}, {2, 5}, {3, 5}, {4, 5}, {1, 6},
            {5, 6}, {1, 8}, {3, 8}, {5, 8}, {7, 8}
        };
        for (int i = 0; i < values.length; i++) {
            String written = values[i][0] + "/" + values[i][1] + " in";
            assertThat(read(signs.charAt(i) + " in")).isEqualTo(read(written));
            assertThat(read("2" + signs.charAt(i) + " in")).isEqualTo(read("2 " + written));
            assertThat(read(signs.charAt(i) + " in").value())
                    .isCloseTo(25.4 * values[i][0] / values[i][1], org.assertj.core.data.Offset.offset(1e-12));
        }
    }

    @Test
    void readsPlainNumbersAnglesAndShares() {
        assertThat(read("38")).isEqualTo(Quantity.number(38));
        assertThat(read("½")).isEqualTo(Quantity.number(0.5));
        assertThat(read("1/3")).isEqualTo(Quantity.number(1.0 / 3));
        assertThat(read("12 deg")).isEqualTo(Quantity.angle(12));
        assertThat(read("12.5deg")).isEqualTo(Quantity.angle(12.5));
        assertThat(read("4%")).isEqualTo(Quantity.number(0.04));
        assertThat(read("3.141592653589793 rad").value()).isCloseTo(180, org.assertj.core.data.Offset.offset(1e-12));
    }

    @Test
    void aNegativeZeroIsZero() {
        assertThat(Double.doubleToRawLongBits(read("-0 cm").value())).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''           | MEA001 | Write a number and its unit, as `97 cm` or `38 1/2 in`.",
                "'   '        | MEA001 | Write a number and its unit, as `97 cm` or `38 1/2 in`.",
                "24,1 cm      | MEA003 | Write `24.1 cm`.",
                "97,25 cm     | MEA003 | Write `97.25 cm`.",
                "1'000 mm      | MEA004 | Write `1000 mm`, the digits without a break.",
                "1 000 mm     | MEA004 | Write `1000 mm`, the digits without a break.",
                "1_000 mm     | MEA004 | Write `1000 mm`, the digits without a break.",
                "1,000 mm     | MEA004 | Write `1000 mm`, the digits without a break, or `1.000 mm` if the comma starts the decimals.",
                "1,234.5 mm   | MEA004 | Write `1234.5 mm`, the digits without a break.",
                "1.234,5 mm   | MEA004 | Write `1234.5 mm`, the digits without a break.",
                "1.234.567 mm | MEA004 | Write `1234567 mm`, the digits without a break.",
                "38 1/2       | MEA005 | If it is in inches, write `38 1/2 in`; a plain number is written with decimals.",
                "38\"          | MEA006 | Write `38 in`.",
                "38½\"         | MEA006 | Write `38½ in`.",
                "5' 3\"        | MEA006 | Write `5 ft 3 in`.",
                "5'3''         | MEA006 | Write `5 ft 3 in`.",
                "5′3″         | MEA006 | Write `5 ft 3 in`.",
                "38 1/2 inch  | MEA007 | Write `38 1/2 in`.",
                "38 inches    | MEA007 | Write `38 in`.",
                "38 in.       | MEA007 | Write `38 in`.",
                "97 cms       | MEA007 | Write `97 cm`.",
                "97 cn        | MEA007 | Write `97 cm`.",
                "97 mc        | MEA007 | Write `97 cm`.",
                "97 mn        | MEA007 | Write `97 mm`.",
                "97 centimter | MEA007 | Write `97 cm`.",
                "97 Zentimeter| MEA007 | Write `97 cm`.",
                "3 feet 2 in  | MEA007 | Write `3 ft 2 in`.",
                "12°          | MEA007 | Write `12 deg`.",
                "97 ells      | MEA007 | The units are `mm`, `cm`, `m`, `in`, `ft`, `yd`, `deg`, `rad`, `%`.",
                "cm           | MEA008 | Write the number first, as `97 cm` or `38 1/2 in`.",
                "1-1/4 in     | MEA009 | Write `1 1/4 in`.",
                "1-½ in       | MEA009 | Write `1 ½ in`.",
                "3/0 in       | MEA010 | Put a number such as 2, 4, 8 or 16 below the stroke.",
                "9 5/4 in     | MEA011 | A tape fraction is less than one, as in `9 1/2 in`; look for a missing or turned digit.",
                "3 in 5 ft    | MEA012 | Write one amount in one unit, or feet and then inches, as `5 ft 3 in`.",
                "5 ft 3 cm    | MEA012 | Write one amount in one unit, or feet and then inches, as `5 ft 3 in`.",
                "3 cm 3 cm    | MEA012 | Write one amount in one unit, or feet and then inches, as `5 ft 3 in`.",
                "3 cm 4 deg   | MEA012 | Write one amount in one unit, or feet and then inches, as `5 ft 3 in`.",
                "9999999999 m | MEA013 | Look for digits too many, or for a wrong unit.",
                "1e308        | MEA014 | Write the digits out, as `1200 mm`.",
                "1e308 mm     | MEA014 | Write the digits out, as `1200 mm`.",
                "NaN          | MEA015 | Write a number and its unit, as `97 cm` or `38 1/2 in`.",
                "-Infinity    | MEA015 | Write a number and its unit, as `97 cm` or `38 1/2 in`.",
                "inf cm       | MEA015 | Write a number and its unit, as `97 cm` or `38 1/2 in`.",
                "5 ft 3       | MEA016 | If that is meant, write `5 ft 3 in`."
            })
    void saysWhatIsWrongAndHowToWriteIt(String text, String code, String hint) {
        Diagnostic diagnostic = refused(text);
        assertThat(diagnostic.code().id()).isEqualTo(code);
        assertThat(diagnostic.hints().get(0).phrase()).hasToString(hint);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "97 cm round",
                "(97 cm)",
                "--3 cm",
                "9.5 1/2 in",
                "1/2/3 in",
                "3.",
                "9 .5 in",
                "about 97 cm",
                "97-98 cm",
                "٣ cm",
                "<script>",
                "-",
                "/",
                "1 2 cm",
                "97 cm cm",
                "5 ½ ½ in",
                "9.5.1 cm",
                "\uD83D\uDC57"
            })
    void refusesWhatIsNoAmount(String text) {
        assertThat(refused(text).code().id()).isIn("MEA002", "MEA008", "MEA007");
    }

    @Test
    void hugeTextIsRefusedShortly() {
        Diagnostic digits = refused("9".repeat(100_000) + " cm");
        assertThat(digits.message()).hasSizeLessThan(100);
        assertThat(refused("9".repeat(90) + " cm").code()).isEqualTo(MeasureCode.TOO_LARGE);
        assertThat(refused("1/" + "0".repeat(90) + " in").code()).isEqualTo(MeasureCode.ZERO_BELOW);
        assertThat(read("0." + "3".repeat(90) + " cm").value())
                .isCloseTo(10.0 / 3, org.assertj.core.data.Offset.offset(1e-15));
    }

    @Test
    void noInputThrowsAndEveryRefusalHasAHint() {
        long seed = 20_261_125L;
        System.out.println("QuantityTextTest.noInputThrows seed " + seed);
        Random random = new Random(seed);
        String alphabet = "0123456789  ./-+,'\"½¾⅞incmftydeg%°eE_N∞\u2032\u00a0x";
        int read = 0;
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            int length = random.nextInt(12);
            for (int j = 0; j < length; j++) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            Outcome<Quantity> outcome = QuantityText.parse(text.toString(), CELL);
            if (outcome.value().isPresent()) {
                read++;
                assertThat(outcome.value().get().value()).as(text.toString()).isFinite();
            } else {
                refused(text.toString());
            }
        }
        assertThat(read).isGreaterThan(100);
    }

    @Test
    void theDefaultLocaleChangesNothing() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertThat(read("24.1 CM")).isEqualTo(Quantity.length(241));
            assertThat(LengthStyle.CM.show(241)).isEqualTo("24.1 cm");
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat(read("9 1/2 IN")).isEqualTo(Quantity.length(241.3));
        } finally {
            Locale.setDefault(before);
        }
    }
}
