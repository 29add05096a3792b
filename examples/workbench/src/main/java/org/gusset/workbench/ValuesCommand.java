package org.gusset.workbench;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells every value, length and point that a draft names. */
@Command(
        name = "values",
        description = "Tell every value, length and point that the draft names, in millimetres and in the wanted unit.",
        footer = {
            "",
            "As JSON, lengths are plain numbers in mm and angles in degrees: `values` of the file, and under `pieces` each piece's",
            "`values`, `points` with `x` to the right and `y` down, `edges` and `lines` with `length` and `sewn`. Several bodies",
            "stand by name under `bodies`.",
            "",
            "Examples:",
            "  gusset values smock.gusset --measures cast.csv#'Ottilie Fenn' --unit in",
            "  gusset values smock.gusset --measures cast.csv --json"
        })
final class ValuesCommand implements Callable<Integer> {
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

    @Option(names = "--json", description = "As JSON instead of a table.")
    private boolean json;

    @Mixin
    private final Tailoring tailoring = new Tailoring();

    ValuesCommand(Bench bench) {
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
                    .line("No values: the draft has "
                            + Messages.count(fitting.draftErrors().size(), "error") + ".");
            return ExitCodes.FAULTS;
        }
        Map<String, Object> all = new LinkedHashMap<>();
        Progress progress = Progress.on(err, bodies.names().size());
        boolean good = fitting.each(bodies, progress, (number, drawing) -> {
            if (json) {
                all.put(drawing.measurements().body(), ValuesJson.of(drawing));
            } else {
                progress.clear();
                ValuesText.print(out, drawing, tailoring.style());
            }
            return drawing.proved();
        });
        if (json && !all.isEmpty()) {
            Object whole = bodies.names().size() == 1 ? all.values().iterator().next() : Map.of("bodies", all);
            out.println(text(whole));
        }
        out.flush();
        return good ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }

    private static String text(Object value) {
        try {
            return JSON.std.with(JSON.Feature.PRETTY_PRINT_OUTPUT).asString(value);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
