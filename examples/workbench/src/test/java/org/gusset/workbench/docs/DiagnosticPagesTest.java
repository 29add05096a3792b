package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Code;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every diagnostic has a page, and what the page shows does what it says. */
class DiagnosticPagesTest {
    private static final String UNREACHED = "<!-- no snippet: ";

    private static List<Page> pages() {
        return Page.below(Page.root().resolve("docs/diagnostics")).stream()
                .filter(p -> !p.name().equals("README"))
                .toList();
    }

    /** The page with the message as the code has it now. */
    private static String withMessage(String page, Code code) {
        String message = "> " + code.severity().word() + " " + code.id() + ": " + code.english();
        return page.replaceFirst("(?m)^> .*$", Matcher.quoteReplacement(message));
    }

    @Test
    void everyCodeHasAPageAndEveryPageACode() {
        assertThat(pages())
                .extracting(Page::name)
                .containsExactlyElementsOf(Codes.all().keySet());
    }

    @Test
    void theIndexNamesEveryPageWithItsTitleAndShowsTheFrame() {
        String index =
                Page.read(Page.root().resolve("docs/diagnostics/README.md")).text();
        for (Page page : pages()) {
            String title = page.text().lines().findFirst().orElseThrow();
            String words = title.substring(title.indexOf(':') + 2);
            assertThat(index).contains("* [" + page.name() + "](" + page.name() + ".md) " + words + "\n");
        }
        assertThat(index).contains(Frame.with("", ""));
    }

    /** A code is tried by its page's snippet or, if it has none, by a test that names it. */
    @Test
    void everyCodeIsTried() throws IOException {
        StringBuilder tests = new StringBuilder();
        for (String module : new String[] {"core", "dsl", "svg-export", "examples/workbench"}) {
            try (Stream<Path> files = Files.walk(Page.root().resolve(module).resolve("src/test/java"))) {
                for (Path file : files.filter(f -> f.toString().endsWith(".java"))
                        .filter(f -> !f.endsWith("DiagnosticPagesTest.java"))
                        .toList()) {
                    tests.append(Files.readString(file));
                }
            }
        }
        String all = tests.toString();
        Map<String, Code> codes = Codes.all();
        List<String> untried = new ArrayList<>();
        for (Page page : pages()) {
            Code code = codes.get(page.name());
            if (code != null && page.text().contains(UNREACHED)) {
                String constant = code.getClass().getSimpleName() + "." + code;
                if (!all.contains("\"" + code.id() + "\"") && !all.contains(constant)) {
                    untried.add(code.id() + " " + constant);
                }
            }
        }
        assertThat(untried).isEmpty();
    }

    @Test
    void onlyThesePagesHaveNoSnippet() {
        assertThat(pages().stream().filter(p -> p.text().contains(UNREACHED)).map(Page::name))
                .containsExactlyInAnyOrder(
                        "CLO002", "CLO003", "CLO004", "CLO005", "CLO006", "CLO007", "CLO008", "CLO009", "CLO010",
                        "CLO011", "GEO001", "GEO002", "GEO005", "GRD011", "GRD012", "GRD016", "GRD018", "GRD105",
                        "GRD106", "LIM001", "LIM003", "LIM101", "LIM102", "LIM103", "LIM104", "LIM105", "LIM106",
                        "LIM108", "LIM109", "LIM110", "LIM111", "LIM112", "LIM113", "LIM202", "LIM203", "LIM204",
                        "LIM206", "LIM207", "LIM301", "LIM302", "LIM303", "LIM304", "LIM305", "LIM306", "MEA102",
                        "MEA104", "MEA201", "MEA202", "MEA203", "MEA216", "MEA217", "MEA218", "PAP001", "PAP002",
                        "PAP003", "PAP004", "PAP005", "PCE007", "PCE008", "PCE009", "PCE010", "PCE016", "PCE018",
                        "PCE025", "PCE026", "PCE027", "PCE031", "SEW025");
    }

    @TestFactory
    Stream<DynamicTest> eachPageShowsItsCodeAndMendsIt() {
        Map<String, Code> codes = Codes.all();
        return pages().stream()
                .map(page -> DynamicTest.dynamicTest(page.name(), () -> {
                    Code code = codes.get(page.name());
                    assertThat(code).isNotNull();
                    if (Boolean.getBoolean("golden.update") && System.getenv("CI") == null) {
                        Files.writeString(page.file(), withMessage(page.text(), code));
                        return;
                    }
                    assertThat(page.text())
                            .as("the page's title and the message")
                            .startsWith("# " + page.name() + ": ")
                            .contains("\n> ")
                            .isEqualTo(withMessage(page.text(), code));
                    if (page.text().contains(UNREACHED)) {
                        assertThat(page.snippets()).isEmpty();
                        return;
                    }
                    List<String> kinds =
                            page.snippets().stream().map(Page.Snippet::how).toList();
                    assertThat(kinds).anyMatch(h -> h.startsWith("shows " + page.name() + " "));
                    assertThat(kinds).anyMatch(h -> h.startsWith("mended "));
                    PageRun.of(page);
                }));
    }
}
