package org.gusset.dsl.internal.resolve;

import java.util.Set;

/**
 * Where an expression stands.
 *
 * @param scope the names that can be said
 * @param uses gathers the symbols that the expression needs
 * @param step the step of the piece, counted from 0; -1 outside steps
 */
record Context(Scope scope, Set<Symbol> uses, int step) {
    /** The piece in whose frame shapes must lie; empty at file level. */
    String piece() {
        return scope.piece();
    }
}
