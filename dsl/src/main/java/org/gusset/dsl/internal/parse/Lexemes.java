package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.antlr.v4.runtime.Token;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Source;

/** A text as what is written in it, comments among it; only the blanks between are left out. */
public final class Lexemes {
    private static final Set<String> RESERVED = words(GussetLexer.DRAFT, GussetLexer.RAD);
    private static final Set<String> STATEMENTS = words(GussetLexer.DRAFT, GussetLexer.DROP);
    private static final Set<String> UNITS = words(GussetLexer.MM, GussetLexer.PERCENT);

    private Lexemes() {}

    /**
     * A word, number, string, sign or comment as written.
     *
     * @param text as written; a comment begins with {@code #}
     * @param span where, within one line
     */
    public record Lexeme(String text, Span span) {
        public int line() {
            return span.line();
        }

        public int start() {
            return span.start();
        }

        public int end() {
            return span.end();
        }

        public boolean isComment() {
            return text.startsWith("#");
        }
    }

    /** Everything in a text, in order. What no draft may hold is there too, as single signs. */
    public static List<Lexeme> of(Source source) {
        Spans spans = new Spans(source.name(), source.text());
        GussetLexer lexer = LexerText.lexer(source.text());
        List<Lexeme> lexemes = new ArrayList<>();
        for (Token token = lexer.nextToken(); token.getType() != Token.EOF; token = lexer.nextToken()) {
            lexemes.add(new Lexeme(token.getText(), spans.of(token)));
        }
        return List.copyOf(lexemes);
    }

    /** True for the words that may never be names: statement words, connecting words and units. */
    public static boolean isReserved(String word) {
        return RESERVED.contains(word);
    }

    /** True for the words that begin a statement; none of them may come to stand first on a line in the midst of another. */
    public static boolean isStatement(String word) {
        return STATEMENTS.contains(word);
    }

    public static boolean isUnit(String word) {
        return UNITS.contains(word);
    }

    private static Set<String> words(int first, int last) {
        Set<String> words = new TreeSet<>();
        for (int type = first; type <= last; type++) {
            String literal = GussetLexer.VOCABULARY.getLiteralName(type);
            words.add(literal.substring(1, literal.length() - 1));
        }
        return Collections.unmodifiableSet(words);
    }
}
