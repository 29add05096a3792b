package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the commands share that try a draft on the bodies of a table. */
final class OnBodies {
    @Parameters(paramLabel = "DRAFT", description = "The draft.")
    private String draft = "";

    @Option(
            names = "--measures",
            required = true,
            paramLabel = "FILE[#NAME]",
            description = "The table of measures; with a name only that body, else every body in it.")
    private String measures = "";

    @Mixin
    private final Tailoring tailoring = new Tailoring();

    /** True if a table was named. */
    boolean measured() {
        return !measures.isEmpty();
    }

    Fitting fitting(Bench bench, PrintWriter err) {
        return new Fitting(bench, draft, tailoring, err);
    }

    Bodies bodies() {
        return Bodies.open(measures);
    }

    /**
     * The measures of all bodies.
     *
     * @throws Refusal if one of them cannot be read, since a message about it would be in the way of what is shown
     */
    List<Measurements> allMeasured() {
        Bodies bodies = bodies();
        List<Measurements> all = new ArrayList<>();
        for (String name : bodies.names()) {
            bodies.body(name).value().ifPresent(all::add);
        }
        if (all.isEmpty() || bodies.spoilt()) {
            throw new Refusal(
                    "The table `" + measures + "` has to be mended first; `gusset measures` tells what is wrong.");
        }
        return all;
    }

    String draft() {
        return draft;
    }

    Choices choices() {
        return tailoring.choices();
    }

    /** The draft's file name without its ending. */
    String shortName() {
        return DraftFile.read(draft).shortName();
    }

    LengthStyle style() {
        return tailoring.style();
    }

    /**
     * Tells of each body's drawing, if the draft itself has no error.
     *
     * @param what what there is none of otherwise
     * @return true if nothing was wrong
     */
    boolean tell(Bench bench, CommandSpec spec, Bodies bodies, String what, Consumer<Drawing> use) {
        PrintWriter err = spec.commandLine().getErr();
        Fitting fitting = fitting(bench, err);
        if (fitting.draft().isEmpty() || !fitting.draftErrors().isEmpty()) {
            fitting.messages()
                    .line("No " + what + ": the draft has "
                            + Messages.count(fitting.draftErrors().size(), "error") + ".");
            return false;
        }
        Progress progress = Progress.on(err, bodies.names().size());
        return fitting.each(bodies, progress, (number, drawing) -> {
            progress.clear();
            use.accept(drawing);
            return drawing.proved();
        });
    }
}
