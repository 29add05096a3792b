package org.gusset.workbench;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.draft.Needs;
import org.gusset.svg.sheet.Form;
import org.gusset.svg.sheet.MeasuringCard;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells which measures a draft needs, as a card to fill in and as an empty table. */
@Command(
        addMethodSubcommands = false,
        name = "measures",
        description =
                "Tell which measures a draft needs and how each is taken; with --out a card to print and an empty table.",
        footer = {
            "",
            "Examples:",
            "  gusset measures smock.gusset",
            "  gusset measures smock.gusset --set neckline=round --unit in --out paper"
        })
final class MeasuresCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(paramLabel = "DRAFT", description = "The draft.")
    private String draft = "";

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "The folder to write the card (SVG, A4) and the empty table (CSV) to; made if need be.")
    private String out = "";

    @Mixin
    private final Tailoring tailoring = new Tailoring();

    MeasuresCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        PrintWriter writer = spec.commandLine().getOut();
        Fitting fitting =
                new Fitting(bench, draft, tailoring, spec.commandLine().getErr());
        if (fitting.draft().isEmpty() || !fitting.draftErrors().isEmpty()) {
            fitting.messages()
                    .line("No card: the draft has "
                            + Messages.count(fitting.draftErrors().size(), "error") + ".");
            return ExitCodes.FAULTS;
        }
        Needs needs = Needs.of(fitting.draft().get(), tailoring.choices());
        fitting.messages().tell("", needs.diagnostics());
        if (needs.diagnostics().stream().anyMatch(Diagnostic::isError)) {
            return ExitCodes.FAULTS;
        }
        Form card = MeasuringCard.of(needs, tailoring.style());
        FormText.print(writer, card);
        if (!out.isEmpty()) {
            String stem = fitting.file().shortName();
            Map<String, String> files = new LinkedHashMap<>(FormFiles.of(card, stem, "measures"));
            String table = new FileNames().unused(".csv", stem, "measures");
            files.put(table, BlankTable.of(needs, tailoring.style()));
            Path folder = FileBytes.path(out);
            WholeFiles.write(folder, files);
            writer.println(
                    "The card is " + folder.resolve(files.keySet().iterator().next()) + ", the empty table "
                            + folder.resolve(table) + ".");
        }
        writer.flush();
        return ExitCodes.GOOD;
    }
}
