package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Severity;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Slips that a dressmaker makes, one after the other put into the shipped drafts and tried on the cast with the usual choices. A slip is
 * caught if an error or a warning tells of it; a note does not count. {@code -Dgolden.update=true} writes the page anew, never in CI.
 */
class MutantsTest {
    private static final Path ROOT = Path.of(System.getProperty("gusset.root", "../.."));
    private static final Path DRAFTS = ROOT.resolve("examples/drafts");
    private static final Path PAGE = ROOT.resolve("docs/reference/mutants.md");

    /** The least share that the checks have to catch, of 100. */
    private static final double WANTED = 95;

    /** Messages are shortened to about so many characters. */
    private static final int SHORT = 110;

    private static final String BEGIN = "<!-- table: begin -->\n";
    private static final String END = "<!-- table: end -->\n";

    static List<String> drafts() throws IOException {
        return ShippedDraftsTest.drafts();
    }

    private static Path file(String name) {
        return DRAFTS.resolve(name + ".gusset");
    }

    private static String sound(String name) throws IOException {
        return Files.readString(file(name));
    }

    /** What is told of a draft, on paper and on each body of the cast: errors first, then warnings. */
    private static List<Diagnostic> told(Source source, Sources sources) {
        Outcome<Draft> compiled = Bench.standard().compile(source, sources);
        List<Diagnostic> all = new ArrayList<>(compiled.diagnostics());
        if (!compiled.hasErrors() && compiled.value().isPresent()) {
            Bodies bodies =
                    Bodies.open(ROOT.resolve("examples/measures/quillhaven.csv").toString());
            for (String name : bodies.names()) {
                Outcome<Drawing> drawing = compiled.value()
                        .get()
                        .evaluate(bodies.body(name).value().orElseThrow(), Choices.none());
                all.addAll(drawing.diagnostics());
            }
        }
        List<Diagnostic> told = new ArrayList<>();
        for (Severity severity : List.of(Severity.ERROR, Severity.WARNING)) {
            all.stream().filter(d -> d.severity() == severity).forEach(told::add);
        }
        return told;
    }

    private static List<Diagnostic> told(Mutant mutant) throws IOException {
        Source changed = Source.of(file(mutant.file()).toString(), mutant.in(sound(mutant.file())));
        if (mutant.file().equals(mutant.draft())) {
            return told(changed, new FolderSources(changed));
        }
        Source draft = Source.of(file(mutant.draft()).toString(), sound(mutant.draft()));
        FolderSources folder = new FolderSources(draft);
        return told(
                draft,
                (name, asking) -> name.equals(mutant.file() + ".gusset")
                        ? Sources.Answer.of(changed)
                        : folder.find(name, asking));
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void nothingIsToldOfASoundDraft(String name) throws IOException {
        Source source = Source.of(
                DRAFTS.resolve(name).toString(), sound(name.substring(0, name.length() - ".gusset".length())));
        assertThat(told(source, new FolderSources(source))).isEmpty();
    }

    @Test
    void theListHasEnoughOfEachKindAndOfEveryDraft() throws IOException {
        List<Mutant> all = Mutant.all();
        assertThat(all).hasSizeGreaterThanOrEqualTo(60).doesNotHaveDuplicates();
        Map<String, Integer> kinds = new LinkedHashMap<>();
        all.forEach(m -> kinds.merge(m.kind(), 1, Integer::sum));
        assertThat(kinds)
                .hasSize(6)
                .allSatisfy((kind, count) -> assertThat(count).as(kind).isGreaterThanOrEqualTo(8));
        assertThat(drafts()).allMatch(d -> all.stream().anyMatch(m -> (m.draft() + ".gusset").equals(d)));
    }

    @Test
    void nineteenOfTwentySlipsAreCaughtAndThePageTellsWhich() throws IOException {
        StringBuilder rows =
                new StringBuilder("| draft | kind | what was done | what tells it |\n| --- | --- | --- | --- |\n");
        Map<String, int[]> kinds = new LinkedHashMap<>();
        int caught = 0;
        List<Mutant> all = Mutant.all();
        for (Mutant mutant : all) {
            Optional<Diagnostic> first = told(mutant).stream().findFirst();
            assertThat(mutant.why().isEmpty())
                    .as("a reason in words for those that are not caught, and only for them: " + mutant)
                    .isEqualTo(first.isPresent());
            int[] counts = kinds.computeIfAbsent(mutant.kind(), k -> new int[2]);
            counts[0]++;
            if (first.isPresent()) {
                caught++;
                counts[1]++;
            }
            rows.append(row(mutant, first));
        }
        StringBuilder table = new StringBuilder("| kind | slips | caught |\n| --- | --- | --- |\n");
        kinds.forEach((kind, counts) -> table.append("| " + kind + " | " + counts[0] + " | " + counts[1] + " |\n"));
        double share = 100.0 * caught / all.size();
        table.append(String.format(Locale.ROOT, "| all | %d | %d, that is %.1f %% |%n", all.size(), caught, share)
                .replace("\r", ""));
        table.append('\n').append(rows);
        page(table.toString());
        assertThat(share).isGreaterThanOrEqualTo(WANTED);
    }

    private static String row(Mutant mutant, Optional<Diagnostic> told) {
        String where = (mutant.file().equals(mutant.draft()) ? "" : mutant.file() + ": ")
                + (mutant.where().equals("-") ? "" : mutant.where() + ": ");
        String tells = told.map(d ->
                        "[" + d.code().id() + "](../diagnostics/" + d.code().id() + ".md) " + shortened(d.message()))
                .orElse("NOT CAUGHT: " + mutant.why());
        return "| " + mutant.draft() + " | " + mutant.kind() + " | " + where + "`" + mutant.was() + "` → "
                + (mutant.becomes().isEmpty() ? "nothing" : "`" + mutant.becomes() + "`") + " | " + tells + " |\n";
    }

    private static String shortened(String message) {
        String line = message.replace('\n', ' ').replace("|", "\\|");
        if (line.length() <= SHORT) {
            return line;
        }
        return line.substring(0, line.lastIndexOf(' ', SHORT)) + " ...";
    }

    private static void page(String table) throws IOException {
        String text = Files.readString(PAGE);
        int from = text.indexOf(BEGIN) + BEGIN.length();
        int to = text.indexOf(END);
        assertThat(to).as("the marks of the table").isGreaterThanOrEqualTo(from);
        if (Boolean.getBoolean("golden.update") && System.getenv("CI") == null) {
            Files.writeString(PAGE, text.substring(0, from) + table + text.substring(to));
            return;
        }
        assertThat(text.substring(from, to)).isEqualTo(table);
    }
}
