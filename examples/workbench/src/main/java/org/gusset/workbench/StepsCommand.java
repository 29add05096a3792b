package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells how everything that a draft names is drawn, with the sums. */
@Command(
        name = "steps",
        description = "Tell step by step how every point and line is drawn for a body, with the sums shown.",
        footer = {
            "",
            "Examples:",
            "  gusset steps smock.gusset --measures cast.csv#'Ottilie Fenn' --unit in",
        })
final class StepsCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(paramLabel = "DRAFT", description = "The draft.")
    private String draft = "";

    @Option(
            names = "--measures",
            required = true,
            paramLabel = "FILE[#NAME]",
            description = "The table of measures; with a name only that body, else every body in it.")
    private String measures = "";

    @Mixin
    private final Tailoring tailoring = new Tailoring();

    StepsCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        PrintWriter out = spec.commandLine().getOut();
        Fitting fitting = new Fitting(bench, draft, tailoring, err);
        Bodies bodies = Bodies.open(measures);
        if (fitting.draft().isEmpty() || !fitting.draftErrors().isEmpty()) {
            fitting.messages()
                    .line("No steps: the draft has "
                            + Messages.count(fitting.draftErrors().size(), "error") + ".");
            return ExitCodes.FAULTS;
        }
        Progress progress = Progress.on(err, bodies.names().size());
        boolean good = fitting.each(bodies, progress, (number, drawing) -> {
            progress.clear();
            StepsText.print(out, drawing, tailoring.style());
            return drawing.proved();
        });
        out.flush();
        return good ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }
}
