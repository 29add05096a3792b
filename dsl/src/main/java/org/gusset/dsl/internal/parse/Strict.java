package org.gusset.dsl.internal.parse;

import org.antlr.v4.runtime.DefaultErrorStrategy;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;

/** Stops at the first token that cannot stand where it does: repairs guess wrong more often than a drafter likes. */
final class Strict extends DefaultErrorStrategy {
    private static final int MOST_PASSED = 64;

    /** The states of the optional parts before a token, which could have taken it. */
    private final int[] passed = new int[MOST_PASSED];

    private int count;
    private int passedAt = -1;

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

    /** Reading stops at the parser's next token, where {@code last} could have stood too. */
    Stop stop(Parser parser, int last) {
        IntervalSet expected = new IntervalSet();
        if (passedAt == parser.getInputStream().index()) {
            for (int i = 0; i < count; i++) {
                expected.addAll(next(parser, passed[i]));
            }
        }
        expected.remove(Token.EPSILON);
        expected.add(last);
        return new Stop(parser.getCurrentToken(), expected);
    }

    private Stop stop(Parser parser) {
        Stop stop = stop(parser, Token.EPSILON);
        stop.expected.addAll(parser.getExpectedTokens());
        stop.expected.remove(Token.EPSILON);
        return stop;
    }

    private static IntervalSet next(Parser parser, int state) {
        return parser.getInterpreter()
                .atn
                .nextTokens(parser.getInterpreter().atn.states.get(state));
    }

    @Override
    public void reset(Parser parser) {
        super.reset(parser);
        passedAt = -1;
    }

    @Override
    public void recover(Parser parser, RecognitionException e) {
        throw stop(parser);
    }

    @Override
    public void reportError(Parser parser, RecognitionException e) {
        throw stop(parser);
    }

    @Override
    public Token recoverInline(Parser parser) {
        throw stop(parser);
    }

    @Override
    public void sync(Parser parser) {
        IntervalSet next = next(parser, parser.getState());
        int at = parser.getInputStream().index();
        if (at != passedAt) {
            count = 0;
            passedAt = at;
        }
        if (count < MOST_PASSED) {
            passed[count++] = parser.getState();
        }
        if (!next.contains(parser.getInputStream().LA(1)) && !next.contains(Token.EPSILON)) {
            throw stop(parser);
        }
    }
}
