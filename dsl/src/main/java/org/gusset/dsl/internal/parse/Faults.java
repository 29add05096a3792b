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
    private final int most;
    private int first = Integer.MAX_VALUE;

    /** @param most how many are gathered at the most; one more shows that there are others */
    Faults(int most) {
        this.most = most;
    }

    void tell(Diagnostic diagnostic) {
        if (diagnostic.place() instanceof Span span && lines.add(span.line())) {
            if (told.size() <= most) {
                told.add(diagnostic);
            }
            first = Math.min(first, span.start());
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

    /** True if a mistake was told that stands before this place. */
    boolean before(Span span) {
        return first < span.start();
    }

    List<Diagnostic> told() {
        List<Diagnostic> sorted = new ArrayList<>(told);
        sorted.sort((a, b) -> Integer.compare(((Span) a.place()).start(), ((Span) b.place()).start()));
        return sorted;
    }
}
