package org.gusset.dsl.internal.parse;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;

/**
 * Reserved words that a draft gives to something as a name. Each is told once, where it is given, and read as a name wherever one is
 * wanted, so that its uses stay quiet.
 */
final class Misnomers {
    private final Set<String> words = new LinkedHashSet<>();

    /** Finds them among the tokens of a file and tells of them. */
    Misnomers(List<CommonToken> tokens, Spans spans, Faults faults) {
        for (int i = 0; i + 2 < tokens.size(); i++) {
            CommonToken name = tokens.get(i + 1);
            boolean oneLine = name.getLine() == tokens.get(i).getLine();
            if (oneLine && Words.isReserved(name.getType()) && defines(tokens, i) && words.add(name.getText())) {
                tell(name, tokens.get(i).getType(), spans, faults);
            }
        }
    }

    private static boolean defines(List<CommonToken> tokens, int i) {
        int next = tokens.get(i + 2).getType();
        int before = i > 0 ? tokens.get(i - 1).getType() : Token.EOF;
        return switch (tokens.get(i).getType()) {
            case GussetLexer.LET,
                    GussetLexer.CHOOSE,
                    GussetLexer.FIT,
                    GussetLexer.SEAM,
                    GussetLexer.FINISHED,
                    GussetLexer.OPENING,
                    GussetLexer.POINT,
                    GussetLexer.POINTS,
                    GussetLexer.GUIDE,
                    GussetLexer.JOIN,
                    GussetLexer.DART -> next == GussetLexer.EQUALS;
            case GussetLexer.LINE, GussetLexer.CURVE, GussetLexer.ARC ->
                next == GussetLexer.EQUALS || (before == GussetLexer.RULE && next == GussetLexer.LPAREN);
            case GussetLexer.RULE -> next == GussetLexer.LPAREN;
            case GussetLexer.MEASURE, GussetLexer.UNKNOWN ->
                next == GussetLexer.FROM
                        || next == GussetLexer.ELSE
                        || next == GussetLexer.ALSO
                        || next == GussetLexer.STRING;
            case GussetLexer.CLOTH -> next == GussetLexer.WIDE;
            default -> false;
        };
    }

    /** Tells that a reserved word stands where a name belongs, as the name of what {@code head} begins. */
    static void tell(Token word, int head, Spans spans, Faults faults) {
        Span span = spans.of(word);
        String free = Words.freeName(word.getText(), head);
        faults.tell(
                SyntaxCode.RESERVED,
                span,
                Hint.of("name.free", "Call it `{name}`, for example.", "name", free)
                        .replacing(span, free),
                "word",
                word.getText(),
                "role",
                Words.role(word.getType()));
    }

    /**
     * Makes a name of the token at which reading stopped, if it is one of these words and a name is wanted there.
     *
     * @return whether it did, so that reading may be tried once more
     */
    boolean rename(Strict.Stop stop, List<CommonToken> tokens) {
        Token found = stop.found();
        int at = found.getType() == GussetLexer.NAME ? -1 : tokens.indexOf(found);
        if (at < 0 || !words.contains(found.getText()) || !stop.expected().contains(GussetLexer.NAME)) {
            return false;
        }
        CommonToken name = new CommonToken(found);
        name.setText(found.getText());
        name.setType(GussetLexer.NAME);
        tokens.set(at, name);
        return true;
    }
}
