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

    private final Home home;

    /** The names of a file. */
    Scope(Home home) {
        this.outer = null;
        this.piece = "";
        this.home = home;
    }

    /** The names of a piece, or the arguments of a rule that is called in a piece. */
    Scope(Scope outer, String piece) {
        this.outer = outer;
        this.piece = piece;
        this.home = outer.home;
    }

    /** The file that it belongs to. */
    Home home() {
        return home;
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

    /** Gives a symbol of another file a name here. */
    void share(String name, Symbol symbol) {
        symbols.put(name, symbol);
    }

    void put(Symbol symbol) {
        symbols.put(symbol.name(), symbol);
    }

    public Collection<Symbol> symbols() {
        return symbols.values();
    }

    /** Every name of its own. */
    Set<String> known() {
        return new LinkedHashSet<>(symbols.keySet());
    }
}
