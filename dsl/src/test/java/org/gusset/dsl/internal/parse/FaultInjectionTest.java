package org.gusset.dsl.internal.parse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.syntax.DraftTree;
import org.gusset.dsl.syntax.Statement;
import org.junit.jupiter.api.Test;

/** What one mistake does to the rest of a draft: nothing but a message. */
class FaultInjectionTest {
    private static final long SEED = 20_260_202;
    private static final int EACH = 600;
    private static final double KEPT = 0.99;
    private static final double FURTHER = 0.1;
    private static final int SHOWN = Integer.getInteger("faults.shown", 0);

    /** A statement without what may rightly change when a brace is lost: its end, if it is a block. */
    private record Mark(Class<?> kind, int start, String text) {}

    /** The sound drafts of the case folders, and those that are shipped. */
    private static List<String> drafts() throws IOException {
        List<String> drafts = new ArrayList<>();
        for (Path folder : ParseCasesTest.cases()) {
            if (ParseCasesTest.text(folder.resolve("diagnostics.txt")).equals("no errors\n")) {
                drafts.add(ParseCasesTest.text(folder.resolve("draft.gusset")));
            }
        }
        Path shipped = Path.of(System.getProperty("gusset.root", "..")).resolve("examples/drafts");
        try (Stream<Path> files = Files.list(shipped)) {
            files.filter(f -> f.toString().endsWith(".gusset"))
                    .sorted()
                    .forEach(f -> drafts.add(ParseCasesTest.text(f)));
        }
        return drafts;
    }

    private static Outcome<DraftTree> parse(String text) {
        return Parsing.parse(Source.of("draft.gusset", text));
    }

    private static List<Statement> flat(List<Statement> statements) {
        List<Statement> all = new ArrayList<>();
        for (Statement statement : statements) {
            all.add(statement);
            if (statement instanceof Statement.Piece piece) {
                all.addAll(flat(piece.body()));
            } else if (statement instanceof Statement.Strip strip) {
                all.addAll(flat(strip.body()));
            } else if (statement instanceof Statement.Step step) {
                all.addAll(flat(step.body()));
            }
        }
        return all;
    }

    private static Span own(Statement statement) {
        if (statement instanceof Statement.Piece piece) {
            return piece.head();
        } else if (statement instanceof Statement.Strip strip) {
            return strip.head();
        }
        return statement instanceof Statement.Step step ? step.head() : statement.span();
    }

    private static Set<Mark> marks(List<Statement> statements, String text, int from, int longer) {
        Set<Mark> marks = new HashSet<>();
        for (Statement statement : flat(statements)) {
            Span span = own(statement);
            if (span.start() - longer >= from) {
                marks.add(new Mark(
                        statement.getClass(), span.start() - longer, text.substring(span.start(), span.end())));
            }
        }
        return marks;
    }

    /** Where the first line begins that holds nothing of the statement with the mistake. */
    private static int laterFrom(List<Statement> sound, Mistakes.Mistake mistake, String text) {
        int last = mistake.end();
        for (Statement statement : flat(sound)) {
            Span span = own(statement);
            if (span.start() <= mistake.end() && span.end() >= mistake.start()) {
                last = Math.max(last, span.end());
            }
        }
        int lineEnd = text.indexOf('\n', last);
        return lineEnd < 0 ? text.length() : lineEnd + 1;
    }

    @Test
    void aMistakeCostsItsOwnStatementOnly() throws IOException {
        List<String> drafts = drafts();
        Random random = new Random(SEED);
        Map<Mistakes.Kind, Integer> kept = new EnumMap<>(Mistakes.Kind.class);
        Map<Integer, Integer> counts = new TreeMap<>();
        Map<String, String> lost = new LinkedHashMap<>();
        int told = 0;
        for (Mistakes.Kind kind : Mistakes.Kind.values()) {
            for (int i = 0; i < EACH; i++) {
                String text = drafts.get(random.nextInt(drafts.size()));
                List<Statement> sound = parse(text).value().orElseThrow().statements();
                Mistakes.Mistake mistake = new Mistakes(text).next(kind, random);
                Outcome<DraftTree> outcome = parse(mistake.text());
                assertOneMessageALine(outcome.diagnostics(), mistake);
                if (outcome.diagnostics().size() > 1 && counts.getOrDefault(2, 0) < SHOWN) {
                    System.out.println("  " + excerpt(mistake) + " -> " + outcome.diagnostics());
                }
                told += outcome.diagnostics().isEmpty() ? 0 : 1;
                counts.merge(outcome.diagnostics().size(), 1, Integer::sum);
                int from = laterFrom(sound, mistake, text);
                Set<Mark> later = marks(sound, text, from, 0);
                later.removeAll(
                        marks(outcome.value().orElseThrow().statements(), mistake.text(), from, mistake.longer()));
                if (later.isEmpty()) {
                    kept.merge(kind, 1, Integer::sum);
                } else {
                    lost.put(excerpt(mistake), later.iterator().next().text());
                }
            }
        }
        int all = EACH * Mistakes.Kind.values().length;
        int sum = kept.values().stream().mapToInt(n -> n).sum();
        System.out.printf(
                "%d single mistakes, seed %d: all later statements kept in %.2f %% %s; told %d; messages for each %s%n",
                all, SEED, 100.0 * sum / all, kept, told, counts);
        lost.entrySet().stream()
                .limit(SHOWN)
                .forEach(e -> System.out.println("  " + e.getKey() + " lost " + e.getValue()));
        assertThat((double) sum / all).as("lost: %s", lost).isGreaterThanOrEqualTo(KEPT);
    }

    private static String excerpt(Mistakes.Mistake mistake) {
        String text = mistake.text();
        int start = text.lastIndexOf('\n', Math.min(mistake.start(), text.length()) - 1) + 1;
        int end = text.indexOf('\n', mistake.start());
        return mistake.kind() + " [" + text.substring(start, end < 0 ? text.length() : end) + "]";
    }

    private static void assertOneMessageALine(List<Diagnostic> diagnostics, Mistakes.Mistake mistake) {
        Set<Integer> lines = new HashSet<>();
        for (Diagnostic diagnostic : diagnostics) {
            assertThat(lines.add(((Span) diagnostic.place()).line()))
                    .as("a second message in a line of %s: %s", excerpt(mistake), diagnostics)
                    .isTrue();
            assertThat(diagnostic.hints()).as("hints of %s", diagnostic).isNotEmpty();
        }
    }

    @Test
    void noMistakeMakesTheCompilerFail() throws IOException {
        List<String> drafts = drafts();
        Random random = new Random(SEED + 1);
        for (Mistakes.Kind kind : Mistakes.Kind.values()) {
            for (int i = 0; i < EACH / 3; i++) {
                String text = drafts.get(random.nextInt(drafts.size()));
                compile(new Mistakes(text).next(kind, random));
            }
        }
    }

    private static Outcome<Draft> compile(Mistakes.Mistake mistake) {
        try {
            return Gusset.compile(Source.of("draft.gusset", mistake.text()));
        } catch (RuntimeException | StackOverflowError e) {
            throw new AssertionError(excerpt(mistake), e);
        }
    }

    /** Of the drafts that compile, a line that cannot be read mostly draws no message elsewhere. */
    @Test
    void aLineThatCannotBeReadDrawsFewFurtherMessages() throws IOException {
        List<String> drafts = drafts().stream()
                .filter(t -> !Gusset.compile(Source.of("draft.gusset", t)).hasErrors())
                .filter(t -> t.contains("outline"))
                .toList();
        assertThat(drafts).hasSizeGreaterThanOrEqualTo(3);
        Random random = new Random(SEED + 2);
        int unread = 0;
        int further = 0;
        for (Mistakes.Kind kind : Mistakes.Kind.values()) {
            for (int i = 0; i < EACH / 3; i++) {
                String text = drafts.get(random.nextInt(drafts.size()));
                Mistakes.Mistake mistake = new Mistakes(text).next(kind, random);
                List<Diagnostic> errors = compile(mistake).diagnostics().stream()
                        .filter(Diagnostic::isError)
                        .toList();
                if (errors.stream().anyMatch(d -> d.code() instanceof SyntaxCode)) {
                    unread++;
                    further += errors.size() - 1;
                    if (errors.size() > 1 && further < SHOWN) {
                        System.out.println("  " + excerpt(mistake) + " -> " + errors);
                    }
                }
            }
        }
        System.out.printf(
                "%d lines that cannot be read: %.3f further messages for each%n", unread, 1.0 * further / unread);
        assertThat(1.0 * further / unread).isLessThan(FURTHER);
    }
}
