package org.gusset.core.build;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A cloth from which pieces are cut. */
public final class Cloth {
    private final Symbol symbol;
    private @Nullable Len length;
    private Optional<String> note = Optional.empty();

    Cloth(Symbol symbol) {
        this.symbol = symbol;
    }

    /** How long the cloth is, if it does not come from a bolt. */
    public Cloth length(Len length) {
        this.length = symbol.draft().own(length);
        return this;
    }

    /** What cloth it is. */
    public Cloth note(String words) {
        this.note = Optional.of(words);
        return this;
    }

    Symbol symbol() {
        return symbol;
    }

    Optional<Term> length() {
        return length == null ? Optional.empty() : Optional.of(length.term());
    }

    Optional<String> note() {
        return note;
    }

    @Override
    public String toString() {
        return symbol.name();
    }
}
