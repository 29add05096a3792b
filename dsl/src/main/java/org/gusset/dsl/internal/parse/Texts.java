package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.antlr.v4.runtime.Token;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Words;

/** Strings to words with holes. A hole is read on its own at its own place, so that a fault in it stays in it. */
final class Texts {
    /** Stands for a character that cannot be shown (Unicode, chapter 23.8). */
    private static final int REPLACEMENT = 0xFFFD;

    private final Spans spans;
    private final Faults faults;
    private final int most;
    private final BiFunction<String, Integer, Expr> holes;

    /**
     * @param most how many letters a text may have
     * @param holes reads the text of a hole that begins at a code point of the source
     */
    Texts(Spans spans, Faults faults, int most, BiFunction<String, Integer, Expr> holes) {
        this.most = most;
        this.spans = spans;
        this.faults = faults;
        this.holes = holes;
    }

    /** Strings in a row, which join. */
    Words words(List<Token> strings) {
        List<Words.Part> parts = new ArrayList<>();
        Span span = spans.of(strings.get(0), strings.get(strings.size() - 1));
        long letters = 0;
        for (Token string : strings) {
            letters += string.getText().length() - 2L;
        }
        if (letters > most) {
            faults.tell(
                    SyntaxCode.WORDS_TOO_LONG,
                    span,
                    Hint.of("words.shorter", "Say it in fewer words, or in several texts."),
                    "length",
                    Fact.number(letters),
                    "most",
                    most);
            return new Words(List.of(new Words.Text("...")), span);
        }
        for (Token string : strings) {
            read(string, parts);
        }
        return new Words(parts, span);
    }

    private void read(Token string, List<Words.Part> parts) {
        int[] points = string.getText().codePoints().toArray();
        int start = string.getStartIndex();
        StringBuilder plain = new StringBuilder();
        int i = 1;
        int end = points.length - 1;
        while (i < end) {
            if (points[i] == '\\' && i + 1 < end) {
                int escaped = points[i + 1];
                if (escaped == '"' || escaped == '\\' || escaped == '{' || escaped == '}') {
                    plain.appendCodePoint(escaped);
                } else {
                    String text = "\\" + Character.toString(escaped);
                    faults.tell(
                            SyntaxCode.BAD_ESCAPE,
                            spans.of(start + i, start + i + 2),
                            Hint.of("escape.double", "For the stroke itself write it twice.")
                                    .replacing(spans.of(start + i, start + i + 2), "\\" + text),
                            "text",
                            text);
                }
                i += 2;
            } else if (points[i] == '{') {
                int close = i + 1;
                while (close < end && points[close] != '}') {
                    close++;
                }
                if (close >= end) {
                    faults.tell(
                            SyntaxCode.UNCLOSED_HOLE,
                            spans.of(start + i, start + i + 1),
                            Hint.of("hole.close", "Close it with `}`, or write `\\{` for the brace itself."));
                    break;
                }
                if (plain.length() > 0) {
                    parts.add(new Words.Text(plain.toString()));
                    plain.setLength(0);
                }
                String inside = new String(points, i + 1, close - i - 1);
                if (inside.isBlank()) {
                    faults.tell(
                            SyntaxCode.EMPTY_HOLE,
                            spans.of(start + i, start + close + 1),
                            Hint.of("hole.fill", "Put a value in, or write `\\{\\}` for the braces themselves."));
                } else {
                    parts.add(new Words.Hole(holes.apply(inside, start + i + 1)));
                }
                i = close + 1;
            } else {
                plain.appendCodePoint(shown(points[i]));
                i++;
            }
        }
        if (plain.length() > 0) {
            parts.add(new Words.Text(plain.toString()));
        }
    }

    /** What cannot be seen would do something else where it is printed: move about on a terminal, or break a line of a list. */
    private static int shown(int point) {
        return point == '\t' ? ' ' : Character.isISOControl(point) ? REPLACEMENT : point;
    }
}
