package org.gusset.core.draft;

import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;

/** A piece that could not be made sound, and why. */
public record RefusedPiece(String name, List<Diagnostic> diagnostics) {
    public RefusedPiece {
        diagnostics = List.copyOf(diagnostics);
    }
}
