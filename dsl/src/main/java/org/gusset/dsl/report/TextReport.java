package org.gusset.dsl.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.diagnostic.Severity;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.diagnostic.Wording;
import org.gusset.dsl.Source;

/**
 * Diagnostics as text for people:
 *
 * <pre>
 * smock.gusset:12:15: error NAM001: There is nothing called `sholder` here.
 *     line  side = sholder to tip
 *                  ^~~~~~~
 *   hint: Did you mean `shoulder`?
 * 1 error
 * </pre>
 *
 * <p>Of a span that runs over several lines the first is shown and marked to its end. Tabs are shown as blanks, letters that take
 * two columns get two marks, and nothing that a source or a table holds can steer the terminal.
 */
public final class TextReport {
    private static final String INDENT = "    ";

    private final Map<String, String> texts;
    private final Wording wording;

    private TextReport(Map<String, String> texts, Wording wording) {
        this.texts = texts;
        this.wording = wording;
    }

    /** A report of messages about these sources; a message about another is shown without its line. */
    public static TextReport of(Wording wording, Source... sources) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (Source source : sources) {
            texts.put(source.name(), source.text());
        }
        return new TextReport(texts, wording);
    }

    /** A report in English with lengths in centimetres. */
    public static TextReport of(Source... sources) {
        return of(Wording.english(), sources);
    }

    /** All messages in their order, and a last line that counts them. Every line ends with a line feed. */
    public String all(List<Diagnostic> diagnostics) {
        StringBuilder out = new StringBuilder();
        for (Diagnostic diagnostic : diagnostics) {
            out.append(one(diagnostic));
        }
        return out.append(summary(diagnostics, wording)).append('\n').toString();
    }

    /** One message with the line it is about, its related places and its hints. */
    public String one(Diagnostic diagnostic) {
        StringBuilder out = new StringBuilder();
        String what = word(diagnostic.severity()) + " " + diagnostic.code().id() + ": ";
        entry(out, "", diagnostic.place(), what, diagnostic.phrase());
        for (Related related : diagnostic.related()) {
            entry(out, "  ", related.place(), word(Severity.NOTE) + ": ", related.phrase());
        }
        for (Hint hint : diagnostic.hints()) {
            out.append("  ")
                    .append(said(Phrase.of("report.hint", "hint: {hint}", "hint", hint.phrase())))
                    .append('\n');
        }
        return out.toString();
    }

    private void entry(StringBuilder out, String indent, Place place, String what, Phrase phrase) {
        out.append(indent).append(head(place)).append(what).append(said(phrase)).append('\n');
        if (place instanceof Span span) {
            String text = texts.get(span.source());
            if (text != null) {
                out.append(Excerpt.of(span, text, indent + INDENT));
            }
        } else if (place instanceof Place.Cell cell) {
            out.append(Excerpt.whole(cell.text(), indent + INDENT));
        }
    }

    private String said(Phrase phrase) {
        return Columns.line(wording.say(phrase));
    }

    private String word(Severity severity) {
        return said(Phrase.of("report." + severity.word(), severity.word()));
    }

    private String head(Place place) {
        if (place instanceof Span span) {
            return Columns.line(span.source()) + ":" + span.line() + ":" + span.column() + ": ";
        } else if (place instanceof Place.Cell cell) {
            return said(Phrase.of(
                            "report.cell",
                            "{table}, row {row}, column {column}",
                            "table",
                            cell.table(),
                            "row",
                            Long.toString(cell.row()),
                            "column",
                            Integer.toString(cell.column())))
                    + ": ";
        }
        return place instanceof Place.Named named ? Columns.line(named.name()) + ": " : "";
    }

    /** How many of each weight there are: {@code 2 errors, 1 warning}; {@code no errors} if there is none at all. */
    public static String summary(List<Diagnostic> diagnostics) {
        return summary(diagnostics, Wording.english());
    }

    /** The same in other words. */
    public static String summary(List<Diagnostic> diagnostics, Wording wording) {
        List<String> parts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            long count =
                    diagnostics.stream().filter(d -> d.severity() == severity).count();
            if (count > 0) {
                String word = severity.word();
                parts.add(wording.say(
                        count == 1
                                ? Phrase.of("report.one-" + word, "1 " + word)
                                : Phrase.of(
                                        "report.several-" + word,
                                        "{count} " + word + "s",
                                        "count",
                                        Long.toString(count))));
            }
        }
        return parts.isEmpty() ? wording.say(Phrase.of("report.no-errors", "no errors")) : String.join(", ", parts);
    }
}
