package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.draft.Choices;
import org.gusset.workbench.MeasureTable;
import org.junit.jupiter.api.Test;

/** What the README promises. */
class ReadmeTest {
    private static final Path README = Page.root().resolve("README.md");

    @Test
    void itsJavaExampleIsTheCompiledOne() throws IOException {
        String source = Files.readString(Page.root()
                .resolve("examples/workbench/src/test/java/org/gusset/workbench/docs/EmbeddingExample.java"));
        Matcher region = Pattern.compile("(?s)    // README\n(.*?)    // end\n").matcher(source);
        assertThat(region.find()).isTrue();
        String example = region.group(1).replaceAll("(?m)^ {4}", "").replace("static Map", "Map");
        assertThat(Files.readString(README)).contains("```java\n" + example + "```\n");
    }

    @Test
    void theExampleDrawsThePieces() throws IOException {
        Map<String, String> pieces = EmbeddingExample.halfCircleSkirt(
                Files.readString(Page.root().resolve("examples/drafts/half-circle-skirt.gusset")));
        assertThat(pieces).containsOnlyKeys("Skirt", "Waistband");
        assertThat(pieces.get("Skirt")).startsWith("<?xml").contains("Maren Oddway");
    }

    /** The few lines of a draft that it shows, in a piece of a draft with the measures they speak of. */
    @Test
    void itsLinesOfADraftAreSound() throws IOException {
        Matcher block = Pattern.compile("(?s)## Write a draft\n\n```\n(.*?)```").matcher(Files.readString(README));
        assertThat(block.find()).isTrue();
        String head = """
                draft "Lines of the README"
                measure neck from 28 cm to 60 cm "round the base of the neck"
                measure shoulder_width from 20 cm to 60 cm "bone to bone"
                choose drop = 2 cm from 0 cm to 8 cm "past the bone"
                piece Back {
                """;
        Trial trial = Trial.of(
                head + block.group(1) + "}\n", MeasureTable.read("maren.csv", PageRun.maren()), Choices.none());
        assertThat(trial.codes()).contains(Trial.UNFINISHED);
        assertThat(trial.errors().stream().map(d -> d.code().id())).containsOnly(Trial.UNFINISHED);
        assertThat(trial.drawing()).isPresent();
    }

    @Test
    void theTestCommandIsTheOneThatCiReads() throws IOException {
        assertThat(Files.readString(README)).containsOnlyOnce("\n    mvn -B -Plint verify\n");
        assertThat(Files.readString(Page.root().resolve(".ci/run"))).contains("README.md");
    }

    @Test
    void everyLinkLeadsToAFile() throws IOException {
        for (Page page : Page.below(Page.root().resolve("docs"))) {
            links(page.file(), page.text());
        }
        links(README, Files.readString(README));
        Path developers = Page.root().resolve("DEVELOPERS.md");
        links(developers, Files.readString(developers));
    }

    private static void links(Path file, String text) {
        Matcher link = Pattern.compile("\\]\\(([^)\\s]+)\\)").matcher(text.replaceAll("(?s)```.*?```", ""));
        while (link.find()) {
            String target = link.group(1);
            if (!target.startsWith("http") && !target.startsWith("#")) {
                Path to = file.resolveSibling(target.replaceFirst("#.*", ""));
                assertThat(to).as(file.getFileName() + " links to " + target).exists();
            }
        }
    }
}
