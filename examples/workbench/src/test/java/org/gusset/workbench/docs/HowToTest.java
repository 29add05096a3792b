package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** What the how-to pages say works. */
class HowToTest {
    private static final Path HOW_TO = Page.root().resolve("docs/how-to");

    @TestFactory
    Stream<DynamicTest> everySnippetDoesWhatItsPageSays() {
        return Page.below(HOW_TO).stream()
                .map(page -> DynamicTest.dynamicTest(page.name(), () -> {
                    assertThat(page.snippets()).isNotEmpty();
                    PageRun.of(page);
                }));
    }
}
