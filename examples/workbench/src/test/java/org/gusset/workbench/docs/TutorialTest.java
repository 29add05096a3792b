package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The tutorial's snippets work, its sums are right, and together they are the shipped smock. */
class TutorialTest {
    private static final Path TUTORIAL = Page.root().resolve("docs/tutorial");
    private static final Path SMOCK = Page.root().resolve("examples/drafts/smock.gusset");

    @TestFactory
    Stream<DynamicTest> everySnippetDoesWhatItsPageSays() {
        return Page.below(TUTORIAL).stream()
                .filter(p -> !p.name().equals("README"))
                .map(page -> DynamicTest.dynamicTest(page.name(), () -> {
                    assertThat(page.snippets()).isNotEmpty();
                    PageRun.of(page);
                }));
    }

    @Test
    void togetherTheyAreTheShippedSmock() throws IOException {
        PageRun run = PageRun.of(Page.read(TUTORIAL.resolve("5-seams-and-checks.md")));
        assertThat(statements(run.built())).containsExactlyInAnyOrderElementsOf(statements(Files.readString(SMOCK)));
    }

    private static List<String> statements(String draft) {
        return draft.lines()
                .map(l -> l.strip().replaceAll("\\s+", " "))
                .filter(l -> !l.isEmpty())
                .toList();
    }

    @Test
    void theMessageThatThePageShowsIsTheRealOne(@TempDir Path folder) throws IOException {
        Path mistyped = folder.resolve("smock.gusset");
        Files.writeString(mistyped, Files.readString(SMOCK).replace("(chest + ease)", "(chets + ease)"));
        String told =
                Shell.run("sh examples/gusset check " + mistyped).out().replace(mistyped.toString(), "smock.gusset");
        String page = Page.read(TUTORIAL.resolve("6-messages.md")).text();
        int from = page.indexOf("```\nsmock.gusset:") + "```\n".length();
        String shown = page.substring(from, page.indexOf("```", from));
        assertThat(told).startsWith(shown);
    }
}
