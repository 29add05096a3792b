package org.gusset.workbench;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.BindException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.measure.Measurements;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
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

    @Parameters(paramLabel = "DRAFT", description = "The draft.")
    private String draft = "";

    @Option(
            names = "--measures",
            required = true,
            paramLabel = "FILE[#NAME]",
            description = "The table of measures; with a name only that body, else every body in it.")
    private String measures = "";

    @Option(names = "--port", paramLabel = "NUMBER", description = "Where to listen; any that is free unless told.")
    private @Nullable Integer port;

    @Mixin
    private final Tailoring tailoring = new Tailoring();

    WatchCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        int wanted = port == null ? 0 : port;
        if (wanted < 0 || wanted > LessonServing.LAST_PORT) {
            throw new Refusal("`--port " + port + "`: a port is a number from 1 to " + LessonServing.LAST_PORT
                    + ", or 0 for any.");
        }
        CountDownLatch stopped = new CountDownLatch(1);
        try (Watching watching = Watching.start(
                bench, draft, bodies(Bodies.open(measures)), tailoring.choices(), tailoring.style(), wanted)) {
            Runtime.getRuntime().addShutdownHook(new Thread(stopped::countDown, "stop"));
            out.println("The draft is at " + watching.address());
            out.println("Only this machine can open it. Ctrl-C stops it.");
            out.flush();
            stopped.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (BindException e) {
            throw new Refusal("The port " + wanted + " is taken, or not allowed (" + FileBytes.reason(e)
                    + "). Give another with --port, or leave it out for any that is free.");
        } catch (IOException e) {
            throw new Refusal("The page cannot be served (" + FileBytes.reason(e) + ").");
        }
        return ExitCodes.GOOD;
    }

    private List<Measurements> bodies(Bodies bodies) {
        List<Measurements> all = new ArrayList<>();
        for (String name : bodies.names()) {
            Outcome<Measurements> body = bodies.body(name);
            body.value().ifPresent(all::add);
        }
        if (all.isEmpty() || bodies.spoilt()) {
            throw new Refusal(
                    "The table `" + measures + "` has to be mended first; `gusset measures` tells what is wrong.");
        }
        return all;
    }
}
