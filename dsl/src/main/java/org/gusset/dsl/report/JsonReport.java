package org.gusset.dsl.report;

import java.util.List;
import java.util.Map;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.diagnostic.Wording;

/**
 * Diagnostics as JSON for programs: an array with one object for each, in their order.
 *
 * <pre>
 * {"code": "NAM001", "severity": "error", "message": "...",
 *  "place": {"kind": "span", "source": "smock.gusset", "start": 210, "end": 217,
 *            "line": 12, "column": 15, "endLine": 12, "endColumn": 22},
 *  "related": [{"message": "...", "place": {...}}],
 *  "hints": [{"message": "...", "edit": {"at": {...}, "text": "shoulder"}}],
 *  "facts": {"name": {"kind": "words", "text": "sholder"}}}
 * </pre>
 *
 * <p>{@code start} and {@code end} count UTF-16 units from 0; lines and columns count from 1, columns in code points. Other places
 * are {@code {"kind": "cell", "table", "row", "column", "text"}}, {@code {"kind": "named", "name"}} and {@code {"kind": "nowhere"}}.
 * A hint that is no exact edit has {@code "edit": null}. Facts are {@code words} with {@code text}, {@code length} with {@code mm},
 * {@code area} with {@code squareMm}, {@code angle} with {@code degrees}, {@code number} with {@code value}; what is no number is
 * {@code null}.
 */
public final class JsonReport {
    private final JsonText json = new JsonText();
    private final Wording wording;

    private JsonReport(Wording wording) {
        this.wording = wording;
    }

    /** All messages, in English with lengths in centimetres. */
    public static String of(List<Diagnostic> diagnostics) {
        return of(diagnostics, Wording.english());
    }

    /** All messages in other words. */
    public static String of(List<Diagnostic> diagnostics, Wording wording) {
        JsonReport report = new JsonReport(wording);
        report.json.open('[');
        diagnostics.forEach(report::diagnostic);
        return report.json.close(']').toString();
    }

    private void diagnostic(Diagnostic diagnostic) {
        json.open('{');
        json.key("code").text(diagnostic.code().id());
        json.key("severity").text(diagnostic.severity().word());
        json.key("message").text(wording.say(diagnostic.phrase()));
        json.key("place");
        place(diagnostic.place());
        json.key("related").open('[');
        diagnostic.related().forEach(this::related);
        json.close(']').key("hints").open('[');
        diagnostic.hints().forEach(this::hint);
        json.close(']').key("facts");
        facts(diagnostic.phrase());
        json.close('}');
    }

    private void related(Related related) {
        json.open('{').key("message").text(wording.say(related.phrase())).key("place");
        place(related.place());
        json.close('}');
    }

    private void hint(Hint hint) {
        json.open('{').key("message").text(wording.say(hint.phrase())).key("edit");
        if (hint.edit().isPresent()) {
            json.open('{').key("at");
            place(hint.edit().get().at());
            json.key("text").text(hint.edit().get().text()).close('}');
        } else {
            json.none();
        }
        json.close('}');
    }

    private void place(Place place) {
        json.open('{').key("kind");
        if (place instanceof Span span) {
            json.text("span").key("source").text(span.source());
            json.key("start").number(span.start()).key("end").number(span.end());
            json.key("line").number(span.line()).key("column").number(span.column());
            json.key("endLine").number(span.endLine()).key("endColumn").number(span.endColumn());
        } else if (place instanceof Place.Cell cell) {
            json.text("cell").key("table").text(cell.table());
            json.key("row").number(cell.row()).key("column").number(cell.column());
            json.key("text").text(cell.text());
        } else if (place instanceof Place.Named named) {
            json.text("named").key("name").text(named.name());
        } else {
            json.text("nowhere");
        }
        json.close('}');
    }

    private void facts(Phrase phrase) {
        json.open('{');
        for (Map.Entry<String, Fact> entry : phrase.facts().entrySet()) {
            json.key(entry.getKey()).open('{').key("kind");
            fact(entry.getValue());
            json.close('}');
        }
        json.close('}');
    }

    private void fact(Fact fact) {
        if (fact instanceof Fact.Words words) {
            json.text("words").key("text").text(words.text());
        } else if (fact instanceof Fact.Length length) {
            json.text("length").key("mm").number(length.mm());
        } else if (fact instanceof Fact.Area area) {
            json.text("area").key("squareMm").number(area.squareMm());
        } else if (fact instanceof Fact.Angle angle) {
            json.text("angle").key("degrees").number(angle.degrees());
        } else if (fact instanceof Fact.Said said) {
            json.text("phrase").key("key").text(said.phrase().key());
            json.key("english").text(said.phrase().english()).key("facts");
            facts(said.phrase());
        } else {
            json.text("number").key("value").number(((Fact.Number) fact).value());
        }
    }
}
