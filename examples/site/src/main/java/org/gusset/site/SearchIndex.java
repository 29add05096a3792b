package org.gusset.site;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.commonmark.node.Node;

/**
 * What the search looks through, as a script that a page loads: browsers read no other files of a page that was opened from disk. A page
 * is a list {@code [address, section, title, [[anchor, heading, words], ...]]}.
 */
final class SearchIndex {
    private final List<String> pages = new ArrayList<>();

    /** A page of Markdown, part by part. */
    void add(String address, String section, MarkdownPage page) {
        List<String> parts = new ArrayList<>();
        MarkdownPage.Headline head = page.headlines().get(0);
        Map<Node, MarkdownPage.Headline> headlines = new IdentityHashMap<>();
        page.headlines().forEach(h -> headlines.put(h.heading(), h));
        StringBuilder words = new StringBuilder();
        for (Node node = page.document().getFirstChild(); node != null; node = node.getNext()) {
            MarkdownPage.Headline next = headlines.get(node);
            if (next != null) {
                if (!next.equals(head)) {
                    parts.add(part(head, words.toString()));
                    words.setLength(0);
                }
                head = next;
            } else {
                words.append(PlainText.of(node)).append(' ');
            }
        }
        parts.add(part(head, words.toString()));
        add(address, section, page.title(), parts);
    }

    /** A file that is one part. */
    void add(String address, String section, String title, String words) {
        add(address, section, title, List.of("[\"\",\"\"," + quoted(words) + "]"));
    }

    private void add(String address, String section, String title, List<String> parts) {
        pages.add("[" + quoted(address) + "," + quoted(section) + "," + quoted(title) + ",[" + String.join(",", parts)
                + "]]");
    }

    private static String part(MarkdownPage.Headline head, String words) {
        boolean title = head.level() == 1;
        return "[" + quoted(title ? "" : head.anchor()) + "," + quoted(title ? "" : head.words()) + "," + quoted(words)
                + "]";
    }

    /** The script. */
    String script() {
        return "window.gussetPages = [\n" + String.join(",\n", pages) + "\n];\n";
    }

    /** A text as JavaScript has it. */
    static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        String plain = text.replaceAll("\\s+", " ").strip();
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ' || c == '\u2028' || c == '\u2029' || c == '<') {
                out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                out.append(c);
            }
        }
        return out.append('"').toString();
    }
}
