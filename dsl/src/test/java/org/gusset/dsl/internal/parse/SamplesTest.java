package org.gusset.dsl.internal.parse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.dsl.Source;
import org.gusset.dsl.report.TextReport;
import org.gusset.dsl.syntax.DraftTree;
import org.junit.jupiter.api.Test;

/** Whole drafts: those that the language was designed on, where they are at hand, and those that are shipped. */
class SamplesTest {
    private static List<Path> drafts(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".gusset")).sorted().toList();
        }
    }

    private static void assertReadWithoutAMessage(Path file) throws IOException {
        Source source = Source.of(file.getFileName().toString(), Files.readString(file));
        Outcome<DraftTree> outcome = Parsing.parse(source);
        assertThat(TextReport.of(source).all(outcome.diagnostics())).isEqualTo("no errors\n");
        assertThat(outcome.value().orElseThrow().statements()).hasSizeGreaterThan(5);
        assertThat(outcome.value().orElseThrow().broken()).isEmpty();
    }

    @Test
    void theDraftsThatTheLanguageWasDesignedOnAreReadWithoutAMessage() throws IOException {
        Path folder = Path.of(System.getProperty("gusset.facts", "../../shared/facts"))
                .resolveSibling("design")
                .resolve("samples");
        assumeTrue(Files.isDirectory(folder), "no folder " + folder.normalize());
        List<Path> files = drafts(folder);
        assertThat(files).hasSize(8);
        for (Path file : files) {
            assertReadWithoutAMessage(file);
        }
    }

    @Test
    void theShippedDraftsAreReadWithoutAMessage() throws IOException {
        Path folder = Path.of(System.getProperty("gusset.root", "..")).resolve("examples/drafts");
        List<Path> files = drafts(folder);
        assertThat(files).hasSizeGreaterThanOrEqualTo(3);
        for (Path file : files) {
            assertReadWithoutAMessage(file);
        }
    }
}
