package org.gusset.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The same pages as they are read without the site, as Markdown in the project's folders. */
class MarkdownLinksTest {
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
    private static final Repository REPOSITORY = new Repository(BuiltSite.ROOT);

    /** The text without code and comments, in which nothing is a link. */
    private static String prose(String page) {
        return page.replaceAll("(?ms)^```.*?^```$", "")
                .replaceAll("(?s)<!--.*?-->", "")
                .replaceAll("`[^`\n]*`", "");
    }

    /**
     * The anchors by the rule of forges, written down here once more: lower case, no signs but hyphens and low lines, hyphens for blanks,
     * and a number behind what comes again. From memory; the site has its anchors from commonmark-java.
     */
    private static Set<String> anchors(String page) {
        Set<String> anchors = new HashSet<>();
        Matcher heading = Pattern.compile("(?m)^#{1,6} +(.+?) *#*$").matcher(page.replaceAll("(?ms)^```.*?^```$", ""));
        while (heading.find()) {
            String words = heading.group(1).replaceAll("\\[([^\\]]*)]\\([^)]*\\)", "$1");
            String anchor = words.toLowerCase(Locale.ROOT)
                    .replaceAll("[^\\p{L}\\p{N}\\p{M}_ -]", "")
                    .replace(' ', '-');
            String free = anchor;
            for (int i = 1; !anchors.add(free); i++) {
                free = anchor + "-" + i;
            }
        }
        return anchors;
    }

    @Test
    void everyLinkAndAnchorIsThere() {
        List<String> broken = new ArrayList<>();
        int count = 0;
        for (String place : REPOSITORY.pages()) {
            Matcher link = LINK.matcher(prose(REPOSITORY.text(place)));
            while (link.find()) {
                String to = link.group(1);
                if (to.matches("[a-z]+:.*")) {
                    continue;
                }
                count++;
                int hash = to.indexOf('#');
                String path = hash < 0 ? to : to.substring(0, hash);
                Path file = BuiltSite.ROOT.resolve(place);
                Path there = path.isEmpty() ? file : file.resolveSibling(path).normalize();
                if (!there.startsWith(BuiltSite.ROOT) || !Files.exists(there)) {
                    broken.add(place + " -> " + to);
                } else if (hash >= 0) {
                    String known =
                            REPOSITORY.text(BuiltSite.ROOT.relativize(there).toString());
                    if (!anchors(known).contains(to.substring(hash + 1))) {
                        broken.add(place + " -> " + to + " (no such heading)");
                    }
                }
            }
        }
        assertThat(broken).isEmpty();
        assertThat(count).isGreaterThan(500);
    }

    @Test
    void everyPageIsReachedFromTheReadme() {
        Set<String> reached = new TreeSet<>(Set.of("README.md"));
        Deque<String> next = new ArrayDeque<>(reached);
        while (!next.isEmpty()) {
            String place = next.remove();
            Matcher link = LINK.matcher(prose(REPOSITORY.text(place)));
            while (link.find()) {
                String path = link.group(1).replaceFirst("#.*", "");
                if (path.isEmpty() || path.matches("[a-z]+:.*")) {
                    continue;
                }
                String to = Addresses.resolved(place, path);
                List<String> found = REPOSITORY.isFolder(to)
                        ? REPOSITORY.below(to, ".md")
                        : to.endsWith(".md") ? List.of(to) : List.of();
                for (String page : found) {
                    if (reached.add(page)) {
                        next.add(page);
                    }
                }
            }
        }
        assertThat(reached).containsAll(REPOSITORY.pages());
    }
}
