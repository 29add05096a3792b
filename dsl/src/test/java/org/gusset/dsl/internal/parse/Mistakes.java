package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.antlr.v4.runtime.Token;

/** Single mistakes put into a text at random, one token or the rest of one line at a time. */
final class Mistakes {
    /** What can go wrong with a token. */
    enum Kind {
        DELETED,
        DOUBLED,
        SWAPPED,
        CUT
    }

    /**
     * A text with one mistake.
     *
     * @param start where the texts begin to differ
     * @param end where in the sound text the mistake ends
     * @param longer by how much the text has grown
     */
    record Mistake(Kind kind, String text, int start, int end, int longer) {}

    private final String text;
    private final List<int[]> tokens = new ArrayList<>();

    Mistakes(String text) {
        this.text = text;
        GussetLexer lexer = LexerText.lexer(text);
        for (Token token = lexer.nextToken(); token.getType() != Token.EOF; token = lexer.nextToken()) {
            if (token.getChannel() == Token.DEFAULT_CHANNEL) {
                int start = text.offsetByCodePoints(0, token.getStartIndex());
                tokens.add(new int[] {start, start + token.getText().length()});
            }
        }
    }

    Mistake next(Kind kind, Random random) {
        while (true) {
            int at = random.nextInt(tokens.size());
            int[] token = tokens.get(at);
            String own = text.substring(token[0], token[1]);
            if (kind == Kind.DELETED) {
                return mistake(kind, token[0], token[1], "");
            } else if (kind == Kind.DOUBLED) {
                return mistake(kind, token[0], token[1], own + " " + own);
            } else if (kind == Kind.CUT) {
                int lineEnd = text.indexOf('\n', token[0]);
                int end = lineEnd < 0 ? text.length() : lineEnd;
                int from = token[0] + random.nextInt(own.length());
                if (from < end) {
                    return mistake(kind, from, end, "");
                }
            } else if (at + 1 < tokens.size()) {
                int[] next = tokens.get(at + 1);
                String between = text.substring(token[1], next[0]);
                String other = text.substring(next[0], next[1]);
                if (between.indexOf('\n') < 0 && !own.equals(other)) {
                    return mistake(kind, token[0], next[1], other + (between.isEmpty() ? " " : between) + own);
                }
            }
        }
    }

    private Mistake mistake(Kind kind, int start, int end, String instead) {
        String changed = text.substring(0, start) + instead + text.substring(end);
        return new Mistake(kind, changed, start, end, instead.length() - (end - start));
    }
}
