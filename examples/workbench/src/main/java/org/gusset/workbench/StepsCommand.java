package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Tells how everything that a draft names is drawn, with the sums. */
@Command(
        addMethodSubcommands = false,
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

    @Mixin
    private final OnBodies onBodies = new OnBodies();

    StepsCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        boolean good = onBodies.tell(
                bench, spec, onBodies.bodies(), "steps", drawing -> StepsText.print(out, drawing, onBodies.style()));
        out.flush();
        return good ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }
}
