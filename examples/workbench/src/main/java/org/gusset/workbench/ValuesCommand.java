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
import picocli.CommandLine.Spec;

/** Tells every value, length and point that a draft names. */
@Command(
        addMethodSubcommands = false,
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

    @Option(names = "--json", description = "As JSON instead of a table.")
    private boolean json;

    @Mixin
    private final OnBodies onBodies = new OnBodies();

    ValuesCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Bodies bodies = onBodies.bodies();
        Map<String, Object> all = new LinkedHashMap<>();
        boolean good = onBodies.tell(bench, spec, bodies, "values", drawing -> {
            if (json) {
                all.put(drawing.measurements().body(), ValuesJson.of(drawing));
            } else {
                ValuesText.print(out, drawing, onBodies.style());
            }
        });
        if (!all.isEmpty()) {
            boolean one = bodies.names().size() == 1;
            out.println(text(one ? all.values().iterator().next() : Map.of("bodies", all)));
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
