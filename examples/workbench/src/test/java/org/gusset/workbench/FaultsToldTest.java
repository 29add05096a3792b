package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Severity;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.Source;
import org.gusset.dsl.lint.Linter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Faults that people who draft by hand make, each put into a small draft that is sound without it: Gusset tells it with its figure and a
 * cure, and tells nothing of the sound draft. The page of the reference lists them; {@code -Dgolden.update=true} writes it anew, never in
 * CI.
 */
class FaultsToldTest {
    private static final Path PAGE =
            Path.of(System.getProperty("gusset.root", "../.."), "docs/reference/faults-told.md");

    private static final String BEGIN = "<!-- table: begin -->\n";
    private static final String END = "<!-- table: end -->\n";

    static List<Slip> all() throws IOException {
        return Slip.all();
    }

    static List<Slip> faults() throws IOException {
        return all().stream().filter(Slip::fault).toList();
    }

    /** Everything that is told of a draft: of its text, by the linter, and on its body. */
    private static List<Diagnostic> told(Slip slip, String text) {
        Source source = Source.of("trial.gusset", text);
        Outcome<Draft> compiled = Bench.standard().compile(source, new FolderSources(source));
        List<Diagnostic> all = new ArrayList<>(compiled.diagnostics());
        if (!compiled.hasErrors()) {
            all.addAll(compiled.value()
                    .orElseThrow()
                    .evaluate(slip.body(), Choices.none())
                    .diagnostics());
            all.addAll(Linter.lint(source));
        }
        return all;
    }

    private static boolean advice(Diagnostic diagnostic) {
        return diagnostic.code().id().startsWith("LNT");
    }

    /** The message with the figures of the stretches that stand beside it. */
    private static String words(Diagnostic diagnostic) {
        return diagnostic.message() + " "
                + diagnostic.related().stream().map(r -> r.phrase().toString()).collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @MethodSource("all")
    void nothingIsToldOfTheSoundDraft(Slip slip) {
        assertThat(told(slip, slip.text()))
                .noneMatch(d -> d.code().id().equals(slip.told().get(0)));
        assertThat(told(slip, slip.text()))
                .filteredOn(d -> d.severity() != Severity.NOTE)
                .filteredOn(d -> !advice(d) || slip.told().contains(d.code().id()))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("faults")
    void theFaultIsToldWithItsFigureAndACure(Slip slip) {
        List<Diagnostic> told = told(slip, slip.slipped()).stream()
                .filter(d -> d.code().id().equals(slip.told().get(0)))
                .toList();
        assertThat(told)
                .as(told(slip, slip.slipped()).toString())
                .anySatisfy(d -> assertThat(words(d))
                        .contains(slip.told().subList(1, slip.told().size())));
        if (!slip.hint().isEmpty()) {
            assertThat(told.get(0).hints())
                    .extracting(h -> h.phrase().toString())
                    .anySatisfy(h -> assertThat(h).contains(slip.hint()));
        }
    }

    @Test
    void thePageListsThem() throws IOException {
        StringBuilder page = new StringBuilder();
        String group = "";
        for (Slip slip : faults()) {
            if (!slip.group().equals(group)) {
                group = slip.group();
                page.append("\n## " + group.substring(group.indexOf(' ') + 1)
                        + "\n\n| fault | what is told |\n| --- | --- |\n");
            }
            Diagnostic first = told(slip, slip.slipped()).stream()
                    .filter(d -> d.code().id().equals(slip.told().get(0)))
                    .findFirst()
                    .orElseThrow();
            String code = first.code().id();
            page.append("| " + slip.title() + " | [" + code + "](../diagnostics/" + code + ".md) "
                    + first.message().replace("|", "\\|").replace('\n', ' ') + " |\n");
        }
        page.append("\n## Not faults\n\nOf these nothing is told:\n\n");
        all().stream().filter(s -> !s.fault()).forEach(s -> page.append("* " + s.title() + "\n"));
        page.append('\n');
        String text = Files.readString(PAGE);
        int from = text.indexOf(BEGIN) + BEGIN.length();
        int to = text.indexOf(END);
        assertThat(to).as("the marks of the table").isGreaterThanOrEqualTo(from);
        if (Boolean.getBoolean("golden.update") && System.getenv("CI") == null) {
            Files.writeString(PAGE, text.substring(0, from) + page + text.substring(to));
            return;
        }
        assertThat(text.substring(from, to)).isEqualTo(page.toString());
    }
}
