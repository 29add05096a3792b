package org.gusset.workbench;

import java.util.function.Function;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.report.TextReport;

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

    /** One message with the line it is about, related places and hints, ending with a line break. */
    String report(Diagnostic diagnostic, Source source, Wording wording) {
        return TextReport.of(wording, source).one(diagnostic);
    }
}
