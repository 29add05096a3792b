package org.gusset.workbench;

import java.util.List;
import java.util.function.BiFunction;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.gusset.dsl.report.TextReport;

/** What the commands ask of the language: text to draft, messages to text. */
final class Bench {
    private final BiFunction<Source, Sources, Outcome<Draft>> compiler;

    Bench(BiFunction<Source, Sources, Outcome<Draft>> compiler) {
        this.compiler = compiler;
    }

    static Bench standard() {
        return new Bench(Gusset::compile);
    }

    Outcome<Draft> compile(Source source, Sources sources) {
        return compiler.apply(source, sources);
    }

    /** One message with the line it is about, related places and hints, ending with a line break. */
    String report(Diagnostic diagnostic, List<Source> sources, Wording wording) {
        return TextReport.of(wording, sources.toArray(new Source[0])).one(diagnostic);
    }
}
