package org.gusset.dsl.internal.resolve;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Names of a file, of a piece, or of a rule's arguments. */
public final class Scope {
    private final @Nullable Scope outer;
    private final String piece;
    private final Map<String, Symbol> symbols = new LinkedHashMap<>();

    Scope(@Nullable Scope outer, String piece) {
        this.outer = outer;
        this.piece = piece;
    }

    /** The piece whose frame holds; empty for the file. */
    public String piece() {
        return piece;
    }

    @Nullable
    Symbol own(String name) {
        return symbols.get(name);
    }

    @Nullable
    Symbol find(String name) {
        Symbol own = symbols.get(name);
        return own != null || outer == null ? own : outer.find(name);
    }

    void put(Symbol symbol) {
        symbols.put(symbol.name(), symbol);
    }

    public Collection<Symbol> symbols() {
        return symbols.values();
    }

    /** Every name that can be said here. */
    Set<String> known() {
        Set<String> names = new LinkedHashSet<>(symbols.keySet());
        if (outer != null) {
            names.addAll(outer.known());
        }
        return names;
    }
}
