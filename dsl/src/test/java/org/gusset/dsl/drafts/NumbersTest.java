package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.json.DrawingJson;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Piece;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers that are none, and shapes at the edge of what is one: each is drawn right or gets a message. */
class NumbersTest {
    private static final String RANGED = "measure chest from 60 cm to 170 cm\n" + square("chest", "10 cm", "");
    private static final String FREE = "measure chest\n" + square("chest", "10 cm", "");
    private static final String CHOSEN = "choose long = 97 cm\n" + square("long", "10 cm", "");

    private static String square(String wide, String high, String further) {
        return "piece A {\n  point a = origin\n  point b = a right " + wide + "\n  point c = b down " + high
                + "\n  point d = a down " + high + "\n  line ab = a to b\n  line bc = b to c\n  line cd = c to d\n"
                + "  line da = d to a\n" + further
                + "  outline ab, bc, cd, da\n  allow 1 cm\n  grain from a to d\n  cut 1\n}\n";
    }

    private static String piece(String lines, String outline) {
        return "piece A {\n  point a = origin\n  point b = a right 10 cm\n" + lines + "  outline " + outline
                + "\n  allow 1 cm\n  grain bias\n  cut 1\n}\n";
    }

    private static Drawing drawn(Outcome<Draft> draft, Measurements body, Choices choices) {
        Drawing drawing =
                draft.value().orElseThrow().evaluate(body, choices).value().orElseThrow();
        // Nothing that is made of it stumbles over the numbers.
        DrawingJson.of(drawing);
        drawing.trace(LengthStyle.INCHES);
        drawing.lesson(LengthStyle.CM);
        drawing.explained(LengthStyle.INCHES);
        return drawing;
    }

    private static List<String> codes(String text, Measurements body, Choices choices) {
        Outcome<Draft> draft = Gusset.compile(Source.of("numbers.gusset", "draft \"Numbers\"\n" + text));
        return Stream.concat(draft.diagnostics().stream(), drawn(draft, body, choices).diagnostics().stream())
                .filter(Diagnostic::isError)
                .map(d -> d.code().id())
                .distinct()
                .sorted()
                .toList();
    }

    private static List<String> codes(String text) {
        return codes(text, Measurements.of("Pip Thistlewick"), Choices.none());
    }

    private static Piece sound(String text) {
        Outcome<Draft> draft = Gusset.compile(Source.of("numbers.gusset", "draft \"Numbers\"\n" + text));
        Drawing drawing = drawn(draft, Measurements.of("Pip Thistlewick"), Choices.none());
        assertThat(drawing.diagnostics().stream().filter(Diagnostic::isError)).isEmpty();
        return drawing.pieces().get(0);
    }

    private static List<String> split(String codes) {
        return codes == null ? List.of() : List.of(codes.split(" "));
    }

    /** What a program hands over as the chest, in mm. */
    @ParameterizedTest
    @CsvSource({
        "NaN, MEA015, MEA015",
        "Infinity, MEA015, MEA015",
        "-Infinity, MEA015, MEA015",
        "1e308, GEO006, GEO006",
        "4.9e-324, MEA111 PCE005, PCE005",
        "0, MEA111 PCE005, MEA104",
        "-0.0, MEA111 PCE005, MEA104",
        "-970, MEA111, MEA104",
        "970, ,"
    })
    void aMeasureThatIsNoneIsTold(double mm, String ranged, String free) {
        Measurements body = Measurements.of("Pip Thistlewick").with("chest", Quantity.length(mm));
        assertThat(codes(RANGED, body, Choices.none())).isEqualTo(split(ranged));
        assertThat(codes(FREE, body, Choices.none())).isEqualTo(split(free));
    }

    @ParameterizedTest
    @CsvSource({"NaN, MEA015", "Infinity, MEA015", "1e308, GEO006", "4.9e-324, PCE005", "0, PCE005", "-970,", "970,"})
    void aChoiceThatIsNoneIsTold(double mm, String told) {
        Choices choices = Choices.none().with("long", Quantity.length(mm));
        assertThat(codes(CHOSEN, Measurements.of("Pip Thistlewick"), choices)).isEqualTo(split(told));
    }

    /** A measure that nothing asks for is told of too. */
    @Test
    void aMeasureThatIsNoneIsToldThoughNothingAsksForIt() {
        Measurements body = Measurements.of("Pip Thistlewick").with("chest", Quantity.length(Double.NaN));
        assertThat(codes("measure chest\n", body, Choices.none())).containsExactly("MEA015");
        Measurements none = Measurements.of("Pip Thistlewick").with("chest", Quantity.length(0));
        assertThat(codes("measure chest\n", none, Choices.none())).containsExactly("MEA104");
        assertThat(codes("measure chest from -5 cm to 5 cm\n", none, Choices.none()))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 cm / 0                          | GEO101",
                "sqrt(-1) * 1 cm                   | GEO101",
                "asin(2) * 1 cm / 1 deg            | GEO101",
                "tan(90 deg) * 1 cm                | GEO101",
                "round(3 cm, to 0 cm)              | GEO101",
                "1000000000 m                      | MEA013"
            })
    void aSumWithoutAValueIsTold(String sum, String told) {
        assertThat(codes("let x = " + sum + "\n")).isEqualTo(split(told));
    }

    /** Products beyond 1e15 are told, long before the largest double (1.8e308, IEEE 754); those below 4.9e-324 are nought, and no piece. */
    @Test
    void sumsBeyondAllNumbersAreTold() {
        StringBuilder large = new StringBuilder("let b0 = 1000000000\n");
        StringBuilder small = new StringBuilder("let s0 = 1 / 1000000000\n");
        for (int i = 0; i < 40; i++) {
            large.append("let b").append(i + 1).append(" = b").append(i).append(" * b0\n");
            small.append("let s").append(i + 1).append(" = s").append(i).append(" * s0\n");
        }
        assertThat(codes(large.toString())).containsExactly("GEO006");
        assertThat(codes(large + square("b32 * 1 cm", "10 cm", ""))).containsExactly("GEO006");
        assertThat(codes(small.toString())).isEmpty();
        assertThat(codes(small + square("s34 * 1 cm", "10 cm", ""))).containsExactly("PCE005");
    }

    @ParameterizedTest
    @CsvSource({
        "0 cm, 10 cm, PCE005",
        "0.0000001 mm, 0.0000001 mm, PCE005",
        "0.001 mm, 0.001 mm,",
        "-10 cm, 10 cm,",
        "900 m, 900 m,",
        "1001 m, 1 m, LIM205"
    })
    void aPieceOfAnySizeIsDrawnOrRefused(String wide, String high, String told) {
        assertThat(codes(square(wide, high, ""))).isEqualTo(split(told));
    }

    /** A square turned over has the same area: 10 cm by 10 cm, with 1 cm all round 12 cm by 12 cm. */
    @Test
    void aSquareDrawnToTheLeftIsASquare() {
        Piece piece = sound(square("-10 cm", "10 cm", ""));
        assertThat(Math.abs(piece.stitching().signedArea())).isCloseTo(10_000, within(1e-6));
        assertThat(Math.abs(piece.cutting().signedArea())).isCloseTo(14_400, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "point q = a toward a by 3 cm",
                "curve y = from a to a",
                "curve k = from a through b, b to c",
                "curve h = from a to a hollowed right by 1 cm",
                "guide g = a to a"
            })
    void pointsThatCoincideAreTold(String line) {
        assertThat(codes(square("10 cm", "10 cm", "  " + line + "\n"))).containsExactly("GEO104");
    }

    @ParameterizedTest
    @ValueSource(strings = {"arc r = from a centre a swung 40 deg", "arc q = from b centre a swung 0 deg"})
    void arcsWithoutLengthAreTold(String line) {
        assertThat(codes(square("10 cm", "10 cm", "  " + line + "\n"))).containsExactly("GEO118");
    }

    /** A circle of 3 cm and its tangent touch in one point, 3 cm above the centre; half a hundredth further out they do not. */
    @Test
    void aTangentTouchesOnce() {
        String circle = "  point o = a right 5 cm down 5 cm\n  arc r = from (o right 3 cm) centre o swung 360 deg\n";
        String touch = "  point h = where r meets t\n  let off = distance(h, o)\n  let aside = width(h, o)\n";
        String on = "  line t = (o up 3 cm left 4 cm) to (o up 3 cm right 4 cm)\n";
        Outcome<Draft> draft = Gusset.compile(
                Source.of("numbers.gusset", "draft \"Numbers\"\n" + square("10 cm", "10 cm", circle + on + touch)));
        Drawing drawing = drawn(draft, Measurements.of("Pip Thistlewick"), Choices.none());
        assertThat(Drafts.value(drawing, "A.off")).isCloseTo(30, within(1e-6));
        assertThat(Drafts.value(drawing, "A.aside")).isCloseTo(0, within(1e-2));
        String beside = on.replace("up 3 cm", "up 3.0005 cm");
        assertThat(codes(square("10 cm", "10 cm", circle + beside + touch))).containsExactly("GEO109");
    }

    /** Edges: without length; a curve that ends in the way it came; one that crosses itself; that touch; that cross; that fold back. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "line x = a to b; line y = b to b; line z = b to (b down 5 cm) to a             | x, y, z | PCE005",
                "curve x = from a heading right to b heading left; line z = b to (a down 5 cm) to a | x, z | PCE003",
                "curve x = from a heading right through (a right 5 cm down 2 cm) heading left to b heading right; line z = b to (a down 9 cm) to a | x, z | PCE004",
                "line x = a to b to (b down 5 cm) to (a right 5 cm) to (a down 5 cm) to a         | x       | PCE004",
                "line x = a to b; line y = b to (a down 5 cm) to (b down 5 cm) to a               | x, y    | PCE004",
                "line x = a to b to (b down 5 cm); line y = (b down 5 cm) to (b down 5 cm left 2 cm) to (b down 5 cm) to a | x, y | PCE004",
                "line x = a to b; line y = b to a                                                  | x, y    | PCE006"
            })
    void outlinesThatAreNoneAreRefused(String lines, String outline, String told) {
        assertThat(codes(piece("  " + lines.replace("; ", "\n  ") + "\n", outline)))
                .isEqualTo(split(told));
    }

    @ParameterizedTest
    @CsvSource({"-1 cm, PCE011", "999999 m, LIM205", "0 cm,", "1000 m, LIM205"})
    void allowancesAreDrawnOrRefused(String width, String told) {
        String text = square("10 cm", "10 cm", "").replace("allow 1 cm", "allow " + width);
        assertThat(codes(text)).isEqualTo(split(told));
    }

    @ParameterizedTest
    @CsvSource({"cut 0, GEO120", "cut 1.5, GEO120", "cut 1000000000, GEO120", "cut 10000,"})
    void countsAreWhole(String cut, String told) {
        String text = square("10 cm", "10 cm", "").replace("cut 1", cut);
        assertThat(codes(text)).isEqualTo(split(told));
    }

    @Test
    void clothsAndStripsWithoutWidthAreTold() {
        assertThat(codes("cloth c wide 0 cm\n")).containsExactly("KND102");
        assertThat(codes("cloth c wide -3 cm\n")).containsExactly("KND102");
        assertThat(codes("cloth c wide 90 cm\nstrip S long 0 cm wide 3 cm { allow 1 cm cut 1 from c }\n"))
                .containsExactly("PCE005");
    }

    @Test
    void aRangeThatIsAPointIsTold() {
        assertThat(codes("unknown u from 0 cm to 0 cm\nsolve u so that u = 1 cm\n"))
                .containsExactly("GEO204");
    }
}
