package org.gusset.workbench;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Wording;
import org.gusset.dsl.Source;
import org.gusset.dsl.format.Formatter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lays drafts out afresh in their own files. */
@Command(
        addMethodSubcommands = false,
        name = "format",
        description = "Lay drafts out afresh: blanks and line breaks are set anew, words and comments stay.",
        footer = {
            "",
            "The files are written over, each whole or not at all. A draft that cannot be read is left as it is.",
            "",
            "Examples:",
            "  gusset format smock.gusset",
            "  gusset format --check smock.gusset skirt.gusset"
        })
final class FormatCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(paramLabel = "DRAFT", arity = "1..*", description = "The drafts.")
    private List<String> drafts = new ArrayList<>();

    @Option(names = "--check", description = "Write nothing; list the drafts that would change, and end with 1 if any.")
    private boolean check;

    FormatCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        // All are read before the first is written, so that a wrong name leaves everything as it was.
        List<Source> sources =
                drafts.stream().map(d -> DraftFile.read(d).source()).toList();
        boolean good = true;
        for (Source source : sources) {
            Outcome<String> outcome = Formatter.format(source);
            if (outcome.value().isEmpty()) {
                tell(source, outcome);
                good = false;
            } else if (!outcome.value().get().equals(source.text())) {
                good &= !check;
                if (!check) {
                    write(source.name(), outcome.value().get());
                }
                out.println(check ? source.name() : "laid out: " + source.name());
            }
        }
        out.flush();
        return good ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }

    private void tell(Source source, Outcome<String> outcome) {
        Messages messages = new Messages(
                bench, source, Wording.english(), spec.commandLine().getErr());
        messages.tell("", outcome.diagnostics());
        messages.line(source.name() + " is left as it is: it has " + Messages.count(messages.errors(), "error") + ".");
    }

    /** Writes a draft where its file truly lies, so that a link to it stays a link. */
    private static void write(String name, String text) {
        Path file;
        try {
            file = FileBytes.path(name).toRealPath();
        } catch (IOException e) {
            throw new Refusal("`" + name + "` cannot be written (" + FileBytes.reason(e) + ").");
        }
        WholeFiles.replace(file, text);
    }
}
