package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Source;

/** Gathers diagnostics, each once: a statement that several pieces trace is read for each of them. */
final class Messages {
    private final Map<String, String> texts = new HashMap<>();
    private final Set<Diagnostic> told = new LinkedHashSet<>();
    private final Set<Place> places = new LinkedHashSet<>();
    private final int most;
    private int silent;

    /** @param most how many are gathered at the most; one more shows that there are others */
    Messages(int most) {
        this.most = most;
    }

    private record Place(Code code, Span span) {}

    /** Makes the text of a file known, so that messages can quote it. */
    void add(Source source) {
        texts.put(source.name(), source.text());
    }

    /** True if no further message is gathered, so that hints need not be sought. */
    boolean full() {
        return told.size() > most;
    }

    void tell(Diagnostic diagnostic) {
        if (silent == 0
                && !full()
                && (!(diagnostic.place() instanceof Span span) || places.add(new Place(diagnostic.code(), span)))) {
            told.add(diagnostic);
        }
    }

    void tell(Code code, Span span, Object... facts) {
        tell(Diagnostic.of(code, span, facts));
    }

    void tell(Code code, Span span, Hint hint, Object... facts) {
        tell(Diagnostic.of(code, span, facts).with(hint));
    }

    /** Until {@link #loud()}, nothing is gathered: what is read has been checked before. */
    void quiet() {
        silent++;
    }

    void loud() {
        silent--;
    }

    /** The source text of a span, on one line. */
    String text(Span span) {
        String text = texts.getOrDefault(span.source(), "");
        return span.end() > text.length()
                ? ""
                : text.substring(span.start(), span.end()).replaceAll("\\s+", " ");
    }

    List<Diagnostic> told() {
        return new ArrayList<>(told);
    }
}
