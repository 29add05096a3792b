package org.gusset.fuzz;

import com.fasterxml.jackson.jr.ob.JSON;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Source;
import org.gusset.dsl.report.JsonReport;
import org.gusset.dsl.report.TextReport;

/** What must hold of messages and of JSON. */
final class Judge {
    private static final Schema DRAWING = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Seeds.read("docs/reference/drawing.schema.json"), InputFormat.JSON);

    private Judge() {}

    /** Every message can be read, in both forms, and its places lie within the texts. */
    static void messages(List<Diagnostic> diagnostics, Source... sources) {
        Map<String, String> texts = new TreeMap<>(Seeds.SHIPPED);
        for (Source source : sources) {
            texts.put(source.name(), source.text());
        }
        for (Diagnostic diagnostic : diagnostics) {
            place(diagnostic.place(), texts, diagnostic);
            for (Related related : diagnostic.related()) {
                place(related.place(), texts, diagnostic);
            }
            for (Hint hint : diagnostic.hints()) {
                hint.edit().ifPresent(edit -> place(edit.at(), texts, diagnostic));
            }
            Must.hold(!diagnostic.message().isBlank(), () -> "a message without words: " + diagnostic.code());
        }
        String report = TextReport.of(sources).all(diagnostics);
        report.codePoints()
                .forEach(c -> Must.hold(
                        c == '\n' || !Character.isISOControl(c),
                        () -> "a control character reaches the terminal: " + Integer.toHexString(c)));
        json(JsonReport.of(diagnostics));
    }

    private static void place(Place place, Map<String, String> texts, Diagnostic of) {
        if (place instanceof Span span) {
            String text = texts.get(span.source());
            Must.hold(
                    text != null
                            && 0 <= span.start()
                            && span.start() <= span.end()
                            && span.end() <= text.length()
                            && span.line() >= 1
                            && span.column() >= 1
                            && span.endLine() >= span.line(),
                    () -> "a place outside the text: " + span + " of " + of);
        }
    }

    /** The text is JSON, by a reader that knows nothing of us. */
    static void json(String json) {
        try {
            JSON.std.anyFrom(json);
        } catch (IOException e) {
            throw new AssertionError("no JSON: " + e.getMessage() + "\n" + json, e);
        }
        json.chars().forEach(c -> Must.hold(c != '<', () -> "a tag could stand in the JSON: " + json));
    }

    /** The text is the JSON of a drawing. */
    static void drawingJson(String json) {
        json(json);
        List<String> wrong = DRAWING.validate(json, InputFormat.JSON).stream()
                .map(e -> e.getInstanceLocation() + " " + e.getMessage())
                .toList();
        Must.hold(wrong.isEmpty(), () -> "not what the schema says: " + wrong + "\n" + json);
    }
}
