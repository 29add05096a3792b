package org.gusset.site;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.AttributeProvider;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.html.HtmlWriter;

/**
 * Makes HTML of Markdown: links lead to pages of the site, comments are left out but for those that stand for something that the site
 * makes, wide things can be reached and moved by keys.
 */
final class MarkdownHtml {
    /** Raw HTML that pages may hold, beside comments: what folds a solution away. */
    private static final Pattern FOLDING = Pattern.compile("(?:</?(?:details|summary)>|[^<>&])*+");

    private final UnaryOperator<String> links;
    private final Colours colours;
    private final Map<String, String> made;

    /**
     * @param links gives for a link of the page where it leads on the site
     * @param made what stands in place of a comment, by the comment's words
     */
    MarkdownHtml(UnaryOperator<String> links, Colours colours, Map<String, String> made) {
        this.links = links;
        this.colours = colours;
        this.made = Map.copyOf(made);
    }

    String of(MarkdownPage page) {
        Map<Node, String> anchors = page.anchors();
        AttributeProvider attributes = (node, tag, values) -> {
            values.computeIfPresent("href", (key, link) -> links.apply(link));
            values.computeIfPresent("src", (key, link) -> links.apply(link));
            String anchor = anchors.get(node);
            if (anchor != null) {
                values.put("id", anchor);
            }
        };
        return HtmlRenderer.builder()
                .nodeRendererFactory(context -> new Blocks(context, page.place()))
                .attributeProviderFactory(context -> attributes)
                .extensions(List.of(TablesExtension.create()))
                .build()
                .render(page.document());
    }

    /** What is written in another way than usual. */
    private final class Blocks implements NodeRenderer {
        private final HtmlNodeRendererContext context;
        private final HtmlWriter html;
        private final String place;

        Blocks(HtmlNodeRendererContext context, String place) {
            this.context = context;
            this.html = context.getWriter();
            this.place = place;
        }

        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
            return Set.of(
                    TableBlock.class,
                    FencedCodeBlock.class,
                    IndentedCodeBlock.class,
                    HtmlBlock.class,
                    HtmlInline.class);
        }

        @Override
        public void render(Node node) {
            if (node instanceof TableBlock table) {
                table(table);
            } else if (node instanceof FencedCodeBlock block) {
                html.line();
                html.raw(colours.block(block.getLiteral(), block.getInfo() == null ? "" : block.getInfo()));
                html.line();
            } else if (node instanceof IndentedCodeBlock block) {
                html.line();
                html.raw(colours.block(block.getLiteral(), ""));
                html.line();
            } else if (node instanceof HtmlBlock block) {
                raw(block.getLiteral());
            } else if (node instanceof HtmlInline inline) {
                raw(inline.getLiteral());
            }
        }

        private void table(TableBlock table) {
            html.line();
            html.raw("<div class=\"wide\" tabindex=\"0\">");
            html.tag("table");
            for (Node part = table.getFirstChild(); part != null; part = part.getNext()) {
                // A head without words is there for Markdown's sake alone.
                if (!(part instanceof TableHead) || !PlainText.of(part).isEmpty()) {
                    context.render(part);
                }
            }
            html.tag("/table");
            html.raw("</div>");
            html.line();
        }

        private void raw(String literal) {
            String text = literal.strip();
            if (text.startsWith("<!--") && text.endsWith("-->")) {
                html.raw(made.getOrDefault(
                        text.substring("<!--".length(), text.length() - "-->".length())
                                .strip(),
                        ""));
            } else if (FOLDING.matcher(text).matches()) {
                html.raw(literal);
            } else {
                throw new IllegalStateException(place + " holds HTML that the site does not take: " + text);
            }
        }
    }
}
