package org.gusset.dsl;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.internal.lower.Lowering;
import org.gusset.dsl.internal.parse.Continuing;
import org.gusset.dsl.internal.parse.Parsing;
import org.gusset.dsl.internal.resolve.CheckedDraft;
import org.gusset.dsl.internal.resolve.ResolveCode;
import org.gusset.dsl.internal.resolve.Resolver;
import org.gusset.dsl.names.Continuation;
import org.gusset.dsl.names.NameIndex;
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
     * it, and {@link Outcome#orThrow()} refuses a draft with errors. The text can use no others.
     */
    public static Outcome<Draft> compile(Source source) {
        return compile(source, Sources.none());
    }

    /**
     * The draft of a text that may use others. Each message stands in the text that it is about, those of the first text first.
     *
     * @param sources where the other texts come from; each is asked for as often as it is used, and read once
     */
    public static Outcome<Draft> compile(Source source, Sources sources) {
        return compile(source, sources, Settings.defaults());
    }

    /** The draft of a text that can use no others, compiled as the host wants it. */
    public static Outcome<Draft> compile(Source source, Settings settings) {
        return compile(source, Sources.none(), settings);
    }

    /**
     * The draft of a text that may use others, compiled as the host wants it. A draft with more pieces or nodes than its budget
     * allows is empty, and has the error that tells so.
     *
     * @param sources where the other texts come from; each is asked for as often as it is used, and read once
     */
    public static Outcome<Draft> compile(Source source, Sources sources, Settings settings) {
        Budget budget = settings.budget();
        Outcome<DraftTree> tree = Parsing.parse(source, budget);
        if (tree.value().isEmpty()) {
            return Outcome.none(bounded(tree.diagnostics(), budget.messages()));
        }
        Library library = new Library(sources, budget);
        library.add(source, tree);
        Outcome<CheckedDraft> checked = Resolver.resolve(tree.value().get(), source, library, budget);
        List<Diagnostic> diagnostics = new ArrayList<>(library.diagnostics());
        diagnostics.addAll(checked.diagnostics());
        Outcome<Draft> lowered = Lowering.lower(checked.value().orElseThrow(), library.text(), budget);
        diagnostics.addAll(lowered.diagnostics());
        diagnostics.sort((a, b) -> {
            int order = Integer.compare(library.order(a), library.order(b));
            return order != 0 ? order : Integer.compare(order(a), order(b));
        });
        return new Outcome<>(lowered.value(), bounded(diagnostics, budget.messages()));
    }

    /**
     * What the names of a text mean and where they are used, in it and in those that it uses: as much as is sound, however broken the
     * rest is. Nothing is told here; compiling does that.
     *
     * @param sources where the other texts come from; each is asked for as often as it is used, and read once
     */
    public static NameIndex names(Source source, Sources sources, Settings settings) {
        Budget budget = settings.budget();
        Outcome<DraftTree> tree = Parsing.parse(source, budget);
        if (tree.value().isEmpty()) {
            return new NameIndex(List.of(), List.of(), List.of(), Map.of(), List.of());
        }
        Library library = new Library(sources, budget);
        library.add(source, tree);
        return Resolver.index(tree.value().get(), source, library, budget);
    }

    /**
     * What can stand next behind words that are being written, by the grammar alone: for editors, which know besides what the names
     * mean.
     *
     * @param before the statement so far, and as much before it as one likes; not within a string or a comment
     * @param hole true if {@code before} is an expression that is filled into a string, and no statement
     * @return empty if no statement has these words
     */
    public static Optional<Continuation> continuation(String before, boolean hole) {
        return Continuing.of(before, hole);
    }

    private static List<Diagnostic> bounded(List<Diagnostic> diagnostics, int most) {
        if (diagnostics.size() <= most) {
            return diagnostics;
        }
        List<Diagnostic> kept = new ArrayList<>(diagnostics.subList(0, most));
        kept.add(Diagnostic.of(
                ResolveCode.TOO_MANY_MESSAGES, diagnostics.get(most).place(), "most", Fact.number(most)));
        return kept;
    }

    private static int order(Diagnostic diagnostic) {
        return diagnostic.place() instanceof Span span ? span.start() : -1;
    }
}
