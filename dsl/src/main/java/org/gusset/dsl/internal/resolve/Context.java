package org.gusset.dsl.internal.resolve;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Where an expression stands.
 *
 * @param scope the names that can be said
 * @param uses gathers the symbols that the expression needs
 * @param step the step of the piece, counted from 0; -1 outside steps
 * @param position where it stands among the statements of the piece: it sees what changes that stand above it have made
 * @param home the file in which it is written, whose names it means where the scope has none of its own
 */
record Context(Scope scope, Set<Symbol> uses, int step, int position, Home home) {
    /** Where everything is seen as it is in the end. */
    static final int LAST = Integer.MAX_VALUE;

    /** A place that sees the last of everything. */
    Context(Scope scope, Set<Symbol> uses, int step) {
        this(scope, uses, step, LAST, scope.home());
    }

    /** What a name means here. */
    @Nullable
    Symbol find(String name) {
        Symbol own = scope.own(name);
        return own != null ? own : home.scope().own(name);
    }

    /** Every name that can be said here. */
    Set<String> known() {
        Set<String> known = scope.known();
        known.addAll(home.scope().known());
        return known;
    }

    /** The piece in whose frame shapes must lie; empty at file level. */
    String piece() {
        return scope.piece();
    }
}
