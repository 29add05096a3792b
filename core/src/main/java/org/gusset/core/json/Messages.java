package org.gusset.core.json;

import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.diagnostic.Wording;

/** Writes messages and places. */
final class Messages {
    private final JsonText json;
    private final Wording wording;
    private final Amounts amounts;

    Messages(JsonText json, Wording wording) {
        this.json = json;
        this.wording = wording;
        this.amounts = new Amounts(json);
    }

    void all(List<Diagnostic> diagnostics) {
        json.open('[');
        diagnostics.forEach(this::diagnostic);
        json.close(']');
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
        amounts.facts(diagnostic.phrase());
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

    void place(Place place) {
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
}
