package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;

/** Gathers the mistakes of one reading: one for a line at the most, since the second mostly follows from the first. */
final class Faults {
    private final List<Diagnostic> told = new ArrayList<>();
    private final java.util.Set<Integer> lines = new java.util.HashSet<>();

    void tell(Diagnostic diagnostic) {
        if (diagnostic.place() instanceof Span span && lines.add(span.line())) {
            told.add(diagnostic);
        }
    }

    void tell(Code code, Span span, Object... facts) {
        tell(Diagnostic.of(code, span, facts));
    }

    void tell(Code code, Span span, Hint hint, Object... facts) {
        tell(Diagnostic.of(code, span, facts).with(hint));
    }

    /** True if a mistake was told in the lines of a span. */
    boolean in(Span span) {
        for (int line = span.line(); line <= span.endLine(); line++) {
            if (lines.contains(line)) {
                return true;
            }
        }
        return false;
    }

    boolean any() {
        return !told.isEmpty();
    }

    List<Diagnostic> told() {
        List<Diagnostic> sorted = new ArrayList<>(told);
        sorted.sort(java.util.Comparator.comparingInt(d -> ((Span) d.place()).start()));
        return sorted;
    }
}
