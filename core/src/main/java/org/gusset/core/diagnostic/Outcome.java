package org.gusset.core.diagnostic;

import java.util.List;
import java.util.Optional;

/** As much of a value as could be made, and what there is to say about it. */
public record Outcome<T>(Optional<T> value, List<Diagnostic> diagnostics) {
    public Outcome {
        diagnostics = List.copyOf(diagnostics);
    }

    public static <T> Outcome<T> of(T value, List<Diagnostic> diagnostics) {
        return new Outcome<>(Optional.of(value), diagnostics);
    }

    public static <T> Outcome<T> of(T value) {
        return of(value, List.of());
    }

    public static <T> Outcome<T> none(List<Diagnostic> diagnostics) {
        return new Outcome<>(Optional.empty(), diagnostics);
    }

    public boolean hasErrors() {
        return diagnostics.stream().anyMatch(Diagnostic::isError);
    }

    /**
     * The value, if there is one and no error was found.
     *
     * @throws GussetException with all diagnostics otherwise
     */
    public T orThrow() {
        if (value.isEmpty() || hasErrors()) {
            throw new GussetException(diagnostics);
        }
        return value.get();
    }
}
