package org.gusset.dsl.internal.resolve;

import java.util.Set;

/**
 * Where an expression stands.
 *
 * @param scope the names that can be said
 * @param uses gathers the symbols that the expression needs
 * @param step the step of the piece, counted from 0; -1 outside steps
 * @param position where it stands among the statements of the piece: it sees what changes that stand above it have made
 */
record Context(Scope scope, Set<Symbol> uses, int step, int position) {
    /** Where everything is seen as it is in the end. */
    static final int LAST = Integer.MAX_VALUE;

    /** A place that sees the last of everything. */
    Context(Scope scope, Set<Symbol> uses, int step) {
        this(scope, uses, step, LAST);
    }

    /** The piece in whose frame shapes must lie; empty at file level. */
    String piece() {
        return scope.piece();
    }
}
