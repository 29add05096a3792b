package org.gusset.dsl.internal.parse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Budget;
import org.gusset.dsl.Source;
import org.gusset.dsl.syntax.DraftTree;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.Words;
import org.junit.jupiter.api.Test;

class ParsingTest {
    private static Outcome<DraftTree> parse(String text) {
        return Parsing.parse(Source.of("draft.gusset", text));
    }

    private static DraftTree sound(String text) {
        Outcome<DraftTree> outcome = parse(text);
        assertThat(outcome.diagnostics()).isEmpty();
        return outcome.value().orElseThrow();
    }

    private static Source source(Path folder) {
        return Source.of("draft.gusset", ParseCasesTest.text(folder.resolve("draft.gusset")));
    }

    private static List<String> codes(Outcome<DraftTree> outcome) {
        return outcome.diagnostics().stream().map(d -> d.code().id()).toList();
    }

    private static double millimetres(String amount) {
        Statement.Let let =
                (Statement.Let) sound("let a = " + amount).statements().get(0);
        return ((Expr.Amount) let.value()).quantity().value();
    }

    /** The inch is 25.4 mm, the foot 12 in, the yard 3 ft: international yard and pound agreement, 1959. */
    @Test
    void tapeFractionsAndCompoundLengthsAreOneNumber() {
        assertThat(millimetres("9 1/2 in")).isCloseTo(9.5 * 25.4, within(1e-12));
        assertThat(millimetres("9½ in")).isCloseTo(9.5 * 25.4, within(1e-12));
        assertThat(millimetres("9 ½ in")).isCloseTo(9.5 * 25.4, within(1e-12));
        assertThat(millimetres("1⅝ in")).isCloseTo(1.625 * 25.4, within(1e-12));
        assertThat(millimetres("5 ft 3 in")).isCloseTo(63 * 25.4, within(1e-12));
        assertThat(millimetres("1 yd 2 ft 3 1/2 in")).isCloseTo(63.5 * 25.4, within(1e-12));
        assertThat(millimetres("1 m 40 cm 5 mm")).isEqualTo(1405);
        assertThat(millimetres("3/8 in")).isCloseTo(3 / 8.0 * 25.4, within(1e-12));
    }

    @Test
    void aFractionIsOneNumberOnlyInFrontOfAUnit() {
        assertThat(quotients("let h = chest / 4")).isEqualTo(1);
        assertThat(quotients("let h = chest/4/2 cm")).isEqualTo(1);
        assertThat(quotients("let h = 1/3")).isEqualTo(1);
        assertThat(quotients("let h = chest / 4 / 2")).isEqualTo(2);
        assertThat(quotients("let h = 1/3 cm")).isZero();
    }

    private static int quotients(String text) {
        int[] count = {0};
        Trees.walk(sound(text), node -> count[0] += node instanceof Expr.Arithmetic ? 1 : 0);
        return count[0];
    }

    @Test
    void spansSayWhereThingsStand() {
        for (Path folder : ParseCasesTest.cases()) {
            Source source = source(folder);
            Outcome<DraftTree> outcome = Parsing.parse(source);
            Trees.walk(outcome.value().orElseThrow().statements(), node -> {
                // A block without a name of its own is named after its line, with blanks in it.
                if (node instanceof Name name && !name.text().contains(" ")) {
                    assertThat(at(source, name.span())).endsWith(name.text());
                } else if (node instanceof Expr expr) {
                    consistent(source, expr.span());
                } else if (node instanceof Statement statement) {
                    consistent(source, statement.span());
                }
            });
            for (Diagnostic diagnostic : outcome.diagnostics()) {
                consistent(source, (Span) diagnostic.place());
            }
        }
    }

    private static String at(Source source, Span span) {
        return source.text().substring(span.start(), span.end());
    }

    /** Line and column, counted anew from the offset. */
    private static void consistent(Source source, Span span) {
        String before = source.text().substring(0, span.start());
        int lineStart = before.lastIndexOf('\n') + 1;
        assertThat(span.line())
                .isEqualTo(1 + (int) before.chars().filter(c -> c == '\n').count());
        assertThat(span.column()).isEqualTo(1 + before.codePointCount(lineStart, before.length()));
        assertThat(span.end()).isGreaterThanOrEqualTo(span.start());
    }

    @Test
    void theExpressionOfAHoleStandsAtItsOwnPlace() {
        String text = "let a = 3 cm\nlabel_ = 2\npiece P {\n  say \"🧵 {a} of \\\"it\\\" {b + a}.\"\n}\n";
        List<Expr.Reference> holes = new ArrayList<>();
        Trees.walk(parse(text).value().orElseThrow().statements(), node -> {
            if (node instanceof Words words) {
                Trees.walk(words, part -> {
                    if (part instanceof Expr.Reference reference) {
                        holes.add(reference);
                    }
                });
            }
        });
        assertThat(holes).extracting(Expr.Reference::text).containsExactly("a", "b", "a");
        for (Expr.Reference hole : holes) {
            assertThat(at(Source.of("", text), hole.span())).isEqualTo(hole.text());
            assertThat(hole.span().line()).isEqualTo(4);
        }
        // `  say "🧵 {` is ten code points, the thread being one of them.
        assertThat(holes.get(0).span().column()).isEqualTo(11);
    }

    @Test
    void everyKindOfLineEndCountsTheSame() {
        for (String end : List.of("\n", "\r\n", "\r")) {
            Outcome<DraftTree> outcome =
                    parse("let a = 3 cm" + end + "let b =" + end + "let c = a b" + end + "let d = a" + end);
            assertThat(outcome.diagnostics())
                    .extracting(d -> ((Span) d.place()).line())
                    .containsExactly(2, 3);
            assertThat(outcome.value().orElseThrow().statements()).hasSize(4);
        }
    }

    /** An edit that a hint offers mends the draft, or at least what the message was about. */
    @Test
    void editsOfHintsMendWhatTheyAreFor() {
        int tried = 0;
        for (Path folder : ParseCasesTest.cases()) {
            Source source = source(folder);
            List<Diagnostic> before = Parsing.parse(source).diagnostics();
            for (Diagnostic diagnostic : before) {
                for (Hint hint : diagnostic.hints()) {
                    if (hint.edit().isPresent()) {
                        Hint.Edit edit = hint.edit().get();
                        String mended = source.text().substring(0, edit.at().start())
                                + edit.text()
                                + source.text().substring(edit.at().end());
                        List<Diagnostic> after =
                                Parsing.parse(Source.of("mended", mended)).diagnostics();
                        assertThat(after.stream().map(ParsingTest::placed))
                                .as("%s: %s, %s", folder.getFileName(), diagnostic, hint)
                                .doesNotContain(placed(diagnostic));
                        // A new name stands at the definition alone; the uses of the old one are told from then on.
                        if (diagnostic.code() != SyntaxCode.RESERVED) {
                            assertThat(after.size())
                                    .as("%s: %s, %s", folder.getFileName(), diagnostic, hint)
                                    .isLessThanOrEqualTo(before.size());
                        }
                        tried++;
                    }
                }
            }
        }
        assertThat(tried).isGreaterThan(60);
    }

    private static String placed(Diagnostic diagnostic) {
        Span span = (Span) diagnostic.place();
        return span.line() + ":" + span.column() + " " + diagnostic;
    }

    // ---- limits

    @Test
    void bracketsNestAsFarAsTheLimit() throws InterruptedException {
        String deep = "let a = " + "(".repeat(64) + "1" + ")".repeat(64);
        assertThat(codes(onSmallStack(deep))).isEmpty();
        assertThat(codes(onSmallStack("let a = " + "(".repeat(65) + "1" + ")".repeat(65))))
                .containsExactly("LIM002");
        assertThat(codes(onSmallStack("let a = " + "(".repeat(100_000)))).containsExactly("LIM002");
        assertThat(codes(onSmallStack("{".repeat(100_000)))).containsExactly("LIM002");
        assertThat(codes(onSmallStack("let a = " + "f(".repeat(64) + "1" + ")".repeat(64))))
                .isEmpty();
    }

    @Test
    void longExpressionsPassOrAreRefusedButNeverOverflow() throws InterruptedException {
        assertThat(codes(onSmallStack("let a = 1" + " + 1".repeat(250)))).isEmpty();
        for (String text : List.of(
                "let a = 1" + " + 1".repeat(5000),
                "let a = 1" + " * 1".repeat(5000),
                "let a = b" + " right 1 cm".repeat(5000),
                "let a = " + "-".repeat(5000) + "1",
                "check " + "not ".repeat(5000) + "a",
                "check a" + " or a".repeat(5000),
                "check a" + " and a".repeat(5000),
                "let a = " + "1 if b else ".repeat(5000) + "2",
                "let a = (" + "1 if b else ".repeat(5000) + "2)",
                "let a = " + ("(1" + " + 1".repeat(100) + " + ").repeat(60) + "1" + ")".repeat(60))) {
            Outcome<DraftTree> outcome = onSmallStack(text);
            assertThat(codes(outcome)).as(text.substring(0, 40)).containsExactly("LIM003");
            assertThat(depth(outcome.value().orElseThrow().statements().get(0))).isLessThan(2200);
        }
    }

    private static int depth(Object node) {
        int[] deepest = {0};
        Trees.walk(node, part -> deepest[0]++);
        return deepest[0];
    }

    /** Reads on a thread with half a megabyte of stack, as a host's pool may have. */
    private static Outcome<DraftTree> onSmallStack(String text) throws InterruptedException {
        List<Outcome<DraftTree>> read = new ArrayList<>();
        List<Throwable> thrown = new ArrayList<>();
        Thread thread = new Thread(null, () -> read.add(parse(text)), "small", 512 * 1024);
        thread.setUncaughtExceptionHandler((t, e) -> thrown.add(e));
        thread.start();
        thread.join();
        assertThat(thrown).isEmpty();
        return read.get(0);
    }

    @Test
    void aTextBeyondItsLimitIsRefusedUnread() {
        Outcome<DraftTree> outcome = Parsing.parse(
                Source.of("long", "let a = 1\n".repeat(20)), Budget.defaults().withCharacters(100));
        assertThat(outcome.diagnostics()).hasSize(1);
        assertThat(outcome.diagnostics().get(0).message())
                .isEqualTo("The text has 200 characters, and 100 are allowed.");
    }

    @Test
    void emptyTextsAndOddOnesAreDraftsToo() {
        for (String text : List.of("", "\ufeff", "\n\n", "# only words", "\ufeffgusset 1")) {
            sound(text);
        }
        for (String text :
                List.of("}", "{", "(", ")", "\"", "\\", ".", "piece", "step", "gusset", "\ud83e", "\u0000", "change")) {
            assertThat(parse(text).diagnostics()).as(text).hasSize(1);
        }
    }

    // ---- the drafts beside the project

    @Test
    void theSampleDraftsAreReadWithoutAMessage() throws IOException {
        Path samples = samples();
        assumeTrue(Files.isDirectory(samples), () -> "no sample drafts at " + samples);
        List<Path> drafts;
        try (Stream<Path> files = Files.list(samples)) {
            drafts =
                    files.filter(f -> f.toString().endsWith(".gusset")).sorted().toList();
        }
        assertThat(drafts).hasSize(8);
        for (Path draft : drafts) {
            assertThat(parse(Files.readString(draft)).diagnostics())
                    .as(draft.toString())
                    .isEmpty();
        }
    }

    private static Path samples() {
        String facts = System.getProperty("gusset.facts", "");
        Path shared = facts.isEmpty() || facts.startsWith("$")
                ? Path.of(System.getProperty("gusset.root", ".")).resolve("../shared/facts")
                : Path.of(facts);
        return shared.resolve("../design/samples").normalize();
    }
}
