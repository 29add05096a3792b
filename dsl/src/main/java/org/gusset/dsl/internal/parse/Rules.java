package org.gusset.dsl.internal.parse;

import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.atn.PredictionMode;

/** Applies single rules of the grammar to stretches of tokens; each stops at the first token that does not fit. */
final class Rules {
    private final Strict strict = new Strict();
    private final GussetParser parser = new GussetParser(new Stretch(List.of()));

    Rules() {
        parser.removeErrorListeners();
        parser.setErrorHandler(strict);
        parser.getInterpreter().setPredictionMode(PredictionMode.SLL);
    }

    /** The parser at the first of some tokens. */
    GussetParser over(List<CommonToken> tokens) {
        parser.setTokenStream(new Stretch(tokens));
        return parser;
    }

    /** How many tokens have been read. */
    int read() {
        return parser.getInputStream().index();
    }

    /**
     * Nothing but {@code last} may follow what has been read of some tokens.
     *
     * @throws Strict.Stop if something else does
     */
    void nothingMore(List<CommonToken> tokens, int last) {
        if (read() < tokens.size()) {
            throw strict.stop(parser, last);
        }
    }
}
