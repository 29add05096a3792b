package org.gusset.dsl.report;

import org.gusset.core.diagnostic.Span;

/** The line of a source in which a span begins, and a line of marks below the span; of a long line only the part around it. */
final class Excerpt {
    private static final int WIDEST = 160;
    private static final int BEFORE = 60;
    private static final String CUT = "…";

    private Excerpt() {}

    /** Both lines behind an indent, each with a line break; nothing if the span does not lie in the text. */
    static String of(Span span, String text, String indent) {
        if (span.start() < 0 || span.end() < span.start() || span.start() > text.length()) {
            return "";
        }
        int from = lineStart(text, span.start());
        int to = lineEnd(text, span.start());
        int end = Math.min(span.end(), to);
        boolean runsOn = span.end() > to;
        while (runsOn && end > span.start() && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return marked(text.substring(from, to), span.start() - from, end - from, indent);
    }

    /** A text that stands alone, marked from end to end. */
    static String whole(String text, String indent) {
        String line = Columns.line(text).strip();
        return line.isEmpty() ? "" : marked(line, 0, line.length(), indent);
    }

    private static String marked(String line, int start, int end, String indent) {
        int first = Math.max(0, start - BEFORE);
        if (first > 0 && Character.isLowSurrogate(line.charAt(first))) {
            first--;
        }
        Columns shown = new Columns();
        if (first > 0) {
            shown.write(CUT.codePointAt(0));
        }
        int markedFrom = -1;
        int markedTo = -1;
        int at = first;
        while (at < line.length() && shown.width() < WIDEST) {
            if (at >= start && markedFrom < 0) {
                markedFrom = shown.width();
            }
            if (at >= end && markedTo < 0) {
                markedTo = shown.width();
            }
            int letter = line.codePointAt(at);
            shown.write(letter);
            at += Character.charCount(letter);
        }
        markedFrom = markedFrom < 0 ? shown.width() : markedFrom;
        markedTo = markedTo < 0 ? shown.width() : markedTo;
        String rest = at < line.length() ? CUT : "";
        String marks = "^" + "~".repeat(Math.max(0, markedTo - markedFrom - 1));
        return (indent + shown + rest).stripTrailing() + "\n" + indent + " ".repeat(markedFrom) + marks + "\n";
    }

    private static int lineStart(String text, int offset) {
        int at = offset;
        while (at > 0 && !isBreak(text, at - 1)) {
            at--;
        }
        return at;
    }

    private static int lineEnd(String text, int offset) {
        int at = offset;
        while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
            at++;
        }
        return at;
    }

    /** True if a line ends with the letter at an offset; a return before a line feed belongs to it. */
    private static boolean isBreak(String text, int at) {
        char letter = text.charAt(at);
        return letter == '\n' || (letter == '\r' && (at + 1 >= text.length() || text.charAt(at + 1) != '\n'));
    }
}
