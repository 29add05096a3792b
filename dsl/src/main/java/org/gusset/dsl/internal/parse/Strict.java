package org.gusset.dsl.internal.parse;

import org.antlr.v4.runtime.DefaultErrorStrategy;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;

/** Stops at the first token that cannot stand where it does: repairs guess wrong more often than a drafter likes. */
final class Strict extends DefaultErrorStrategy {
    /** The first token that does not fit, and what could have stood there. */
    static final class Stop extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient Token found;
        private final transient IntervalSet expected;

        Stop(Token found, IntervalSet expected) {
            super(null, null, false, false);
            this.found = found;
            this.expected = expected;
        }

        Token found() {
            return found;
        }

        IntervalSet expected() {
            return expected;
        }
    }

    @Override
    public void recover(Parser parser, RecognitionException e) {
        throw new Stop(parser.getCurrentToken(), parser.getExpectedTokens());
    }

    @Override
    public void reportError(Parser parser, RecognitionException e) {
        throw new Stop(parser.getCurrentToken(), parser.getExpectedTokens());
    }

    @Override
    public Token recoverInline(Parser parser) {
        throw new Stop(parser.getCurrentToken(), parser.getExpectedTokens());
    }

    @Override
    public void sync(Parser parser) {
        IntervalSet next = parser.getInterpreter()
                .atn
                .nextTokens(parser.getInterpreter().atn.states.get(parser.getState()));
        if (!next.contains(Token.EPSILON)
                && !next.contains(parser.getInputStream().LA(1))) {
            throw new Stop(parser.getCurrentToken(), parser.getExpectedTokens());
        }
    }
}
