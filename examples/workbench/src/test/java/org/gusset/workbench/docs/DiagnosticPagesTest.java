package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
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

    @Test
    void everyCodeHasAPageAndEveryPageACode() {
        assertThat(pages()).extracting(Page::name).containsExactlyElementsOf(Codes.all().keySet());
    }

    @TestFactory
    Stream<DynamicTest> eachPageShowsItsCodeAndMendsIt() {
        Map<String, Code> codes = Codes.all();
        return pages().stream()
                .map(page -> DynamicTest.dynamicTest(page.name(), () -> {
                    Code code = codes.get(page.name());
                    assertThat(code).isNotNull();
                    assertThat(page.text())
                            .as("the page's title and the message")
                            .startsWith("# " + page.name() + ": ")
                            .contains("> " + code.severity().word() + " " + page.name() + ": " + code.english());
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
