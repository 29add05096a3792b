package org.gusset.dsl.format;

import java.util.List;
import org.gusset.dsl.internal.parse.Lexemes.Lexeme;

/**
 * What begins on a line of its own: a statement, the head of a block, a closing brace, a comment.
 *
 * @param depth how many blocks are open around it
 * @param blank if an empty line stands before it
 * @param parts in order, comments among them
 */
record Row(Kind kind, int depth, boolean blank, List<Lexeme> parts) {
    enum Kind {
        STATEMENT,
        /** The head of a block with its opening brace. */
        HEAD,
        /** A whole block on one line. */
        BLOCK,
        CLOSE,
        COMMENT
    }

    Row {
        parts = List.copyOf(parts);
    }

    Lexeme first() {
        return parts.get(0);
    }

    /** True if a comment stands between its words, so that its lines are given by the author. */
    boolean interrupted() {
        for (int i = 0; i + 1 < parts.size(); i++) {
            if (parts.get(i).isComment()) {
                return true;
            }
        }
        return false;
    }
}
