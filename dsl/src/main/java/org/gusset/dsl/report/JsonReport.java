package org.gusset.dsl.report;

import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.json.MessagesJson;

/** Diagnostics as JSON for programs, the twin of {@link TextReport}. What it holds is told at {@link MessagesJson}, which writes it. */
public final class JsonReport {
    private JsonReport() {}

    /** All messages, in English with lengths in centimetres. */
    public static String of(List<Diagnostic> diagnostics) {
        return MessagesJson.of(diagnostics);
    }

    /** All messages in other words. */
    public static String of(List<Diagnostic> diagnostics, Wording wording) {
        return MessagesJson.of(diagnostics, wording);
    }
}
