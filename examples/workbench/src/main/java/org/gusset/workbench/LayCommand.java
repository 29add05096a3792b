package org.gusset.workbench;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.gusset.core.cloth.HaveAnswer;
import org.gusset.core.cloth.Having;
import org.gusset.core.cloth.LayCloth;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Drawing;
import org.gusset.svg.Svg;
import org.gusset.svg.sheet.SheetOptions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Plans how the pieces are laid on cloth. */
@Command(
        addMethodSubcommands = false,
        name = "lay",
        description =
                "Plan how the pieces are laid on cloth: how much it takes, which piece lies where, whether what is at hand"
                        + " is enough; with --out a picture of each cloth.",
        footer = {
            "",
            "The exit code is 1 if something cannot be laid, or what is at hand is not enough.",
            "",
            "Examples:",
            "  gusset lay smock.gusset --measures cast.csv#'Ottilie Fenn' --out lays",
            "  gusset lay smock.gusset --measures cast.csv#'Ottilie Fenn' --cloth 110cm --one-way",
            "  gusset lay shirt.gusset --measures cast.csv#'Ottilie Fenn' --have shirting=1.25m --seconds 30"
        })
final class LayCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "The folder to write a picture (SVG) of each cloth to; made if need be.")
    private String out = "";

    @Mixin
    private final LayOptionsGiven given = new LayOptionsGiven();

    @Mixin
    private final OnBodies onBodies = new OnBodies();

    LayCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        PrintWriter writer = spec.commandLine().getOut();
        given.check();
        FileNames names = new FileNames();
        boolean[] enough = {true};
        boolean good = onBodies.tell(bench, spec, onBodies.bodies(), "lay", drawing -> {
            enough[0] &= lay(drawing, names, writer);
            writer.flush();
        });
        return good && enough[0] ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }

    private boolean lay(Drawing drawing, FileNames names, PrintWriter writer) {
        List<LayCloth> cloths = given.cloths(drawing);
        try (Searching searching = given.searching()) {
            LayPlanner planner = new LayPlanner(given.options(onBodies.style()), searching.of(given.seconds()));
            Outcome<List<LayPlan>> plans = planner.plan(drawing, cloths);
            LayText text = new LayText(writer, onBodies.style());
            text.heading(drawing);
            for (Diagnostic told : plans.diagnostics()) {
                text.told(told);
            }
            boolean good = !plans.hasErrors();
            Map<String, byte[]> files = new LinkedHashMap<>();
            List<String> pictures = new ArrayList<>();
            for (LayPlan plan : plans.value().orElse(List.of())) {
                Optional<HaveAnswer> answer = plan.cloth().atHand().map(have -> {
                    LayPlanner again = new LayPlanner(given.options(onBodies.style()), searching.of(given.seconds()));
                    boolean first = plan.cloth().name().equals(cloths.get(0).name());
                    return new Having(again, drawing, plan.cloth(), first)
                            .answer(
                                    plan,
                                    given.napByChoice(drawing, plan.cloth().name()));
                });
                good &= answer.map(a -> a.verdict() == HaveAnswer.Verdict.YES).orElse(true);
                text.print(plan, answer);
                if (!out.isEmpty()) {
                    String name = names.unused(
                            ".svg",
                            onBodies.shortName(),
                            drawing.measurements().body(),
                            "lay",
                            plan.cloth().name());
                    SheetOptions options = SheetOptions.defaults().withLengths(onBodies.style());
                    files.put(name, Svg.lay(drawing, plan, answer, options).getBytes(StandardCharsets.UTF_8));
                    pictures.add(name);
                }
            }
            if (!files.isEmpty()) {
                Path folder = FileBytes.path(out);
                WholeFiles.writeBytes(folder, files);
                pictures.forEach(name -> writer.println("The picture is " + folder.resolve(name) + "."));
            }
            return good;
        }
    }
}
