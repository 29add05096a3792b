package org.gusset.dsl.internal.parse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.Budget;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.syntax.DraftTree;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Statement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Texts at the edges of what the language takes. */
class EdgeCasesTest {
    /** Sums of doubles of up to a few metres in mm. */
    private static final Offset<Double> EXACT = within(1e-9);

    private static Outcome<DraftTree> parse(String text) {
        return Parsing.parse(Source.of("edge.gusset", text));
    }

    private static List<Statement> sound(String text) {
        Outcome<DraftTree> outcome = parse(text);
        assertThat(outcome.diagnostics()).isEmpty();
        return outcome.value().orElseThrow().statements();
    }

    private static Diagnostic only(String text) {
        List<Diagnostic> diagnostics = parse(text).diagnostics();
        assertThat(diagnostics).hasSize(1);
        return diagnostics.get(0);
    }

    private static String spanText(Diagnostic diagnostic, String text) {
        Span span = (Span) diagnostic.place();
        return text.substring(span.start(), span.end());
    }

    private static Expr value(String written) {
        return ((Statement.Let) sound("let x = " + written).get(0)).value();
    }

    /** Control characters of ISO/IEC 6429, which move about on a terminal; U+FFFD stands for what cannot be shown (Unicode, 23.8). */
    @ParameterizedTest
    @CsvSource({"1, FFFD", "1B, FFFD", "7F, FFFD", "90, FFFD", "9, 20", "20, 20", "E9, E9", "1F9F5, 1F9F5"})
    void aTextHasNothingThatCannotBeSeen(String written, String shown) {
        String text = "draft \"A" + Character.toString(Integer.parseInt(written, 16)) + "B\"";
        Statement.Draft title = (Statement.Draft) sound(text).get(0);
        assertThat(title.title().plain()).isEqualTo("A" + Character.toString(Integer.parseInt(shown, 16)) + "B");
    }

    /** Amounts worked by hand with 1 in = 25.4 mm, 1 ft = 12 in, 1 yd = 3 ft (International yard and pound agreement, 1959). */
    @ParameterizedTest
    @CsvSource({
        "9 ½ in, 241.3",
        "9½ in, 241.3",
        "9 1/2 in, 241.3",
        "½ in, 12.7",
        "1⅝ in, 41.275",
        "1/8 in, 3.175",
        "5 ft 3 in, 1600.2",
        "5 ft 3 1/2 in, 1612.9",
        "1 yd 2 ft, 1524",
        "1 m 5 cm, 1050",
        "0 cm, 0",
        "1.5 cm, 15",
        "12in, 304.8"
    })
    void writtenLengthsAreOneAmount(String written, double mm) {
        Expr.Amount amount = (Expr.Amount) value(written);
        assertThat(amount.quantity().dimension()).isEqualTo(Dimension.LENGTH);
        assertThat(amount.quantity().value()).isCloseTo(mm, EXACT);
        assertThat(amount.span().start()).isEqualTo(8);
        assertThat(amount.span().end()).isEqualTo(8 + written.length());
    }

    @Test
    void aFractionIsOneNumberInFrontOfAUnitOnly() {
        Expr.Arithmetic fraction = (Expr.Arithmetic) value("chest/4/2 cm");
        assertThat(fraction.left()).isInstanceOf(Expr.Reference.class);
        assertThat(((Expr.Amount) fraction.right()).quantity()).isEqualTo(Quantity.length(20));
        Expr.Arithmetic twice = (Expr.Arithmetic) value("chest / 4 / 2");
        assertThat(twice.left()).isInstanceOf(Expr.Arithmetic.class);
        assertThat(((Expr.Amount) value("½")).quantity()).isEqualTo(Quantity.number(0.5));
        assertThat(((Expr.Arithmetic) value("1/3")).operator()).isEqualTo(Expr.Operator.OVER);
        Expr.Arithmetic minus = (Expr.Arithmetic) value("3 in - 1/4 in");
        assertThat(((Expr.Amount) minus.right()).quantity().value()).isCloseTo(6.35, EXACT);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "3 1/2       | SYN005 | 3 1/2  | Write `3 1/2 in` or `3 1/2 cm`.",
                "3 ½         | SYN005 | 3 ½    | Write `3 ½ in` or `3 ½ cm`.",
                "1-1/4 in    | SYN006 | 1-1/4  | Write `1 1/4` with a blank for the mixed number.",
                "1,5 cm      | SYN008 | 1,5    | Write `1.5`.",
                "12\"        | SYN009 | \"     | Write ` in`.",
                "12\u2033    | SYN009 | \u2033 | Write ` in`.",
                "5'          | SYN009 | '      | Write ` ft`.",
                "30\u00b0    | SYN009 | \u00b0 | Write ` deg`.",
                "3 inches    | SYN010 | inches | Write `in`.",
                "3 CM        | SYN010 | CM     | Write `cm`.",
                "3 \u00d7 4  | SYN011 | \u00d7 | Write `*`.",
                "[3]         | SYN011 | [      | Use round brackets: `(` and `)`."
            })
    void miswrittenAmountsSayHowTheyAreWritten(String written, String code, String marked, String hint) {
        String text = "let x = " + written + "\nlet y = 3 cm\n";
        Diagnostic diagnostic = only(text);
        assertThat(diagnostic.code().id()).isEqualTo(code);
        assertThat(spanText(diagnostic, text)).isEqualTo(marked);
        assertThat(diagnostic.hints().get(0).phrase().toString()).isEqualTo(hint);
        assertThat(parse(text).value().orElseThrow().statements())
                .anyMatch(
                        s -> s instanceof Statement.Let let && let.name().text().equals("y"));
    }

    @Test
    void bothLineEndsAndAMarkAtTheBeginningMakeNoDifference() {
        String text =
                "gusset 1\n# cape\ndraft \"Cape\"\nlet a = 3 cm\npiece Cape {\n\tpoint p = origin\n}\nlet b = a +\n";
        List<String> plain = places(parse(text).diagnostics());
        assertThat(plain).containsExactly("SYN002 8:11");
        assertThat(places(parse(text.replace("\n", "\r\n")).diagnostics())).isEqualTo(plain);
        assertThat(places(parse(text.replace("\n", "\r")).diagnostics())).isEqualTo(plain);
        assertThat(parse(text.replace("\n", "\r\n")).value().orElseThrow().statements())
                .hasSize(4);
        assertThat(parse(text.replace("\n", "\r")).value().orElseThrow().statements())
                .hasSize(4);
        String marked = "\ufeff" + text;
        assertThat(places(parse(marked).diagnostics())).isEqualTo(plain);
        assertThat(parse(marked).value().orElseThrow().version()).contains(1);
        assertThat(spanText(only(marked), marked)).isEqualTo("+");
    }

    private static List<String> places(List<Diagnostic> diagnostics) {
        return diagnostics.stream()
                .map(d -> d.code().id() + " " + ((Span) d.place()).line() + ":" + ((Span) d.place()).column())
                .toList();
    }

    @Test
    void tabsNarrowAndOtherBlanksSeparate() {
        assertThat(sound("let\ta\t=\t3\u00a0cm\u202f+\u20031\u3000cm")).hasSize(1);
        assertThat(sound("")).isEmpty();
        assertThat(sound("\n\n  # only a remark")).isEmpty();
    }

    @Test
    void lettersBeyondTheFirstPlaneCountOneColumnAndTwoUnits() {
        String text =
                "let \ud835\udc9c\ud835\udc9c = 3 cm # \ud83e\uddf5\nlet b = \ud835\udc9c\ud835\udc9c ? 2 # \ud83e\uddf5\n";
        Diagnostic stray = only(text);
        assertThat(spanText(stray, text)).isEqualTo("?");
        assertThat(((Span) stray.place()).column()).isEqualTo(12);
        String note = "label \"\ud83e\uddf5 {a + } \ud83e\uddf5\"";
        Diagnostic hole = only("piece P { " + note + " }");
        assertThat(spanText(hole, "piece P { " + note + " }")).isEqualTo("+");
        Statement.Let let = (Statement.Let) sound("let e\u0301te\u0301 = 3 cm").get(0);
        assertThat(let.name().text()).isEqualTo("e\u0301te\u0301");
    }

    @Test
    void curlyQuotesAreToldAndReadAllTheSame() {
        Outcome<DraftTree> outcome = parse("draft \u201cCape\u201d\nlet a = 3 cm\n");
        assertThat(places(outcome.diagnostics())).containsExactly("SYN026 1:7");
        Statement.Draft draft =
                (Statement.Draft) outcome.value().orElseThrow().statements().get(0);
        assertThat(draft.title().plain()).isEqualTo("Cape");
        assertThat(places(parse("say \"a \u201cquoted\u201d word\"").diagnostics()))
                .containsExactly("SYN020 1:1");
    }

    @Test
    void aLostQuoteOrBraceStaysInItsLine() {
        String text = "piece P {\n say \"lost {a\n point p = origin\n say \"lost too\n point q = p\n}\nlet a = 3 cm\n";
        Outcome<DraftTree> outcome = parse(text);
        assertThat(places(outcome.diagnostics())).containsExactly("SYN007 2:6", "SYN007 4:6");
        Statement.Piece piece =
                (Statement.Piece) outcome.value().orElseThrow().statements().get(0);
        assertThat(piece.body()).filteredOn(s -> s instanceof Statement.Point).hasSize(2);
    }

    @Test
    void sixtyFourBracketsAreFineAndSixtyFiveAreToldOnce() {
        assertThat(value("(".repeat(64) + "3 cm" + ")".repeat(64))).isInstanceOf(Expr.Group.class);
        String deep = "let x = " + "(".repeat(65) + "3 cm" + ")".repeat(65) + "\nlet y = x\n";
        assertThat(only(deep).code().id()).isEqualTo("LIM002");
        assertThat(((Span) only(deep).place()).column()).isEqualTo(8 + 65);
        assertThat(parse(deep).value().orElseThrow().statements()).hasSize(2);
        String open = "let x = " + "(".repeat(5000) + "\nlet y = 3 cm\n";
        assertThat(places(parse(open).diagnostics())).containsExactly("LIM002 1:73");
        assertThat(parse(open).value().orElseThrow().statements()).hasSize(2);
        assertThat(places(parse("{".repeat(5000)).diagnostics())).containsExactly("LIM002 1:65");
        assertThat(places(
                        parse("piece P { " + "{ ".repeat(40) + "} ".repeat(41)).diagnostics()))
                .hasSize(1);
    }

    @Test
    void aSumOfFiveThousandTermsIsToldAndCostsNothingElse() {
        String text = "let sum = " + "1 cm + ".repeat(4999) + "1 cm\nlet y = sum\n";
        assertThat(places(parse(text).diagnostics())).containsExactly("LIM003 1:11");
        assertThat(Gusset.compile(Source.of("edge.gusset", text)).diagnostics())
                .filteredOn(Diagnostic::isError)
                .extracting(d -> d.code().id())
                .containsExactly("LIM003");
        for (String many : new String[] {
            "not ".repeat(5000) + "yes",
            "- ".repeat(5000) + "1",
            "1" + " if a else 1".repeat(5000),
            "a" + " or a".repeat(5000),
            "origin" + " down 1 cm".repeat(5000),
            "(1" + " + 1".repeat(150) + ")" + " + 1".repeat(150)
        }) {
            assertThat(places(parse("let x = " + many).diagnostics()))
                    .hasSize(1)
                    .allMatch(p -> p.startsWith("LIM003"));
        }
    }

    @Test
    void asManyOperatorsAsAreAllowedCompile() {
        String text = "draft \"Long\"\nlet sum = " + "1 cm + ".repeat(250) + "1 cm\n";
        assertThat(Gusset.compile(Source.of("edge.gusset", text)).diagnostics()).isEmpty();
    }

    @Test
    void aTextThatIsTooLongIsNotRead() {
        Budget small = Budget.defaults().withCharacters(20);
        Outcome<DraftTree> outcome =
                Parsing.parse(Source.of("edge.gusset", "let a = 3 cm # a remark that is long"), small);
        assertThat(outcome.value()).isEmpty();
        assertThat(outcome.diagnostics()).extracting(d -> d.code().id()).containsExactly("LIM001");
        assertThat(outcome.diagnostics().get(0).message()).isEqualTo("The text has 36 characters, and 20 are allowed.");
        assertThat(Parsing.parse(Source.of("edge.gusset", "let a = 3 cm"), small)
                        .diagnostics())
                .isEmpty();
    }

    /** Random letters of the language's alphabet, half a thousand texts; the seed is in the name of a failure. */
    @Test
    void noTextMakesReadingFail() {
        String[] parts = {
            "let ",
            "piece ",
            "step ",
            "point ",
            "A ",
            "b ",
            "= ",
            "{ ",
            "} ",
            "( ",
            ") ",
            "\"",
            "{",
            "}",
            "3 ",
            "1/2 ",
            "½ ",
            "cm ",
            "in ",
            "# ",
            "\n",
            "\n",
            "\\",
            "if ",
            "else ",
            "to ",
            "on ",
            "drop ",
            "end ",
            ", ",
            ". ",
            "\u201c",
            "\u2033 ",
            "\ud83e\uddf5",
            "\ud800",
            "turned up ",
            "change ",
            "allow ",
            "grain ",
            "\r",
            "\u0000",
            "- ",
            "not ",
            "strip ",
            "gusset 1 "
        };
        Random random = new Random(77);
        for (int i = 0; i < 500; i++) {
            StringBuilder text = new StringBuilder();
            int length = random.nextInt(120);
            for (int j = 0; j < length; j++) {
                text.append(parts[random.nextInt(parts.length)]);
            }
            try {
                assertThat(places(Gusset.compile(Source.of("edge.gusset", text.toString()))
                                .diagnostics()))
                        .isNotNull();
            } catch (RuntimeException | StackOverflowError e) {
                throw new AssertionError("seed 77, text " + i + ": " + text, e);
            }
        }
    }
}
