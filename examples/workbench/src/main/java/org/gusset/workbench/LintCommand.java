package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Severity;
import org.gusset.core.diagnostic.Wording;
import org.gusset.dsl.Source;
import org.gusset.dsl.lint.Linter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what is no error in drafts and yet may not be meant. */
@Command(
        addMethodSubcommands = false,
        name = "lint",
        description = "Tell what is no error in a draft and yet may not be meant: unused names, edges without a seam.",
        footer = {"", "Examples:", "  gusset lint smock.gusset", "  gusset lint --strict smock.gusset skirt.gusset"})
final class LintCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(paramLabel = "DRAFT", arity = "1..*", description = "The drafts.")
    private List<String> drafts = new ArrayList<>();

    @Option(names = "--strict", description = "End with 1 if there is a warning; notes do not count.")
    private boolean strict;

    LintCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        List<Source> sources =
                drafts.stream().map(d -> DraftFile.read(d).source()).toList();
        boolean good = true;
        for (Source source : sources) {
            Messages messages = new Messages(bench, source, Wording.english(), out);
            List<Diagnostic> told = Linter.lint(source);
            messages.tell("", told);
            int notes = (int)
                    told.stream().filter(d -> d.severity() == Severity.NOTE).count();
            String errors = messages.errors() == 0 ? "" : Messages.count(messages.errors(), "error") + ", ";
            messages.line(source.name() + ": " + errors + Messages.count(messages.warnings(), "warning") + ", "
                    + Messages.count(notes, "note"));
            good &= messages.errors() == 0 && !(strict && messages.warnings() > 0);
        }
        return good ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }
}
