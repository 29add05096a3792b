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
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.draft.Drawing;
import org.gusset.core.json.DrawingJson;
import org.gusset.core.measure.Measurements;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.Svg;
import org.gusset.svg.page.PageOptions;
import org.gusset.svg.page.Pages;
import org.gusset.svg.sheet.Nest;
import org.gusset.svg.sheet.SheetContent;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.sheet.SheetParts;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Draws the pieces of a draft for one or many bodies, true to scale. */
@Command(
        addMethodSubcommands = false,
        name = "draw",
        description = "Draw the pieces as SVG, true to scale: a file for each piece and a sheet with all of them.",
        footer = {
            "",
            "With several bodies each gets a folder of its own. A body's files are written together or not at all.",
            "",
            "Examples:",
            "  gusset draw smock.gusset --measures cast.csv#'Ottilie Fenn' --out paper",
            "  gusset draw smock.gusset --measures cast.csv --set neckline=round --unit in --out paper",
            "  gusset draw smock.gusset --measures cast.csv --paper A4 --out paper",
            "  gusset draw smock.gusset --measures cast.csv --nest --out paper",
            "  gusset draw smock.gusset --measures cast.csv#'Ottilie Fenn' --toile --out paper",
            "  gusset draw --scale-check 48.5mm"
        })
final class DrawCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "DIR",
            description = "The folder to write to; made if need be.")
    private String out = "";

    @Option(
            names = "--unnamed",
            description = "Leave the body's name off the paper and out of the names of files and folders.")
    private boolean unnamed;

    @Option(
            names = "--anyway",
            description =
                    "Draw what can be drawn although something is wrong; every label then says NOT PROVED and why.")
    private boolean anyway;

    @Option(names = "--json", description = "Also write the drawing as JSON for other programs, beside the sheets.")
    private boolean json;

    /** As with a request for help, nothing else need be given then. */
    @Option(
            names = "--scale-check",
            paramLabel = "LENGTH",
            help = true,
            description =
                    "Draw nothing, but tell what it means that the printed test square of 50 mm measures so "
                            + "(@|bold 48.5mm|@, @|bold 48.5mmx49mm|@, @|bold '1 7/8in of 2in'|@); with --measures also for each body.")
    @SuppressWarnings("deprecation")
    private @Nullable String printed;

    @Mixin
    private final NestOptions nest = new NestOptions();

    @Mixin
    private final ToileOptions toile = new ToileOptions();

    @Mixin
    private final PaperOptions paper = new PaperOptions();

    @Mixin
    private final OnBodies onBodies = new OnBodies();

    DrawCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        if (printed != null) {
            return scaleCheck(PrintScale.parse(printed));
        }
        Optional<PageOptions> pages = paper.read(onBodies.style().wording());
        PrintWriter err = spec.commandLine().getErr();
        Fitting fitting = onBodies.fitting(bench, err);
        boolean nested = nest.wanted();
        toile.check(nested);
        if (json && (nested || !toile.stem().isEmpty())) {
            throw new Refusal("--json writes the drawing of one body as it is: leave --nest and --toile out.");
        }
        Bodies bodies = nested ? nest.of(onBodies.bodies()) : onBodies.bodies();
        Path folder = FileBytes.path(out);
        boolean faulty = !fitting.draftErrors().isEmpty();
        if (fitting.draft().isEmpty() || (faulty && !anyway)) {
            String how = fitting.draft().isPresent() ? "; --anyway draws what can be drawn" : "";
            fitting.messages()
                    .line("Nothing was drawn: the draft has "
                            + Messages.count(fitting.draftErrors().size(), "error") + how + ".");
            return ExitCodes.FAULTS;
        }
        if (nested) {
            boolean sound = nest(fitting, bodies, folder, pages);
            return sound && !faulty ? ExitCodes.GOOD : ExitCodes.FAULTS;
        }
        FileNames folders = new FileNames();
        List<String> drawn = new ArrayList<>();
        Progress progress = Progress.on(err, bodies.names().size());
        boolean good = fitting.each(bodies, progress, (number, drawing) -> {
            if ((!drawing.proved() && !anyway) || drawing.pieces().isEmpty()) {
                return false;
            }
            String body = unnamed ? "body " + number : drawing.measurements().body();
            boolean several = bodies.names().size() > 1;
            Path own = several ? folder.resolve(folders.unused("", body)) : folder;
            progress.clear();
            write(fitting, drawing, own, unnamed && !several ? List.of() : List.of(body), pages);
            drawn.add(body);
            return drawing.proved();
        });
        int missed = bodies.names().size() - drawn.size();
        if (missed > 0) {
            fitting.messages().line(missed(drawn.size(), bodies.names().size()));
        }
        return good && !faulty ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }

    private boolean nest(Fitting fitting, Bodies bodies, Path folder, Optional<PageOptions> pages) {
        Progress progress =
                Progress.on(spec.commandLine().getErr(), bodies.names().size());
        List<SheetContent> contents = new ArrayList<>();
        List<String> drawn = new ArrayList<>();
        boolean good = fitting.each(bodies, progress, (number, drawing) -> {
            if ((!drawing.proved() && !anyway) || drawing.pieces().isEmpty()) {
                return false;
            }
            contents.add(content(drawing, fitting.draftErrors()));
            drawn.add(drawing.measurements().body());
            return drawing.proved();
        });
        progress.clear();
        List<String> missed =
                bodies.names().stream().filter(name -> !drawn.contains(name)).toList();
        if (contents.isEmpty()) {
            fitting.messages().line(missed(0, bodies.names().size()));
            return false;
        }
        if (!missed.isEmpty()) {
            fitting.messages().line("Not in the nest: " + String.join(", ", missed) + ".");
        }
        Nest.objection(contents).ifPresent(wrong -> {
            throw new Refusal(wrong.message());
        });
        write(fitting, Nest.ofContents(contents, nest.line(), !unnamed), folder, pages);
        return good;
    }

    private void write(Fitting fitting, Nest sizes, Path folder, Optional<PageOptions> pages) {
        SheetOptions options = options();
        List<String> stem = List.of(fitting.file().shortName(), "nest");
        FileNames names = new FileNames();
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(names.unused(".svg", stem.toArray(new String[0])), utf8(Svg.nest(sizes, options)));
        String title = sizes.sizes().get(0).content().title();
        String all = title + ", " + Messages.count(sizes.sizes().size(), "size");
        Optional<PageFiles> paged = pages.map(wanted -> PageFiles.add(
                all, Pages.of(SheetParts.of(sizes, options), options, wanted).orThrow(), options, stem, names, files));
        WholeFiles.writeBytes(folder, files);
        PrintWriter out = spec.commandLine().getOut();
        out.println(all + " laid on one another: "
                + Messages.count(sizes.pieces().size(), "piece") + " in " + folder
                + (sizes.sizes().stream().allMatch(size -> size.content().proved()) ? "" : " (NOT PROVED)"));
        paged.ifPresent(
                done -> out.println("  on " + pages.orElseThrow().paper().name() + ": " + done.words()));
        out.flush();
        String beginning = String.join("-", stem.stream().map(FileNames::plain).toList()) + "-";
        List<String> old = WholeFiles.leftFromBefore(folder, beginning, files);
        if (!old.isEmpty()) {
            fitting.messages().line("Not of this run, and still in " + folder + ": " + String.join(", ", old));
        }
    }

    private SheetOptions options() {
        return SheetOptions.defaults().withLengths(onBodies.style()).withShowBody(!unnamed);
    }

    private String missed(int drawn, int all) {
        String how = anyway ? "" : "; --anyway draws what can be drawn where only the draft's checks fail";
        return drawn == 0
                ? "Nothing was drawn" + how + "."
                : "Drawn for " + drawn + " of " + all + " bodies" + how + ".";
    }

    private int scaleCheck(PrintScale scale) {
        List<Measurements> measured = new ArrayList<>();
        if (onBodies.measured()) {
            Bodies bodies = onBodies.bodies();
            bodies.names().forEach(name -> bodies.body(name).value().ifPresent(measured::add));
        }
        PrintWriter out = spec.commandLine().getOut();
        new ScaleText(scale, onBodies.style()).lines(measured).forEach(out::println);
        out.flush();
        return scale.even() ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }

    private void write(Fitting fitting, Drawing drawing, Path folder, List<String> body, Optional<PageOptions> pages) {
        SheetOptions options = options();
        SheetContent content = toile.applied(content(drawing, fitting.draftErrors()), drawing);
        List<String> stem = new ArrayList<>();
        stem.add(fitting.file().shortName());
        stem.addAll(body);
        stem.addAll(toile.stem());
        FileNames names = new FileNames();
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(name(names, stem, "sheet"), utf8(Svg.sheet(content, options)));
        for (Piece piece : content.pieces()) {
            files.put(name(names, stem, piece.name()), utf8(Svg.piece(content, piece, options)));
        }
        if (json) {
            stem.add("drawing");
            files.put(names.unused(".json", stem.toArray(new String[0])), utf8(json(drawing, fitting.draftErrors())));
            stem.remove(stem.size() - 1);
        }
        Optional<PageFiles> paged = pages.map(wanted -> PageFiles.add(content, options, wanted, stem, names, files));
        WholeFiles.writeBytes(folder, files);
        PrintWriter out = spec.commandLine().getOut();
        out.println(drawing.title() + (body.isEmpty() ? "" : " for " + body.get(0)) + ": a sheet and "
                + Messages.count(content.pieces().size(), "piece") + " in " + folder
                + (content.proved() ? "" : " (NOT PROVED)"));
        paged.ifPresent(
                done -> out.println("  on " + pages.orElseThrow().paper().name() + ": " + done.words()));
        if (!drawing.estimated().isEmpty()) {
            out.println("  estimated, not measured: " + String.join(", ", drawing.estimated()));
        }
        out.flush();
        String beginning = String.join("-", stem.stream().map(FileNames::plain).toList()) + "-";
        List<String> old = WholeFiles.leftFromBefore(folder, beginning, files);
        if (!old.isEmpty()) {
            fitting.messages().line("Not of this run, and still in " + folder + ": " + String.join(", ", old));
        }
    }

    private String json(Drawing drawing, List<Diagnostic> draftErrors) {
        Measurements body = drawing.measurements();
        Drawing shown = unnamed ? drawing.with(new Measurements("", body.entries())) : drawing;
        return DrawingJson.of(shown, onBodies.style().wording(), draftErrors) + "\n";
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String name(FileNames names, List<String> stem, String last) {
        List<String> parts = new ArrayList<>(stem);
        parts.add(last);
        return names.unused(".svg", parts.toArray(new String[0]));
    }

    /** What the sheets show; errors of the draft itself are reasons too, although evaluation never sees them. */
    static SheetContent content(Drawing drawing, List<Diagnostic> draftErrors) {
        SheetContent plain = SheetContent.of(drawing);
        List<Phrase> reasons = new ArrayList<>();
        draftErrors.forEach(d -> reasons.add(d.phrase()));
        plain.reasons().stream().filter(r -> !reasons.contains(r)).forEach(reasons::add);
        return plain.withReasons(reasons);
    }
}
