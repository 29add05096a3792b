package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** What the reference shows works as it says. */
class ReferencePagesTest {
    @TestFactory
    Stream<DynamicTest> eachPageOfTheReferenceShowsWhatItSays() {
        return Page.below(Page.root().resolve("docs/reference")).stream()
                .map(page -> DynamicTest.dynamicTest(page.name(), () -> {
                    assertThat(page.text()).startsWith("# ");
                    PageRun.of(page);
                }));
    }
}
