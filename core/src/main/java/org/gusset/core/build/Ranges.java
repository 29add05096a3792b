package org.gusset.core.build;

import java.util.Optional;
import org.gusset.core.check.InRange;
import org.jspecify.annotations.Nullable;

/** Checks of ranges. */
final class Ranges {
    private Ranges() {}

    static Optional<Term> check(Symbol symbol, @Nullable Value low, @Nullable Value high, boolean body, String howTo) {
        if (low == null && high == null) {
            return Optional.empty();
        }
        Inputs in = new Inputs(new Term.Ref(symbol));
        InRange check = new InRange(
                symbol.name(),
                body,
                howTo,
                symbol.kind().dimension(),
                low == null ? Optional.empty() : Optional.of(in.formula(low.term())),
                high == null ? Optional.empty() : Optional.of(in.formula(high.term())),
                symbol.place());
        return Optional.of(Term.Made.of(check, in.terms(), Kind.TRUTH, 3, symbol::words));
    }
}
