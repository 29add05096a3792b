package org.gusset.workbench;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import org.gusset.svg.sheet.Form;
import org.gusset.svg.sheet.SewingSheet;
import org.gusset.svg.sheet.SheetOptions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The cutting and sewing sheet of a body. */
@Command(
        addMethodSubcommands = false,
        name = "sheet",
        description =
                "Tell what is cut and how it is sewn: finished measures and ease, pieces, strips, seams in order; with --out a"
                        + " page to print.",
        footer = {
            "",
            "Examples:",
            "  gusset sheet smock.gusset --measures cast.csv#'Ottilie Fenn'",
            "  gusset sheet smock.gusset --measures cast.csv --unit in --out paper"
        })
final class SheetCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "The folder to write the page (SVG, A4) to; made if need be. The sheet is told in any case.")
    private String out = "";

    @Mixin
    private final OnBodies onBodies = new OnBodies();

    SheetCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        PrintWriter writer = spec.commandLine().getOut();
        SheetOptions options = SheetOptions.defaults().withLengths(onBodies.style());
        boolean good = onBodies.tell(bench, spec, onBodies.bodies(), "sheet", drawing -> {
            Form sheet = SewingSheet.of(drawing, options);
            FormText.print(writer, sheet);
            if (!out.isEmpty()) {
                Path folder = FileBytes.path(out);
                Map<String, String> files = FormFiles.of(
                        sheet, onBodies.shortName(), drawing.measurements().body(), "sewing");
                WholeFiles.write(folder, files);
                files.keySet().forEach(name -> writer.println("The page is " + folder.resolve(name) + "."));
            }
            writer.flush();
        });
        return good ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }
}
