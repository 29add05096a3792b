package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * No block of the documentation stands there untried: it is a snippet, or a test of its own holds it, or it is a command that takes minutes,
 * a cluster or a network. Of such commands everything that they name must be there.
 */
class EveryBlockTest {
    private static final String ITS_OWN_TEST = "a test of its own";
    private static final String TOO_LONG = "takes minutes, a cluster or a network";

    /** Blocks without a comment, by page: how many, and what holds them. */
    private record Known(int blocks, String by) {}

    private static final Map<String, Known> KNOWN = Map.ofEntries(
            Map.entry("diagnostics/README.md", new Known(1, ITS_OWN_TEST)),
            Map.entry("explanation/performance.md", new Known(1, TOO_LONG)),
            Map.entry("how-to/batch.md", new Known(5, TOO_LONG)),
            Map.entry("how-to/editor.md", new Known(2, TOO_LONG)),
            Map.entry("how-to/embed.md", new Known(3, ITS_OWN_TEST)),
            Map.entry("how-to/test-a-draft.md", new Known(3, ITS_OWN_TEST)),
            Map.entry("how-to/watch.md", new Known(1, TOO_LONG)),
            Map.entry("reference/command-line.md", new Known(1, TOO_LONG)),
            Map.entry("reference/dependencies.md", new Known(3, TOO_LONG)),
            Map.entry("reference/grammar.md", new Known(6, ITS_OWN_TEST)),
            Map.entry("reference/java-api.md", new Known(14, ITS_OWN_TEST)),
            Map.entry("reference/json.md", new Known(5, ITS_OWN_TEST)),
            // A message that is compared.
            Map.entry("tutorial/6-messages.md", new Known(1, ITS_OWN_TEST)));

    private static final Path DOCS = Page.root().resolve("docs");

    /** The blocks of a page that no comment gives to a runner. */
    private static List<String> untold(Page page) {
        List<String> lines = page.text().lines().toList();
        List<String> blocks = new ArrayList<>();
        boolean inside = false;
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).startsWith("```")) {
                continue;
            }
            inside = !inside;
            if (inside && (i == 0 || !lines.get(i - 1).startsWith("<!-- snippet: "))) {
                int end = i + 1;
                while (!lines.get(end).startsWith("```")) {
                    end++;
                }
                blocks.add(lines.get(i) + "\n" + String.join("\n", lines.subList(i + 1, end)));
            }
        }
        return blocks;
    }

    @Test
    void everyBlockIsTriedOrItIsKnownWhyNot() {
        Map<String, Integer> found = new TreeMap<>();
        for (Page page : Page.below(DOCS)) {
            int count = untold(page).size();
            if (count > 0) {
                found.put(DOCS.relativize(page.file()).toString().replace('\\', '/'), count);
            }
        }
        Map<String, Integer> known = new TreeMap<>();
        KNOWN.forEach((page, what) -> known.put(page, what.blocks()));
        assertThat(found).isEqualTo(known);
    }

    /** Snippets of pages that belong to no chapter with a test of its own. */
    @TestFactory
    Stream<DynamicTest> snippetsOfAllOtherPages() {
        List<Page> pages = new ArrayList<>(Page.below(DOCS));
        pages.removeIf(p ->
                p.file().toString().replace('\\', '/').matches(".*/docs/(tutorial|how-to|reference|diagnostics)/.*"));
        pages.add(Page.read(Page.root().resolve("examples/old-masters/README.md")));
        return pages.stream()
                .filter(page -> !page.snippets().isEmpty())
                .map(page -> DynamicTest.dynamicTest(page.file().toString(), () -> PageRun.of(page)));
    }

    /** Modules, profiles, classes of tests, scripts, folders that commands speak of. */
    @Test
    void whatUntriedCommandsNameIsThere() throws IOException {
        Set<String> profiles = new TreeSet<>();
        Set<String> classes = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Page.root())) {
            for (Path file : files.filter(f -> !f.toString().contains("target")).toList()) {
                String name = String.valueOf(file.getFileName());
                if (name.equals("pom.xml")) {
                    Matcher profile = Pattern.compile(
                                    "<profile>\\s*(?:<!--.*?-->\\s*)?<id>([\\w-]+)</id>", Pattern.DOTALL)
                            .matcher(Files.readString(file));
                    profile.results().forEach(p -> profiles.add(p.group(1)));
                } else if (name.endsWith(".java")) {
                    classes.add(name.replace(".java", ""));
                }
            }
        }
        int looked = 0;
        List<Page> pages = new ArrayList<>(Page.below(DOCS));
        pages.add(Page.read(Page.root().resolve("README.md")));
        for (Page page : pages) {
            for (String block : untold(page)) {
                if (block.startsWith("```sh\n")) {
                    looked += names(page, block.replace("\\\n", " "), profiles, classes);
                }
            }
        }
        assertThat(looked).isGreaterThan(15);
    }

    private static int names(Page page, String block, Set<String> profiles, Set<String> classes) {
        int looked = 0;
        for (String option : all("(?<= )-P([\\w,-]+)", block)) {
            assertThat(profiles).as(page.name()).contains(option.split(","));
            looked++;
        }
        for (String modules : all("-pl ([\\w/,-]+)", block)) {
            for (String module : modules.split(",")) {
                assertThat(Page.root().resolve(module).resolve("pom.xml"))
                        .as(page.name())
                        .exists();
            }
            looked++;
        }
        for (String test : all("-Dtest=([\\w]+)", block)) {
            if (!test.equals("None")) {
                assertThat(classes).as(page.name()).contains(test);
                looked++;
            }
        }
        for (String type : all("org\\.gusset(?:\\.[a-z]+)+\\.([A-Z]\\w+)", block)) {
            assertThat(classes).as(page.name()).contains(type);
            looked++;
        }
        for (String path : all("(?<![\\w/:])((?:examples|docs|core|dsl|svg-export)/[\\w./-]+)", block)) {
            if (!path.contains("/target/")) {
                assertThat(Page.root().resolve(path.replaceFirst(",.*", "")))
                        .as(page.name())
                        .exists();
                looked++;
            }
        }
        return looked;
    }

    private static List<String> all(String pattern, String text) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map(found -> found.group(1))
                .toList();
    }
}
