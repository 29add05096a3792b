package org.gusset.svg.internal.write;

import java.util.ArrayDeque;
import java.util.Deque;

/** Writes XML 1.0 text, one element a line, with everything escaped that must be. */
final class Xml {
    private final StringBuilder out = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    private final Deque<String> open = new ArrayDeque<>();
    private boolean inTag;

    /** Begins an element; attributes may follow. */
    Xml begin(String name) {
        closeTag("\n");
        indent();
        out.append('<').append(name);
        open.push(name);
        inTag = true;
        return this;
    }

    Xml attribute(String name, String value) {
        out.append(' ').append(name).append("=\"");
        escape(value, true);
        out.append('"');
        return this;
    }

    Xml attribute(String name, double value) {
        return attribute(name, Numbers.text(value));
    }

    /** Ends the element that was begun last. */
    Xml end() {
        String name = open.pop();
        if (inTag) {
            out.append("/>\n");
            inTag = false;
        } else {
            indent();
            out.append("</").append(name).append(">\n");
        }
        return this;
    }

    /** Ends the element that was begun last with text as its whole content. */
    Xml end(String text) {
        closeTag("");
        escape(text, false);
        out.append("</").append(open.pop()).append(">\n");
        return this;
    }

    @Override
    public String toString() {
        return out.toString();
    }

    private void closeTag(String then) {
        if (inTag) {
            out.append('>').append(then);
            inTag = false;
        }
    }

    private void indent() {
        out.append("  ".repeat(open.size()));
    }

    /** Characters that XML 1.0 cannot hold become the replacement character; tabs and line breaks become blanks. */
    private void escape(String text, boolean quoted) {
        text.codePoints().forEach(c -> {
            if (c == '&') {
                out.append("&amp;");
            } else if (c == '<') {
                out.append("&lt;");
            } else if (c == '>') {
                out.append("&gt;");
            } else if (c == '"' && quoted) {
                out.append("&quot;");
            } else if (c == '\t' || c == '\n' || c == '\r') {
                out.append(' ');
            } else {
                out.appendCodePoint(allowed(c) ? c : 0xFFFD);
            }
        });
    }

    /** True for the characters of XML 1.0 (production 2, Char), less the controls between delete and no-break space. */
    private static boolean allowed(int c) {
        return (c >= 0x20 && c < 0x7F) || (c >= 0xA0 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
    }
}
