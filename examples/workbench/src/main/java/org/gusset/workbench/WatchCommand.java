package org.gusset.workbench;

import java.util.List;
import java.util.concurrent.Callable;
import org.gusset.core.measure.Measurements;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Shows a draft beside its picture on a page of this machine, and draws it again as it is written. */
@Command(
        addMethodSubcommands = false,
        name = "watch",
        description =
                "Show the draft beside its picture on a page of this machine, and draw it again whenever the file is saved"
                        + " or a measure is moved there, until Ctrl-C.",
        footer = {
            "",
            "The draft is written in an editor of your own; the page never changes a file.",
            "",
            "Examples:",
            "  gusset watch smock.gusset --measures cast.csv",
            "  gusset watch smock.gusset --measures cast.csv#'Ottilie Fenn' --port 8080"
        })
final class WatchCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Mixin
    private final OnBodies on = new OnBodies();

    @Option(names = "--port", paramLabel = "NUMBER", description = "Where to listen; any that is free unless told.")
    private @Nullable Integer port;

    WatchCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        List<Measurements> bodies = on.allMeasured();
        try (Watching watching = Serving.start(
                "The page",
                port == null ? 0 : port,
                p -> Watching.start(bench, on.draft(), bodies, on.choices(), on.style(), p))) {
            Serving.untilStopped(
                    "The draft",
                    watching.address(),
                    watching::close,
                    spec.commandLine().getOut());
        }
        return ExitCodes.GOOD;
    }
}
