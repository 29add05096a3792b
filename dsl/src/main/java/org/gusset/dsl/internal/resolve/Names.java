package org.gusset.dsl.internal.resolve;

import java.util.Collection;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.diagnostic.Suggestions;

/** Hints about names. */
final class Names {
    private Names() {}

    /** The diagnostic with the known name that was probably meant, or with the few that there are. */
    static Diagnostic suggesting(Diagnostic diagnostic, String written, Collection<String> known, Span span) {
        Optional<String> meant = Suggestions.nearest(written, known);
        if (meant.isPresent()) {
            return diagnostic.with(Hint.of("name.meant", "Did you mean `{name}`?", "name", meant.get())
                    .replacing(span, meant.get()));
        }
        if (!known.isEmpty() && known.size() <= 5) {
            return diagnostic.with(Hint.of("name.known", "There is: {names}.", "names", String.join(", ", known)));
        }
        return diagnostic;
    }
}
