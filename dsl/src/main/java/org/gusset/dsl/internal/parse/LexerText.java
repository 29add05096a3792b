package org.gusset.dsl.internal.parse;

import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.misc.Interval;

/**
 * A text as the lexer sees it: every letter, mark and digit beyond ASCII looks like one that stands for its kind, so that the grammar need
 * not list the thousands of them, which took longer to load than most drafts take to draw. What a token holds is the text as written.
 */
final class LexerText implements CharStream {
    /** A letter, the feminine ordinal sign; stands for all of {@code \p{L}}. */
    private static final int LETTER = 0x00AA;
    /** A combining grave accent; stands for all of {@code \p{M}}. */
    private static final int MARK = 0x0300;
    /** An Arabic-Indic zero; stands for all of {@code \p{Nd}}. */
    private static final int DIGIT = 0x0660;

    private final CharStream text;

    private LexerText(CharStream text) {
        this.text = text;
    }

    /** The lexer of a text; it tells nobody of errors, for every character is some token. */
    static GussetLexer lexer(String text) {
        GussetLexer lexer = new GussetLexer(new LexerText(CharStreams.fromString(text)));
        lexer.removeErrorListeners();
        return lexer;
    }

    @Override
    public int LA(int offset) {
        int c = text.LA(offset);
        return c < 0x80 ? c : kind(c);
    }

    private static int kind(int c) {
        return switch (Character.getType(c)) {
            case Character.UPPERCASE_LETTER,
                    Character.LOWERCASE_LETTER,
                    Character.TITLECASE_LETTER,
                    Character.MODIFIER_LETTER,
                    Character.OTHER_LETTER -> LETTER;
            case Character.NON_SPACING_MARK, Character.COMBINING_SPACING_MARK, Character.ENCLOSING_MARK -> MARK;
            case Character.DECIMAL_DIGIT_NUMBER -> DIGIT;
            default -> c;
        };
    }

    @Override
    public String getText(Interval interval) {
        return text.getText(interval);
    }

    @Override
    public void consume() {
        text.consume();
    }

    @Override
    public int mark() {
        return text.mark();
    }

    @Override
    public void release(int marker) {
        text.release(marker);
    }

    @Override
    public int index() {
        return text.index();
    }

    @Override
    public void seek(int index) {
        text.seek(index);
    }

    @Override
    public int size() {
        return text.size();
    }

    @Override
    public String getSourceName() {
        return text.getSourceName();
    }
}
