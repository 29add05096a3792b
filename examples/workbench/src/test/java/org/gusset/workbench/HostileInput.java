package org.gusset.workbench;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.gusset.core.diagnostic.Diagnostic;

/**
 * Something that a stranger might hand in, and what comes of it.
 *
 * @param what what it is, as the page on safety tells it
 * @param gets the codes of all errors that it gets, in order, each once; words where there is no code
 * @param tried hands it in, and gives what came of it
 */
record HostileInput(String what, String gets, Supplier<String> tried) {
    /** The codes of the errors among messages, each once and linked to its page. */
    static String errors(List<Diagnostic> diagnostics) {
        String codes = diagnostics.stream()
                .filter(Diagnostic::isError)
                .map(d -> d.code().id())
                .distinct()
                .sorted()
                .map(HostileInput::page)
                .collect(Collectors.joining(", "));
        return codes.isEmpty() ? "drawn" : codes;
    }

    /** Codes as the page on safety links them. */
    static String page(String code) {
        return "[" + code + "](../diagnostics/" + code + ".md)";
    }
}
