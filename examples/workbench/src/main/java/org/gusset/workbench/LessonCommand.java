package org.gusset.workbench;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.RefusedPiece;
import org.gusset.svg.page.PageOptions;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.workbench.lesson.LessonServer;
import org.gusset.workbench.lesson.LessonSession;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Makes a lesson of a draft for a body: a picture for each step, and a handout. */
@Command(
        addMethodSubcommands = false,
        name = "lesson",
        description =
                "Make a lesson: a picture for each step (SVG), what is new in strong lines with its measured distances and"
                        + " sentences, a page for the browser (lesson.html), and a handout to print (SVG pages and one PDF file).",
        footer = {
            "",
            "With several bodies each gets a folder of its own. A body's files are written together or not at all.",
            "",
            "Examples:",
            "  gusset lesson smock.gusset --measures cast.csv#'Ottilie Fenn' --out class",
            "  gusset lesson smock.gusset --measures cast.csv#'Ottilie Fenn' --unit in --paper letter --out class",
            "  gusset lesson smock.gusset --measures cast.csv#'Ottilie Fenn' --serve"
        })
final class LessonCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "The folder to write to; made if need be. Needed unless the lesson is served.")
    private String out = "";

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            description =
                    "What the handout is printed on: @|bold A4|@ (unless told), A3, A2, A1, A0, letter, legal, tabloid, or"
                            + " width and height (@|bold 8.5inx11in|@).")
    private String paper = "A4";

    @Option(
            names = "--margin",
            paramLabel = "LENGTH",
            description = "How far everything on the handout keeps from the edges of the paper; 10mm unless told.")
    private @Nullable String margin;

    @Option(
            names = "--unnamed",
            description = "Leave the body's name off the paper and out of the names of files and folders.")
    private boolean unnamed;

    @Option(
            names = "--serve",
            description =
                    "Serve the lesson as a page on this machine alone, with measures and choices that can be changed there,"
                            + " until Ctrl-C.")
    private boolean serve;

    @Option(
            names = "--port",
            paramLabel = "NUMBER",
            description = "With --serve: where to listen; any that is free unless told.")
    private @Nullable Integer port;

    @Mixin
    private final OnBodies onBodies = new OnBodies();

    LessonCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        if (!serve && out.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "say where to write with --out=DIR, or serve with --serve");
        }
        if (!serve && port != null) {
            throw new ParameterException(spec.commandLine(), "--port is for --serve");
        }
        PageOptions pages = PaperOptions.page(paper, margin, onBodies.style().wording());
        Bodies bodies = onBodies.bodies();
        boolean several = bodies.names().size() > 1;
        if (serve && several) {
            throw new Refusal("A lesson is served for one body; name it, as --measures 'FILE#"
                    + bodies.names().get(0) + "'.");
        }
        Path folder = FileBytes.path(out);
        FileNames folders = new FileNames();
        int[] number = {0};
        boolean good = onBodies.tell(bench, spec, bodies, "lesson", drawing -> {
            number[0]++;
            String body = unnamed ? "body " + number[0] : drawing.measurements().body();
            Path own = several ? folder.resolve(folders.unused("", body)) : folder;
            if (!out.isEmpty()) {
                write(drawing, own, unnamed && !several ? List.of() : List.of(body), pages);
            }
            if (serve) {
                serve(drawing);
            }
        });
        return good ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }

    private void serve(Drawing drawing) {
        SheetOptions options = options();
        LessonSession session = LessonServing.session(
                drawing, onBodies.style(), next -> LessonPages.content(next, onBodies.style(), options));
        try (LessonServer server = LessonServing.start(session, port == null ? 0 : port)) {
            Serving.untilStopped(
                    "The lesson",
                    server.address(),
                    server::close,
                    spec.commandLine().getOut());
        }
    }

    private SheetOptions options() {
        return SheetOptions.defaults().withLengths(onBodies.style()).withShowBody(!unnamed);
    }

    private void write(Drawing drawing, Path folder, List<String> body, PageOptions pages) {
        PrintWriter writer = spec.commandLine().getOut();
        String whose = drawing.title() + (body.isEmpty() ? "" : " for " + body.get(0));
        if (drawing.pieces().isEmpty()) {
            writer.println(whose + ": no lesson, since no piece could be made.");
            writer.flush();
            return;
        }
        List<String> stem = new ArrayList<>();
        stem.add(onBodies.shortName());
        stem.addAll(body);
        stem.add("lesson");
        SheetOptions options = options();
        LessonFiles lesson = LessonFiles.of(drawing, onBodies.style(), options, pages, stem);
        WholeFiles.writeBytes(folder, lesson.files());
        writer.println(whose + ": " + Messages.count(lesson.steps(), "step") + ", a page for the browser ("
                + LessonFiles.PAGE + "), and a handout of " + Messages.count(lesson.pages(), "page") + " in " + folder);
        if (!drawing.refused().isEmpty()) {
            writer.println("  left out, since they could not be made: "
                    + drawing.refused().stream().map(RefusedPiece::name).collect(Collectors.joining(", ")));
        }
        if (!lesson.missing().isEmpty()) {
            writer.println("  the PDF file's font does not have " + String.join(" ", lesson.missing()));
        }
        String beginning = stem.stream().map(FileNames::plain).collect(Collectors.joining("-")) + "-";
        List<String> old = WholeFiles.leftFromBefore(folder, beginning, lesson.files());
        if (!old.isEmpty()) {
            writer.println("  not of this run, and still there: " + String.join(", ", old));
        }
        writer.flush();
    }
}
