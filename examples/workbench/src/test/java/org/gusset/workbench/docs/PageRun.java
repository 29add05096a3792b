package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.draft.Choices;
import org.gusset.dsl.Source;
import org.gusset.dsl.lint.Linter;
import org.gusset.workbench.MeasureTable;

/** Tries the snippets of a page one after the other and says where one does not do what its comment says. */
final class PageRun {
    private static final String FRAMES_PIECE = "Trial";
    private final Page page;
    private String running = "";
    private String lone = "";
    private String table;
    private String shown = "";
    /** The names under which a reader has saved the draft and the table, if the page says so. */
    private String draftFile = "";

    private String tableFile = "";

    private String told = "";
    private Tried last = new Tried("", "", Choices.none());

    /** What was tried last: the draft, the table, the choices. */
    private record Tried(String text, String table, Choices choices) {}

    private PageRun(Page page) {
        this.page = page;
        this.table = maren();
    }

    /** Tries every snippet of a page; the run holds the draft that the page built. */
    static PageRun of(Page page) {
        PageRun run = new PageRun(page);
        for (Page.Snippet snippet : page.snippets()) {
            run.take(snippet);
        }
        return run;
    }

    /** The draft that the page built; empty if its snippets stand alone. */
    String built() {
        return running;
    }

    /** The table of measures that the page ended with. */
    String table() {
        return table;
    }

    /** The measures of Maren Oddway alone, out of the shipped table. */
    static String maren() {
        try {
            Path file = Page.root().resolve("examples/measures/quillhaven.csv");
            StringBuilder out = new StringBuilder();
            for (String line : Files.readString(file).lines().toList()) {
                if (!line.startsWith("#")) {
                    String[] cells = line.split(",", -1);
                    out.append(cells[0]).append(',').append(cells[2]).append('\n');
                }
            }
            return out.toString();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private void take(Page.Snippet snippet) {
        String how = snippet.how();
        if (how.equals("holds")) {
            String text = running.isEmpty() ? lone : running;
            holds(snippet, new Tried(text, table, Choices.none()));
        } else if (how.equals("solved")) {
            holds(snippet, last);
        } else if (how.equals("tells") || how.equals("told")) {
            assertThat(told.replaceAll("\\s+", " "))
                    .as(snippet.place() + ": the command tells it")
                    .contains(snippet.text().strip().replaceAll("\\s+", " "));
        } else if (how.equals("runs")) {
            for (String command : snippet.text().lines().toList()) {
                Shell.Run run = Shell.run(command, saved());
                told = run.out() + run.err();
                assertThat(run.code())
                        .as(snippet.place() + ": " + command + "\n" + run.out() + run.err())
                        .isZero();
            }
        } else if (how.startsWith("shows ")) {
            String rest = how.substring("shows ".length());
            shown = rest.substring(0, rest.indexOf(' '));
            Trial trial = tried(rest.substring(shown.length() + 1), snippet, false);
            assertThat(trial.codes()).as(snippet.place() + " shows " + shown).contains(shown);
        } else if (how.startsWith("solves ")) {
            sound(tried(how.substring("solves ".length()), snippet, false), snippet);
        } else if (how.startsWith("mended ")) {
            Trial trial = tried(how.substring("mended ".length()), snippet, false);
            sound(trial, snippet);
            assertThat(trial.codes()).as(snippet.place() + " is mended").doesNotContain(shown);
        } else {
            sound(tried(how, snippet, true), snippet);
        }
    }

    private Map<String, String> saved() {
        Map<String, String> files = new HashMap<>();
        files.put(draftFile, running);
        files.put(tableFile, table);
        files.remove("");
        return files;
    }

    private void sound(Trial trial, Page.Snippet snippet) {
        assertThat(trial.errors().stream()
                        .filter(d -> running.isEmpty() || !d.code().id().equals(Trial.UNFINISHED))
                        .toList())
                .as(snippet.place() + " is sound")
                .isEmpty();
    }

    private Trial tried(String how, Page.Snippet snippet, boolean keep) {
        List<Diagnostic> messages = new ArrayList<>();
        Choices choices = Choices.none();
        String bodies = table;
        String text = running.isEmpty() ? lone.isEmpty() ? Frame.with("", "") : lone : running;
        String lines = snippet.text();
        if (how.startsWith("chart")) {
            return new Trial("", ChartSnippet.told(lines), Optional.empty());
        }
        if (how.startsWith("table as ")) {
            tableFile = how.substring("table as ".length()) + ".csv";
            return tried("table", snippet, keep);
        }
        if (keep && how.equals("table") && running.isEmpty() && lone.isEmpty()) {
            // No draft of the page asks for it yet.
            table = lines;
            MeasureTable read = MeasureTable.read("bodies.csv", lines.getBytes(StandardCharsets.UTF_8));
            return new Trial("", read.chart().diagnostics(), Optional.empty());
        }
        if (how.equals("whole")) {
            text = lines;
        } else if (how.startsWith("whole as ")) {
            text = lines;
            running = lines;
            draftFile = how.substring("whole as ".length()) + ".gusset";
        } else if (how.startsWith("continues ")) {
            PageRun other = of(Page.read(page.file().resolveSibling(how.substring("continues ".length()) + ".md")));
            running = other.built();
            table = other.table();
            draftFile = other.draftFile;
            tableFile = other.tableFile;
            bodies = table;
            text = running + lines;
        } else if (how.equals("in file") || (how.equals("continues") && !running.isEmpty())) {
            text = running.isEmpty() ? Frame.with(lines, "") : running + lines;
        } else if (how.equals("in piece")) {
            text = Frame.with("", lines.indent(2));
        } else if (how.startsWith("in piece ")) {
            text = inPiece(how.substring("in piece ".length()), lines, snippet);
        } else if (how.equals("table")) {
            bodies = lines;
        } else if (how.equals("choices")) {
            choices = Trial.choices(lines, messages);
        } else {
            throw new AssertionError(snippet.place() + ": no such kind of snippet: " + how);
        }
        if (keep) {
            table = bodies;
            lone = running.isEmpty() ? text : lone;
            running = running.isEmpty() ? "" : text;
        } else if (how.equals("whole")) {
            lone = text;
        }
        last = new Tried(text, bodies, choices);
        Trial trial = Trial.of(text, MeasureTable.read("bodies.csv", bodies.getBytes(StandardCharsets.UTF_8)), choices);
        messages.addAll(trial.diagnostics());
        if (shown.startsWith("LNT")) {
            messages.addAll(Linter.lint(Source.of("draft.gusset", text)));
        }
        return new Trial(text, messages, trial.drawing());
    }

    /** The running draft with more lines before the brace that closes a piece. */
    private String inPiece(String name, String lines, Page.Snippet snippet) {
        if (running.isEmpty() && name.equals(FRAMES_PIECE)) {
            return Frame.with("", lines.indent(2));
        }
        Matcher head =
                Pattern.compile("(?m)^piece " + name + "\\b[^{]*\\{(?s:.*?)^}$").matcher(running);
        if (!head.find()) {
            throw new AssertionError(snippet.place() + ": the draft so far has no piece " + name);
        }
        return running.substring(0, head.end() - 1) + lines.indent(2) + running.substring(head.end() - 1);
    }

    /** A truth about a draft, told in the prose too. */
    private void holds(Page.Snippet snippet, Tried tried) {
        Trial trial = Trial.of(
                tried.text() + "check " + snippet.text() + "\n",
                MeasureTable.read("bodies.csv", tried.table().getBytes(StandardCharsets.UTF_8)),
                tried.choices());
        List<Finding> findings = trial.drawing().orElseThrow().findings();
        assertThat(findings.get(findings.size() - 1).verdict())
                .as(snippet.place() + " holds: " + snippet.text() + " " + trial.diagnostics())
                .isEqualTo(Finding.Verdict.PASSED);
        int is = snippet.text().lastIndexOf(" is ");
        if (is >= 0) {
            assertThat(page.visible())
                    .as(snippet.place() + " is told in the prose too")
                    .contains(snippet.text().substring(is + " is ".length()));
        }
    }
}
