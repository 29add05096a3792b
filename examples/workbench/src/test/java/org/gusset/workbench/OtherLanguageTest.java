package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Drawing;
import org.gusset.core.json.DrawingJson;
import org.gusset.core.measure.LengthStyle;
import org.gusset.dsl.lint.Linter;
import org.gusset.dsl.report.TextReport;
import org.gusset.svg.Svg;
import org.gusset.svg.sheet.SheetOptions;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Nothing is said that a wording cannot say otherwise: with one that puts every template between two marks, no word of ours stands
 * outside them, and none is handed over within a fact. What may stand there is names, figures and what the draft itself says.
 */
class OtherLanguageTest {
    private static final char OPEN = '⟦';
    private static final char CLOSE = '⟧';
    private static final Wording MARKED = LengthStyle.CM.wording(phrase -> OPEN + phrase.english() + CLOSE);
    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");

    /** Units and what stands for itself: a code, a fingerprint, our own name. */
    private static final Set<String> OURS = Set.of("cm", "mm", "deg", "in", "gusset");

    /** All that the drafts and tables say, so that a word from there is no word of ours. */
    private static final String TEXTS = texts();

    private static String texts() {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(Fitted.EXAMPLES)) {
            for (Path file : files.filter(f -> f.toString().matches(".*/(drafts|measures)/.*\\.(gusset|csv)"))
                    .sorted()
                    .toList()) {
                all.append(Files.readString(file)).append('\n');
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return all.toString();
    }

    /** What stands outside all marks. */
    private static String outside(String text) {
        StringBuilder out = new StringBuilder();
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            depth += c == OPEN ? 1 : 0;
            if (depth == 0) {
                out.append(c);
            }
            if (c == CLOSE) {
                depth--;
                out.append(' ');
            }
        }
        assertThat(depth).as(text).isZero();
        return out.toString();
    }

    private static Set<String> words(String text) {
        Set<String> words = new TreeSet<>();
        Matcher word = WORD.matcher(text);
        while (word.find()) {
            words.add(word.group());
        }
        words.removeAll(OURS);
        return words;
    }

    /** Words that no draft has in a name or text of its own. */
    private static Set<String> ours(String text) {
        Set<String> words = words(text);
        words.removeIf(word -> Pattern.compile("(?<!\\p{L})" + word + "(?!\\p{L})")
                .matcher(NAMES)
                .find());
        return words;
    }

    /** The names, titles and texts of all drafts: what is quoted, and what has a name. */
    private static final String NAMES = names();

    private static String names() {
        StringBuilder names = new StringBuilder();
        Matcher quoted = Pattern.compile("\"[^\"\\n]*\"").matcher(TEXTS);
        while (quoted.find()) {
            names.append(quoted.group()).append('\n');
        }
        Matcher named = Pattern.compile(
                        "(?:piece|strip|seam|point|line|curve|arc|points|guide|let|choose|measure|cloth|dart|fit|unknown|finished|opening|use|out of|rule) +([^\"\\n]*)")
                .matcher(TEXTS);
        while (named.find()) {
            names.append(named.group(1).replace('_', ' ')).append('\n');
        }
        return names.append("Pip Thistlewick Maren Oddway Bartholo Grumthorpe").toString();
    }

    @Test
    void whatIsSaidOfShippedDrawingsGoesThroughTheWording() throws IOException {
        List<String> plain = new ArrayList<>();
        for (Map.Entry<String, Drawing> shipped : JsonDrawings.shipped().entrySet()) {
            if (!shipped.getKey().endsWith("Oddway")) {
                continue;
            }
            String name = shipped.getKey();
            said(JSON.std.mapFrom(DrawingJson.of(shipped.getValue(), MARKED)), name, plain);
            Diagnostics.check(name, shipped.getValue().diagnostics(), plain);
        }
        assertThat(plain).isEmpty();
    }

    @Test
    void whatIsSaidOfBrokenDrawingsGoesThroughTheWording() {
        List<String> plain = new ArrayList<>();
        JsonDrawings.brokenDrawings().forEach((name, told) -> Diagnostics.check(name, told, plain));
        assertThat(plain).isEmpty();
    }

    @Test
    void whatTheLinterSaysGoesThroughTheWording() {
        List<String> plain = new ArrayList<>();
        for (String draft : Fitted.drafts()) {
            DraftFile file = DraftFile.read(Fitted.draftFile(draft));
            Diagnostics.check(draft, Linter.lint(file.source()), plain);
        }
        assertThat(plain).isEmpty();
    }

    /** Sheets of all pieces: words in the order in which they stand, lines of one sentence one behind the other. */
    @Test
    void whatStandsOnSheetsGoesThroughTheWording() {
        List<String> plain = new ArrayList<>();
        for (Map.Entry<String, Drawing> shipped : JsonDrawings.shipped().entrySet()) {
            if (shipped.getKey().endsWith("Oddway")) {
                String svg =
                        Svg.sheet(shipped.getValue(), SheetOptions.defaults().withWording(MARKED));
                Matcher text = Pattern.compile("(?s)<(text|title|desc)\\b[^>]*>(.*?)</\\1>")
                        .matcher(svg);
                StringBuilder all = new StringBuilder();
                while (text.find()) {
                    all.append(text.group(2).replaceAll("<[^>]*>", " ")).append('\n');
                }
                assertThat(all).contains(String.valueOf(OPEN));
                Set<String> ours = ours(outside(all.toString()));
                if (!ours.isEmpty()) {
                    plain.add(shipped.getKey() + ": " + ours);
                }
            }
        }
        assertThat(plain).isEmpty();
    }

    /** Every sentence of a document: fields that hold one begin and end with a mark. */
    private static void said(@Nullable Object part, String at, List<String> plain) {
        if (part instanceof List<?> list) {
            list.forEach(one -> said(one, at, plain));
        } else if (part instanceof Map<?, ?> map) {
            map.forEach((key, value) -> {
                boolean sentences = Set.of("message", "words", "what", "labels").contains(String.valueOf(key))
                        && !map.containsKey("reversed");
                for (Object one : value instanceof List<?> list ? list : List.of(value == null ? "" : value)) {
                    if (sentences
                            && one instanceof String text
                            && !ours(outside(text)).isEmpty()) {
                        plain.add(at + " " + key + ": " + text);
                    }
                }
                said(value, at, plain);
            });
        }
    }

    /** Messages as text. */
    private static final class Diagnostics {
        private Diagnostics() {}

        static void check(String name, List<Diagnostic> diagnostics, List<String> plain) {
            String report = TextReport.of(MARKED).all(diagnostics);
            for (String line : report.lines().toList()) {
                // What the place of a message is called, and the cell that it shows, come from the host.
                boolean cell = line.startsWith("    ") && line.indexOf(OPEN) < 0;
                String rest =
                        outside(line).replaceAll("^\\s*\\S*:\\d+:\\d+:", "").replaceAll("\\b[A-Z]{3}\\d{3}\\b", "");
                if (!cell && !ours(rest).isEmpty()) {
                    plain.add(name + ": " + line);
                }
            }
            diagnostics.forEach(d -> facts(name + " " + d.code().id(), d.phrase(), plain));
            diagnostics.forEach(d ->
                    d.hints().forEach(h -> facts(name + " " + d.code().id() + " hint", h.phrase(), plain)));
        }

        /** Words that are handed over as they are must be the draft's. */
        private static void facts(String at, org.gusset.core.diagnostic.Phrase phrase, List<String> plain) {
            phrase.facts().forEach((key, fact) -> {
                if (fact instanceof org.gusset.core.diagnostic.Fact.Said said) {
                    facts(at, said.phrase(), plain);
                } else if (fact instanceof org.gusset.core.diagnostic.Fact.Words words) {
                    Set<String> ours = ours(words.text().replace('_', ' '));
                    if (!ours.isEmpty()) {
                        plain.add(at + " fact " + key + ": " + words.text());
                    }
                }
            });
        }
    }
}
