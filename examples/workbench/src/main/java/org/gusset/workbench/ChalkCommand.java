package org.gusset.workbench;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.gusset.core.chalk.ChalkLine;
import org.gusset.core.chalk.ChalkList;
import org.gusset.core.chalk.Tape;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;
import org.gusset.core.measure.Unit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists the marks of every piece for those who draft straight on the cloth. */
@Command(
        addMethodSubcommands = false,
        name = "chalk",
        description =
                "List the marks of every piece at rounded distances from the fold, for drafting straight on the cloth.",
        footer = {
            "",
            "Examples:",
            "  gusset chalk smock.gusset --measures cast.csv#'Ottilie Fenn' --unit in",
            "  gusset chalk smock.gusset --measures cast.csv --stitching-line --tape '0.5 cm' --out paper"
        })
final class ChalkCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Option(names = "--stitching-line", description = "Give the stitching line; allowances are added outside it.")
    private boolean stitching;

    @Option(
            names = "--cutting-line",
            description = "Give the cutting line, allowances within it. This is so unless told.")
    private boolean cutting;

    @Option(
            names = "--tape",
            paramLabel = "LENGTH",
            description = "The smallest part of the tape, to which all distances are rounded: 1 mm, or 1/16 in with"
                    + " @|bold --unit in|@, unless told.")
    private String tape = "";

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "The folder to write the list to as a text file; made if need be. It is told in any case.")
    private String out = "";

    @Mixin
    private final OnBodies onBodies = new OnBodies();

    ChalkCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        if (stitching && cutting) {
            throw new Refusal("A chalk list gives one line: choose --stitching-line or --cutting-line.");
        }
        ChalkLine line = stitching ? ChalkLine.STITCHING : ChalkLine.CUTTING;
        Tape marked = tape();
        PrintWriter writer = spec.commandLine().getOut();
        FileNames names = new FileNames();
        boolean good = onBodies.tell(bench, spec, onBodies.bodies(), "chalk list", drawing -> {
            StringWriter text = new StringWriter();
            PrintWriter lines = new PrintWriter(text);
            new ChalkText(lines, ChalkList.of(drawing, line, marked), onBodies.style()).print(drawing);
            lines.flush();
            writer.print(text);
            if (!out.isEmpty()) {
                Path folder = FileBytes.path(out);
                String name = names.unused(
                        ".txt", onBodies.shortName(), drawing.measurements().body(), "chalk");
                WholeFiles.write(folder, Map.of(name, text.toString()));
                writer.println("The list is " + folder.resolve(name) + ".");
            }
            writer.flush();
        });
        return good ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }

    private Tape tape() {
        Unit unit = onBodies.style().unit();
        if (tape.isEmpty()) {
            return Tape.of(unit);
        }
        Outcome<Quantity> read = QuantityText.parse(tape, Place.nowhere());
        Optional<Tape> found =
                read.value().filter(q -> q.dimension().equals(Dimension.LENGTH)).flatMap(q -> Tape.of(unit, q.value()));
        return found.orElseThrow(() -> new Refusal("No tape in " + unit.symbol() + " has parts of `" + tape + "`. "
                + (unit == Unit.IN
                        ? "With --unit in there are 1 in, 1/2 in, 1/4 in, 1/8 in, 1/16 in, 1/32 in and 1/64 in."
                        : "There are 0.5 mm, 1 mm, 2 mm, 5 mm (0.5 cm) and 1 cm; parts of an inch need --unit in.")));
    }
}
