package org.gusset.svg.internal.write;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.gusset.core.geometry.Path;

/** Writes XML 1.0 text, one element a line, with everything escaped that must be. */
final class Xml {
    /** Most sheets of a garment fit into it. */
    private static final int ROOM = 1 << 15;

    /** The marks that must be escaped, each the bit of its code. */
    private static final long MARKS = 1L << '&' | 1L << '<' | 1L << '>' | 1L << '"';

    private static final String BLANKS = "                ";

    private final StringBuilder out;
    private final Deque<String> open = new ArrayDeque<>();
    private boolean inTag;

    private Xml(StringBuilder out) {
        this.out = out;
    }

    /** A document. */
    static Xml document() {
        return new Xml(new StringBuilder(ROOM).append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"));
    }

    /** Attributes alone, to be written into many elements by {@link #attributes(String)}. */
    static Xml attributes() {
        return new Xml(new StringBuilder());
    }

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

    /** An attribute whose value is known to hold nothing that must be escaped: a word of the format, a class, a colour. */
    Xml word(String name, String value) {
        out.append(' ').append(name).append("=\"").append(value).append('"');
        return this;
    }

    /** Attributes that were put together before. */
    Xml attributes(String written) {
        out.append(written);
        return this;
    }

    Xml attribute(String name, double value) {
        out.append(' ').append(name).append("=\"");
        Numbers.append(out, value);
        out.append('"');
        return this;
    }

    /** An attribute of numbers with blanks between them. */
    Xml attribute(String name, List<Double> values) {
        out.append(' ').append(name).append("=\"");
        for (int i = 0; i < values.size(); i++) {
            if (i > 0) {
                out.append(' ');
            }
            Numbers.append(out, values.get(i));
        }
        out.append('"');
        return this;
    }

    /** An attribute of path data. */
    Xml attribute(String name, Path path) {
        out.append(' ').append(name).append("=\"");
        PathData.append(out, path);
        out.append('"');
        return this;
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
        int left = 2 * open.size();
        for (; left > BLANKS.length(); left -= BLANKS.length()) {
            out.append(BLANKS);
        }
        out.append(BLANKS, 0, left);
    }

    /** Characters that XML 1.0 cannot hold become the replacement character; tabs and line breaks become blanks. */
    private void escape(String text, boolean quoted) {
        int plain = 0;
        while (plain < text.length() && isPlain(text.charAt(plain))) {
            plain++;
        }
        if (plain == text.length()) {
            out.append(text);
        } else {
            text.codePoints().forEach(c -> escape(c, quoted));
        }
    }

    private void escape(int c, boolean quoted) {
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
    }

    /** True for what stands for itself everywhere, as nearly all does. */
    private static boolean isPlain(char c) {
        return c > '>' ? c < 0x7F : c >= 0x20 && (MARKS >>> c & 1) == 0;
    }

    /** True for the characters of XML 1.0 (production 2, Char), less the controls between delete and no-break space. */
    private static boolean allowed(int c) {
        return (c >= 0x20 && c < 0x7F) || (c >= 0xA0 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
    }
}
