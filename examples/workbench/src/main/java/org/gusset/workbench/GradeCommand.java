package org.gusset.workbench;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.draft.Drawing;
import org.gusset.core.grade.Grade;
import org.gusset.core.measure.ChartCode;
import org.gusset.core.measure.ChartFaults;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.SizeChart;
import org.gusset.svg.Svg;
import org.gusset.svg.sheet.Nest;
import org.gusset.svg.sheet.SheetContent;
import org.gusset.svg.sheet.SheetOptions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Grades a draft over a chart of sizes: seams by size, grade rules, the nest and a drawing of how every corner moves. */
@Command(
        addMethodSubcommands = false,
        name = "grade",
        description =
                "Grade a draft over a chart of sizes: check every seam in every size, and write the grade rules, the nest "
                        + "and a drawing of how every corner moves.",
        footer = {
            "",
            "Examples:",
            "  gusset grade skirt.gusset --sizes chart.csv --out paper",
            "  gusset grade skirt.gusset --sizes chart.csv --size 36 --size 38 --size 40 --unit mm --out paper"
        })
final class GradeCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(paramLabel = "DRAFT", description = "The draft.")
    private String draft = "";

    @Option(
            names = "--sizes",
            required = true,
            paramLabel = "FILE",
            description =
                    "The chart: a table of measures with one size where else a body stands, in the order of the grade.")
    private String sizes = "";

    @Option(
            names = "--size",
            paramLabel = "NAME",
            description = "Only this size of the chart. Once for each, in the order of the grade.")
    private List<String> chosen = new ArrayList<>();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "DIR",
            description = "The folder to write to; made if need be.")
    private String out = "";

    @Option(
            names = "--stitching-line",
            description = "Draw the nest at the line where the seams are sewn, instead of that where the cloth is cut.")
    private boolean stitching;

    @Option(
            names = "--anyway",
            description =
                    "Draw also those sizes in the nest in which something is wrong; every label then says NOT PROVED.")
    private boolean anyway;

    @Mixin
    private final Tailoring tailoring = new Tailoring();

    GradeCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        Fitting fitting = new Fitting(bench, draft, tailoring, err);
        Bodies all = Bodies.open(sizes);
        Bodies bodies = chosen.isEmpty() ? all : all.only(chosen);
        if (fitting.draft().isEmpty() || !fitting.draftErrors().isEmpty()) {
            fitting.messages()
                    .line("Nothing was graded: the draft has "
                            + Messages.count(fitting.draftErrors().size(), "error") + ".");
            return ExitCodes.FAULTS;
        }
        fitting.messages().tell("", doubtful(bodies));
        List<Drawing> drawings = new ArrayList<>();
        Progress progress = Progress.on(err, bodies.names().size());
        boolean good = fitting.each(bodies, progress, (number, drawing) -> {
            drawings.add(drawing);
            return drawing.proved();
        });
        if (drawings.stream().allMatch(drawing -> drawing.pieces().isEmpty())) {
            fitting.messages().line("Nothing was graded: no size could be drawn.");
            return ExitCodes.FAULTS;
        }
        unread(fitting, bodies, drawings);
        Grade grade = Grade.over(drawings).value().orElseThrow();
        fitting.messages().tell("", grade.diagnostics());
        PrintWriter writer = spec.commandLine().getOut();
        new GradeText(writer, tailoring.style()).print(grade);
        write(fitting, grade, writer);
        writer.flush();
        return good && grade.diagnostics().stream().noneMatch(Diagnostic::isError) ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }

    /** What is doubtful in the chart; what it lacks is told by the draft, which may have a rule for it or no need of it. */
    private List<Diagnostic> doubtful(Bodies bodies) {
        List<Measurements> read = bodies.names().stream()
                .flatMap(name -> bodies.body(name).value().stream())
                .toList();
        return ChartFaults.of(new SizeChart(sizes, read)).stream()
                .filter(fault -> fault.code() != ChartCode.GAPS)
                .toList();
    }

    /** Sizes whose cells could not be read stand nowhere in the grade: the step over them is larger, and that is told. */
    private static void unread(Fitting fitting, Bodies bodies, List<Drawing> drawings) {
        List<String> graded =
                drawings.stream().map(drawing -> drawing.measurements().body()).toList();
        List<String> missed =
                bodies.names().stream().filter(name -> !graded.contains(name)).toList();
        if (!missed.isEmpty()) {
            fitting.messages()
                    .line("Not graded: " + String.join(", ", missed)
                            + ". The size after it is counted from the one before it.");
        }
    }

    private void write(Fitting fitting, Grade grade, PrintWriter writer) {
        SheetOptions options = SheetOptions.defaults().withLengths(tailoring.style());
        String stem = fitting.file().shortName();
        FileNames names = new FileNames();
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(
                names.unused(".csv", stem, "grade", "rules"), utf8(grade.rules().csv()));
        files.put(names.unused(".svg", stem, "grade"), utf8(Svg.grade(grade, options)));
        List<SheetContent> contents = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        for (Grade.Sized size : grade.sizes()) {
            Drawing drawing = size.drawing();
            if (!drawing.pieces().isEmpty() && (drawing.proved() || anyway)) {
                contents.add(DrawCommand.content(drawing, List.of()));
            } else {
                missing.add(size.name());
            }
        }
        nests(contents, stem, names, options, files);
        Path folder = FileBytes.path(out);
        WholeFiles.writeBytes(folder, files);
        if (!missing.isEmpty()) {
            fitting.messages()
                    .line("Not in the nest: " + String.join(", ", missing)
                            + (anyway ? "." : "; --anyway draws what can be drawn of it."));
        }
        writer.println("Written to " + folder + ": " + String.join(", ", files.keySet()));
        List<String> old = WholeFiles.leftFromBefore(folder, FileNames.plain(stem) + "-nest-", files);
        if (!old.isEmpty()) {
            fitting.messages().line("Not of this run, and still in " + folder + ": " + String.join(", ", old));
        }
    }

    private void nests(
            List<SheetContent> contents,
            String stem,
            FileNames names,
            SheetOptions options,
            Map<String, byte[]> files) {
        if (contents.isEmpty()) {
            return;
        }
        Nest.Line line = stitching ? Nest.Line.STITCHING : Nest.Line.CUTTING;
        List<List<SheetContent>> sheets = NestSheets.of(contents);
        for (int i = 0; i < sheets.size(); i++) {
            String name = sheets.size() == 1
                    ? names.unused(".svg", stem, "nest")
                    : names.unused(".svg", stem, "nest", String.valueOf(i + 1));
            Nest.objection(sheets.get(i)).ifPresent(wrong -> {
                throw new Refusal(wrong.message());
            });
            files.put(name, utf8(Svg.nest(Nest.ofContents(sheets.get(i), line, true), options)));
        }
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
