package org.gusset.editor;

import java.util.Arrays;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.gusset.core.diagnostic.Span;

/**
 * Places of a text as the protocol counts them: lines and UTF-16 units from 0. Offsets count UTF-16 units too, so that no letter has to
 * be looked at twice; what lies outside the text is taken for the nearest place within.
 */
final class Lines {
    private final int length;
    private final int[] starts;
    private final int[] ends;

    Lines(String text) {
        length = text.length();
        int[] from = new int[16];
        int[] to = new int[16];
        int count = 0;
        int start = 0;
        while (true) {
            int end = start;
            while (end < length && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
                end++;
            }
            if (count == from.length) {
                from = Arrays.copyOf(from, count * 2);
                to = Arrays.copyOf(to, count * 2);
            }
            from[count] = start;
            to[count] = end;
            count++;
            if (end == length) {
                break;
            }
            boolean both = text.charAt(end) == '\r' && end + 1 < length && text.charAt(end + 1) == '\n';
            start = end + (both ? 2 : 1);
        }
        starts = Arrays.copyOf(from, count);
        ends = Arrays.copyOf(to, count);
    }

    /** How many lines there are; a text without any letter has one. */
    int count() {
        return starts.length;
    }

    int offset(Position position) {
        int line = position.getLine();
        if (line < 0) {
            return 0;
        }
        if (line >= starts.length) {
            return length;
        }
        long offset = (long) starts[line] + Math.max(0, position.getCharacter());
        return (int) Math.min(offset, ends[line]);
    }

    Position position(int offset) {
        int within = Math.max(0, Math.min(offset, length));
        int found = Arrays.binarySearch(starts, within);
        int line = found >= 0 ? found : -found - 2;
        return new Position(line, within - starts[line]);
    }

    Range range(int start, int end) {
        return new Range(position(start), position(Math.max(start, end)));
    }

    Range range(Span span) {
        return range(span.start(), span.end());
    }

    /** The start of the line in which an offset lies. */
    int lineStart(int offset) {
        return starts[position(offset).getLine()];
    }
}
