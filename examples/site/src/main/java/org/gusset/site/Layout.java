package org.gusset.site;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands round the words of a page: its head, the search, the list of pages, the foot. */
final class Layout {
    private static final Pattern HOLE = Pattern.compile("\\{\\{(\\w+)}}");
    private static final int WORTH_A_LIST = 3;

    /**
     * A page of the site.
     *
     * @param address where it stands
     * @param section the heading under which it belongs, or the folder
     * @param place the file of the project that it shows
     * @param html its words
     * @param headlines the list of its headings, or nothing
     */
    record Page(String address, String title, String section, String place, String html, String headlines) {}

    private final Menu menu;
    private final String template = SiteFiles.resource("page.html");

    Layout(Menu menu) {
        this.menu = menu;
    }

    String section(String place) {
        return menu.section(place);
    }

    /** The page as a document. */
    String of(Page page) {
        String name = page.address().equals("index.html") ? "Gusset" : page.title() + " - Gusset";
        Map<String, String> parts = Map.of(
                "title", Html.escape(name),
                "top", Addresses.top(page.address()),
                "kind", kind(page),
                "where", page.section().isEmpty() ? "" : "<p class=\"where\">" + Html.escape(page.section()) + "</p>",
                "menu", menu.html(page),
                "headlines", page.headlines(),
                "content", page.html());
        StringBuilder out = new StringBuilder();
        Matcher hole = HOLE.matcher(template);
        while (hole.find()) {
            String part = parts.get(hole.group(1));
            if (part == null) {
                throw new IllegalStateException("the template asks for " + hole.group(1));
            }
            hole.appendReplacement(out, Matcher.quoteReplacement(part));
        }
        return hole.appendTail(out).toString();
    }

    /** The page's own name as a class, so that a page can look in a way of its own. */
    private static String kind(Page page) {
        String name = page.address().substring(page.address().lastIndexOf('/') + 1);
        return "page-" + name.replaceAll("\\..*", "").replaceAll("[^A-Za-z0-9]+", "-");
    }

    /** The headings of a page as a list of links, if there are several. */
    static String headlines(MarkdownPage page) {
        List<MarkdownPage.Headline> second =
                page.headlines().stream().filter(h -> h.level() == 2).toList();
        if (second.size() < WORTH_A_LIST) {
            return "";
        }
        StringBuilder out =
                new StringBuilder("<nav class=\"here\" aria-label=\"On this page\"><p>On this page</p><ul>\n");
        for (MarkdownPage.Headline headline : second) {
            out.append("<li>")
                    .append(Html.link("#" + headline.anchor(), headline.words()))
                    .append("</li>\n");
        }
        return out.append("</ul></nav>\n").toString();
    }
}
