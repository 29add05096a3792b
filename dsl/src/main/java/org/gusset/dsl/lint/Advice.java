package org.gusset.dsl.lint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;

/** Gathers what is advised. */
final class Advice {
    private final List<Diagnostic> told = new ArrayList<>();

    void tell(LintCode code, Span span, Hint hint, Object... facts) {
        told.add(Diagnostic.of(code, span, facts).with(hint));
    }

    void tell(Diagnostic diagnostic) {
        told.add(diagnostic);
    }

    /** In the order of the text. */
    List<Diagnostic> told() {
        return told.stream()
                .sorted(Comparator.comparingInt(d -> d.place() instanceof Span span ? span.start() : -1))
                .toList();
    }
}
