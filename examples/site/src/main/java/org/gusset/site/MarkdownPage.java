package org.gusset.site;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.IdGenerator;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;

/**
 * A page of Markdown, read.
 *
 * @param place where it lies in the project
 * @param title its first heading
 * @param document its text
 * @param headlines its headings in order, each with the anchor by which a forge knows it too
 */
record MarkdownPage(String place, String title, Node document, List<Headline> headlines) {
    private static final Parser PARSER =
            Parser.builder().extensions(List.of(TablesExtension.create())).build();

    /** A heading. */
    record Headline(int level, String words, String anchor, Heading heading) {}

    MarkdownPage {
        headlines = List.copyOf(headlines);
    }

    /**
     * @throws IllegalStateException if the page does not begin with a title
     */
    static MarkdownPage read(String place, String text) {
        Node document = PARSER.parse(text);
        IdGenerator anchors = IdGenerator.builder().build();
        List<Headline> headlines = new ArrayList<>();
        document.accept(new AbstractVisitor() {
            @Override
            public void visit(Heading heading) {
                String words = PlainText.of(heading);
                headlines.add(new Headline(heading.getLevel(), words, anchors.generateId(words), heading));
            }
        });
        if (headlines.isEmpty() || headlines.get(0).level() != 1) {
            throw new IllegalStateException(place + " does not begin with a title");
        }
        return new MarkdownPage(place, headlines.get(0).words(), document, headlines);
    }

    /** The anchor of each heading. */
    Map<Node, String> anchors() {
        Map<Node, String> anchors = new IdentityHashMap<>();
        headlines.forEach(h -> anchors.put(h.heading(), h.anchor()));
        return anchors;
    }
}
