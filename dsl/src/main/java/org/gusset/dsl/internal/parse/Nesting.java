package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.gusset.core.diagnostic.Hint;

/**
 * Bounds how deep brackets and blocks nest, before any parsing, so that no text can exhaust the stack. Brackets that nest too deep
 * become one broken token; blocks that do end the reading.
 */
final class Nesting {
    private final int most;
    private final Spans spans;
    private final Faults faults;

    Nesting(int most, Spans spans, Faults faults) {
        this.most = most;
        this.spans = spans;
        this.faults = faults;
    }

    /** The tokens up to where blocks nest too deep, with brackets that do taken out. */
    List<CommonToken> bounded(List<CommonToken> tokens) {
        List<CommonToken> kept = new ArrayList<>();
        int blocks = 0;
        int i = 0;
        while (i < tokens.size()) {
            CommonToken token = tokens.get(i);
            int type = token.getType();
            int end = i + 1;
            if (type == GussetLexer.LBRACE && ++blocks > most) {
                tell(token);
                return kept;
            } else if (type == GussetLexer.RBRACE) {
                blocks = Math.max(0, blocks - 1);
            } else if (type == GussetLexer.LPAREN) {
                end = end(tokens, i);
                int tooDeep = tooDeep(tokens, i, end);
                if (tooDeep >= 0) {
                    tell(tokens.get(tooDeep));
                    kept.add(broken(token, tokens.get(end - 1)));
                } else {
                    kept.addAll(tokens.subList(i, end));
                }
                i = end;
                continue;
            }
            kept.add(token);
            i = end;
        }
        return kept;
    }

    private void tell(CommonToken token) {
        faults.tell(
                SyntaxCode.TOO_NESTED,
                spans.of(token),
                Hint.of("nesting.name", "Give the inner part a name of its own with `let`."),
                "most",
                most);
    }

    /** Where the brackets that open here nest too deep, or -1. */
    private int tooDeep(List<CommonToken> tokens, int from, int end) {
        int depth = 0;
        for (int i = from; i < end; i++) {
            int type = tokens.get(i).getType();
            depth += type == GussetLexer.LPAREN ? 1 : type == GussetLexer.RPAREN ? -1 : 0;
            if (depth > most) {
                return i;
            }
        }
        return -1;
    }

    /** The end of the brackets that open here: behind the last of them, or where the statement ends. */
    private static int end(List<CommonToken> tokens, int from) {
        int depth = 0;
        for (int i = from; i < tokens.size(); i++) {
            int type = tokens.get(i).getType();
            boolean first =
                    i > from && tokens.get(i).getLine() > tokens.get(i - 1).getLine();
            if (type == GussetLexer.LBRACE || type == GussetLexer.RBRACE || (first && Words.isStatement(type))) {
                return i;
            }
            depth += type == GussetLexer.LPAREN ? 1 : type == GussetLexer.RPAREN ? -1 : 0;
            if (depth == 0) {
                return i + 1;
            }
        }
        return tokens.size();
    }

    private static CommonToken broken(CommonToken first, CommonToken last) {
        CommonToken broken = new CommonToken(first);
        broken.setType(GussetLexer.BROKEN);
        broken.setText("(");
        broken.setStopIndex(last.getStopIndex());
        return broken;
    }
}
