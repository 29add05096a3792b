package org.gusset.workbench;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.gusset.core.draft.Drawing;
import org.gusset.svg.Svg;
import org.gusset.svg.sheet.SheetOptions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Walks every seam of a draft for a body: as a list in the order of sewing, and as a picture. */
@Command(
        addMethodSubcommands = false,
        name = "seams",
        description = "Walk every seam: a list in the order of sewing, and with --out a picture of both sides of each.",
        footer = {
            "",
            "Examples:",
            "  gusset seams smock.gusset --measures cast.csv#'Ottilie Fenn'",
            "  gusset seams smock.gusset --measures cast.csv --out paper"
        })
final class SeamsCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "The folder to write the picture to; made if need be. Without it only the list is told.")
    private String out = "";

    @Mixin
    private final OnBodies onBodies = new OnBodies();

    SeamsCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        PrintWriter writer = spec.commandLine().getOut();
        Bodies bodies = onBodies.bodies();
        FileNames names = new FileNames();
        boolean good = onBodies.tell(bench, spec, bodies, "seams", drawing -> {
            new SeamsText(writer, onBodies.style()).print(drawing);
            if (!out.isEmpty()) {
                write(drawing, names, writer);
            }
            writer.flush();
        });
        return good ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }

    private void write(Drawing drawing, FileNames names, PrintWriter writer) {
        Path folder = FileBytes.path(out);
        List<String> parts = new ArrayList<>();
        parts.add(onBodies.shortName());
        parts.add(drawing.measurements().body());
        parts.add("seams");
        String name = names.unused(".svg", parts.toArray(new String[0]));
        SheetOptions options = SheetOptions.defaults().withLengths(onBodies.style());
        WholeFiles.write(folder, Map.of(name, Svg.seams(drawing, options)));
        writer.println("The picture is " + folder.resolve(name) + ".");
    }
}
