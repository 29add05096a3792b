package org.gusset.dsl.internal.parse;

import java.util.Arrays;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.gusset.core.diagnostic.Span;

/** Places in a source text. ANTLR counts code points; spans count UTF-16 units, and columns code points. */
final class Spans {
    private final String source;
    private final String text;

    /** The UTF-16 offset of each code point; empty where the two are the same. */
    private final int[] offsets;

    private final int count;
    private final int[] lineStarts;

    /** Places are asked for in about the order of the text, so the line that was found last is tried first. */
    private int last;

    Spans(String source, String text) {
        this.source = source;
        this.text = text;
        this.count = text.codePointCount(0, text.length());
        boolean same = count == text.length();
        this.offsets = same ? new int[0] : new int[count + 1];
        int[] starts = new int[16];
        int lines = 1;
        int offset = 0;
        for (int i = 0; i < count; i++) {
            int point = same ? text.charAt(i) : text.codePointAt(offset);
            if (!same) {
                offsets[i] = offset;
            }
            offset += Character.charCount(point);
            boolean returned = point == '\r' && (offset >= text.length() || text.charAt(offset) != '\n');
            if (point == '\n' || returned) {
                starts = lines < starts.length ? starts : Arrays.copyOf(starts, 2 * lines);
                starts[lines++] = i + 1;
            }
        }
        if (!same) {
            offsets[count] = offset;
        }
        this.lineStarts = Arrays.copyOf(starts, lines);
    }

    private int offset(int codePoint) {
        return offsets.length == 0 ? codePoint : offsets[codePoint];
    }

    /** The span of code points from start to end, the end exclusive. */
    Span of(int start, int end) {
        int from = Math.max(0, Math.min(start, count));
        int to = Math.max(from, Math.min(end, count));
        int line = line(from);
        int endLine = line(to);
        return new Span(
                source,
                offset(from),
                offset(to),
                line + 1,
                from - lineStarts[line] + 1,
                endLine + 1,
                to - lineStarts[endLine] + 1);
    }

    /** What stands there. */
    String text(Span span) {
        return text.substring(span.start(), span.end());
    }

    /** The end of the text. */
    Span end() {
        return of(count, count);
    }

    /** The empty span before another, where something may be put in. */
    static Span before(Span span) {
        return new Span(
                span.source(), span.start(), span.start(), span.line(), span.column(), span.line(), span.column());
    }

    /** The empty span behind another. */
    static Span behind(Span span) {
        return new Span(
                span.source(),
                span.end(),
                span.end(),
                span.endLine(),
                span.endColumn(),
                span.endLine(),
                span.endColumn());
    }

    /** The line, from 1, of a code point. */
    int lineOf(int codePoint) {
        return line(codePoint) + 1;
    }

    private int line(int codePoint) {
        int line = last;
        if (!within(line, codePoint) && !within(++line, codePoint)) {
            int found = Arrays.binarySearch(lineStarts, codePoint);
            line = found >= 0 ? found : -found - 2;
        }
        last = line;
        return line;
    }

    private boolean within(int line, int codePoint) {
        return line < lineStarts.length
                && codePoint >= lineStarts[line]
                && (line + 1 == lineStarts.length || codePoint < lineStarts[line + 1]);
    }

    Span of(Token token) {
        return token.getType() == Token.EOF
                ? of(token.getStartIndex(), token.getStartIndex())
                : of(token.getStartIndex(), token.getStopIndex() + 1);
    }

    Span of(Token first, Token last) {
        return of(first.getStartIndex(), Math.max(first.getStopIndex(), last.getStopIndex()) + 1);
    }

    Span of(ParserRuleContext context) {
        Token stop = context.getStop();
        return stop == null ? of(context.getStart()) : of(context.getStart(), stop);
    }
}
