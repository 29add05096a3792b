package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.antlr.v4.runtime.DefaultErrorStrategy;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.jspecify.annotations.Nullable;

/** Stops at the first token that cannot stand where it does: repairs guess wrong more often than a drafter likes. */
final class Strict extends DefaultErrorStrategy {
    private static final int MOST_PASSED = 64;

    /** The states of the optional parts before a token, which could have taken it. */
    private final int[] passed = new int[MOST_PASSED];

    /** What fits in each state, worked out when it is first asked for. */
    private final List<@Nullable BitSet> fitting = new ArrayList<>();

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

    /** The types of tokens that fit in a state, as bits: asked before every part of every form. */
    private BitSet fitting(Parser parser, int state) {
        while (fitting.size() <= state) {
            fitting.add(null);
        }
        BitSet known = fitting.get(state);
        if (known == null) {
            known = new BitSet();
            for (int type : next(parser, state).toArray()) {
                known.set(bit(type));
            }
            fitting.set(state, known);
        }
        return known;
    }

    /** The end of the text and "nothing" have negative types. */
    private static int bit(int type) {
        return type - Token.EPSILON;
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
        BitSet next = fitting(parser, parser.getState());
        int at = parser.getInputStream().index();
        if (at != passedAt) {
            count = 0;
            passedAt = at;
        }
        if (count < MOST_PASSED) {
            passed[count++] = parser.getState();
        }
        if (!next.get(bit(parser.getInputStream().LA(1))) && !next.get(bit(Token.EPSILON))) {
            throw stop(parser);
        }
    }
}
