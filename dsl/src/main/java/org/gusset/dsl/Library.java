package org.gusset.dsl;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.internal.parse.Parsing;
import org.gusset.dsl.internal.resolve.Loader;
import org.gusset.dsl.syntax.DraftTree;

/** The texts of a draft, each parsed once, in the order in which they were first asked for. */
final class Library implements Loader {
    private final Sources sources;
    private final Budget budget;
    private final Map<String, Read> read = new LinkedHashMap<>();
    private long characters;

    private record Read(Source source, Outcome<DraftTree> tree) {}

    Library(Sources sources, Budget budget) {
        this.sources = sources;
        this.budget = budget;
    }

    void add(Source source, Outcome<DraftTree> tree) {
        read.put(source.name(), new Read(source, tree));
        characters += Math.min(source.text().length(), budget.characters());
    }

    @Override
    public Answer find(String file, Source asking) {
        Sources.Answer answer = sources.find(file, asking);
        if (answer.source().isEmpty()) {
            return new Answer(Optional.empty(), answer.why(), false);
        }
        Source source = answer.source().get();
        if (!read.containsKey(source.name())
                && characters + source.text().length() > budget.characters()
                && source.text().length() <= budget.characters()) {
            return new Answer(Optional.empty(), "", true);
        }
        Read known = read.get(source.name());
        if (known == null) {
            known = new Read(source, Parsing.parse(source, budget));
            add(source, known.tree());
        }
        Source first = known.source();
        return known.tree()
                .value()
                .map(tree -> new Answer(Optional.of(new Loaded(first, tree)), "", false))
                .orElseGet(() -> new Answer(Optional.empty(), "it cannot be read", false));
    }

    /** What is wrong with the writing of the texts. */
    List<Diagnostic> diagnostics() {
        List<Diagnostic> all = new ArrayList<>();
        read.values().forEach(r -> all.addAll(r.tree().diagnostics()));
        return all;
    }

    /** The number of the text that a message is about. */
    int order(Diagnostic diagnostic) {
        if (diagnostic.place() instanceof Span span) {
            int number = List.copyOf(read.keySet()).indexOf(span.source());
            return number < 0 ? read.size() : number;
        }
        return 0;
    }

    /** All texts, for the fingerprint. */
    String text() {
        return read.values().stream().map(r -> r.source().text()).collect(Collectors.joining("\n"));
    }
}
