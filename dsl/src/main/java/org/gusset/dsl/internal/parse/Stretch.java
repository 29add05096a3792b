package org.gusset.dsl.internal.parse;

import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.TokenSource;
import org.antlr.v4.runtime.TokenStream;
import org.antlr.v4.runtime.misc.Interval;

/** Some tokens in a row, all at hand, and the end behind them: what a parser needs of a stream and no more. */
final class Stretch implements TokenStream {
    private final CommonToken[] tokens;
    private int at;

    Stretch(List<CommonToken> some) {
        int count = some.size();
        this.tokens = some.toArray(new CommonToken[count + 1]);
        CommonToken end = new CommonToken(Token.EOF, "");
        int last = count == 0 ? 0 : tokens[count - 1].getStopIndex() + 1;
        end.setStartIndex(last);
        end.setStopIndex(last - 1);
        tokens[count] = end;
        for (int i = 0; i <= count; i++) {
            tokens[i].setTokenIndex(i);
        }
    }

    @Override
    public Token LT(int k) {
        int wanted = k > 0 ? at + k - 1 : at + k;
        return tokens[Math.max(0, Math.min(wanted, tokens.length - 1))];
    }

    @Override
    public int LA(int k) {
        return LT(k).getType();
    }

    @Override
    public void consume() {
        if (at == tokens.length - 1) {
            throw new IllegalStateException("cannot consume EOF");
        }
        at++;
    }

    @Override
    public int index() {
        return at;
    }

    @Override
    public void seek(int index) {
        at = Math.max(0, Math.min(index, tokens.length - 1));
    }

    @Override
    public int size() {
        return tokens.length;
    }

    @Override
    public Token get(int index) {
        return tokens[index];
    }

    @Override
    public int mark() {
        return -1;
    }

    @Override
    public void release(int marker) {
        // Everything is kept.
    }

    @Override
    public TokenSource getTokenSource() {
        return new ListTokenSource(List.of(tokens));
    }

    @Override
    public String getText(Interval interval) {
        StringBuilder text = new StringBuilder();
        for (int i = interval.a; i <= interval.b && tokens[i].getType() != Token.EOF; i++) {
            text.append(tokens[i].getText());
        }
        return text.toString();
    }

    @Override
    public String getText() {
        return getText(Interval.of(0, tokens.length - 1));
    }

    @Override
    public String getText(RuleContext context) {
        return getText(context.getSourceInterval());
    }

    @Override
    public String getText(Token first, Token last) {
        return getText(Interval.of(first.getTokenIndex(), last.getTokenIndex()));
    }

    @Override
    public String getSourceName() {
        return "tokens";
    }
}
