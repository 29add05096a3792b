package org.gusset.workbench;

import java.util.function.Function;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;

/** What the commands ask of the language: text to draft, messages to text. */
final class Bench {
    private final Function<Source, Outcome<Draft>> compiler;

    Bench(Function<Source, Outcome<Draft>> compiler) {
        this.compiler = compiler;
    }

    static Bench standard() {
        return new Bench(Gusset::compile);
    }

    Outcome<Draft> compile(Source source) {
        return compiler.apply(source);
    }

    /** One message with its place, related places and hints, ending with a line break. */
    String report(Diagnostic diagnostic, Source source, Wording wording) {
        StringBuilder out = new StringBuilder();
        out.append(place(diagnostic.place()))
                .append(diagnostic.severity().word())
                .append(' ')
                .append(diagnostic.code().id())
                .append(": ")
                .append(wording.say(diagnostic.phrase()))
                .append('\n');
        for (Related related : diagnostic.related()) {
            out.append("  ")
                    .append(place(related.place()))
                    .append(wording.say(related.phrase()))
                    .append('\n');
        }
        for (Hint hint : diagnostic.hints()) {
            out.append("  hint: ").append(wording.say(hint.phrase())).append('\n');
        }
        return out.toString();
    }

    private static String place(Place place) {
        if (place instanceof Span span) {
            return span.source() + ":" + span.line() + ":" + span.column() + ": ";
        }
        if (place instanceof Place.Cell cell) {
            return cell.table() + ", row " + cell.row() + ", column " + cell.column() + ": ";
        }
        return place instanceof Place.Named named ? named.name() + ": " : "";
    }
}
