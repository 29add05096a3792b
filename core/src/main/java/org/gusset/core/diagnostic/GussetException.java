package org.gusset.core.diagnostic;

import java.util.List;
import java.util.stream.Collectors;

/** Thrown by {@link Outcome#orThrow()} for hosts that prefer it; its message has every error, one a line. */
public final class GussetException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Diagnostic> diagnostics;

    public GussetException(List<Diagnostic> diagnostics) {
        super(diagnostics.stream().map(Diagnostic::toString).collect(Collectors.joining("\n")));
        this.diagnostics = List.copyOf(diagnostics);
    }

    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }
}
