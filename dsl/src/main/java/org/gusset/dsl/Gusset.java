package org.gusset.dsl;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.internal.lower.Lowering;
import org.gusset.dsl.internal.parse.Parsing;
import org.gusset.dsl.internal.resolve.CheckedDraft;
import org.gusset.dsl.internal.resolve.Resolver;
import org.gusset.dsl.syntax.DraftTree;

/**
 * The language's front door.
 *
 * <pre>
 * text --parse--&gt; syntax tree --resolve--&gt; checked tree --lower--&gt; draft --evaluate--&gt; drawing --render--&gt; SVG
 * </pre>
 *
 * <p>Each arrow takes an immutable value and gives one, and touches nothing else.
 */
public final class Gusset {
    private Gusset() {}

    /**
     * The draft of a text, with every message about it. There is always a draft; what is broken in the text has no value in
     * it, and {@link Outcome#orThrow()} refuses a draft with errors.
     */
    public static Outcome<Draft> compile(Source source) {
        Outcome<DraftTree> tree = Parsing.parse(source);
        List<Diagnostic> diagnostics = new ArrayList<>(tree.diagnostics());
        if (tree.value().isEmpty()) {
            return Outcome.none(diagnostics);
        }
        Outcome<CheckedDraft> checked = Resolver.resolve(tree.value().get(), source);
        diagnostics.addAll(checked.diagnostics());
        diagnostics.sort(java.util.Comparator.comparingInt(Gusset::order));
        Draft draft = Lowering.lower(checked.value().orElseThrow(), source.text());
        return Outcome.of(draft, diagnostics);
    }

    private static int order(Diagnostic diagnostic) {
        return diagnostic.place() instanceof org.gusset.core.diagnostic.Span span ? span.start() : -1;
    }
}
