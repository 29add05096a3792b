package org.gusset.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** Every link of the built site leads somewhere, and every page is led to. Addresses outside are looked at, never asked. */
class BuiltLinksTest {
    /** Reading a link as a browser does, by the rules of RFC 3986. */
    private static URI target(String page, String link) {
        return URI.create("site:///" + page).resolve(link);
    }

    private static List<String> links(Document page) {
        List<String> links = new ArrayList<>();
        for (Element element : page.select("[href], [src], form[action]")) {
            for (String name : List.of("href", "src", "action")) {
                if (element.hasAttr(name)) {
                    links.add(element.attr(name));
                }
            }
        }
        return links;
    }

    private static boolean outside(String link) {
        return link.matches("[a-z]+:.*");
    }

    @Test
    void everyLinkAndAnchorIsThere() {
        Map<String, Document> pages = BuiltSite.pages();
        assertThat(pages).hasSizeGreaterThan(400);
        List<String> broken = new ArrayList<>();
        pages.forEach((name, page) -> {
            for (String link : links(page)) {
                if (outside(link)) {
                    continue;
                }
                URI to = target(name, link);
                String path = to.getPath().substring(1);
                Path file = BuiltSite.folder().resolve(path);
                if (path.startsWith("..") || !Files.isRegularFile(file)) {
                    broken.add(name + " -> " + link);
                } else if (to.getFragment() != null && to.getQuery() == null) {
                    Document there = pages.get(path);
                    if (there == null || there.getElementById(to.getFragment()) == null) {
                        broken.add(name + " -> " + link + " (no such anchor)");
                    }
                }
            }
        });
        assertThat(broken).isEmpty();
    }

    @Test
    void everyPageIsReachedFromTheFirstByTheWordsOfPages() {
        Map<String, Document> pages = BuiltSite.pages();
        Set<String> reached = new TreeSet<>(Set.of("index.html", "search.html"));
        Deque<String> next = new ArrayDeque<>(reached);
        while (!next.isEmpty()) {
            String name = next.remove();
            Document page = BuiltSite.page(name);
            for (Element link : page.select("main a[href]")) {
                if (outside(link.attr("href"))) {
                    continue;
                }
                String to = target(name, link.attr("href")).getPath().substring(1);
                if (pages.containsKey(to) && reached.add(to)) {
                    next.add(to);
                }
            }
        }
        Set<String> orphans = new TreeSet<>(pages.keySet());
        orphans.removeAll(reached);
        assertThat(orphans).as("pages to which no page's words lead").isEmpty();
    }

    @Test
    void theListOfPagesLeadsToEveryChapter() {
        Document first = BuiltSite.page("index.html");
        List<String> listed = first.select("#menu a").eachAttr("href");
        assertThat(listed).doesNotHaveDuplicates();
        for (String folder : List.of("tutorial", "how-to", "reference", "explanation")) {
            assertThat(listed)
                    .containsAll(BuiltSite.pages().keySet().stream()
                            .filter(p -> p.matches("docs/" + folder + "/[^/]*(?<!json)\\.html"))
                            .toList());
        }
    }

    @Test
    void addressesOutsideAreWellFormed() {
        Map<String, String> seen = new TreeMap<>();
        BuiltSite.pages()
                .forEach((name, page) ->
                        links(page).stream().filter(BuiltLinksTest::outside).forEach(link -> seen.put(link, name)));
        assertThat(seen).isNotEmpty();
        seen.forEach((link, page) -> {
            URI address = URI.create(link);
            assertThat(address.getScheme()).as(page + ": " + link).isIn("https", "http");
            assertThat(address.getHost()).as(page + ": " + link).matches("[a-z0-9-]+(\\.[a-z0-9-]+)+");
        });
    }
}
