package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Drawing;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells everything that is wrong with a draft, and what its checks find on bodies. */
@Command(
        addMethodSubcommands = false,
        name = "check",
        description = "Tell what is wrong with a draft and, with measures, what its ranges, seams and checks find.",
        footer = {"", "Examples:", "  gusset check smock.gusset", "  gusset check smock.gusset --measures cast.csv"})
final class CheckCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(paramLabel = "DRAFT", description = "The draft.")
    private String draft = "";

    @Option(
            names = "--measures",
            paramLabel = "FILE[#NAME]",
            description = "Try the draft on this body, or on every body of the table.")
    private String measures = "";

    @Mixin
    private final Tailoring tailoring = new Tailoring();

    private final Map<Finding.Verdict, Integer> verdicts = new EnumMap<>(Finding.Verdict.class);

    CheckCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Fitting fitting = new Fitting(bench, draft, tailoring, out);
        boolean good = fitting.draftErrors().isEmpty();
        int tried = 0;
        if (!measures.isEmpty()) {
            Bodies bodies = Bodies.open(measures);
            if (fitting.draft().isPresent() && good) {
                Progress progress =
                        Progress.on(spec.commandLine().getErr(), bodies.names().size());
                tried = bodies.names().size();
                good = fitting.each(bodies, progress, (number, drawing) -> {
                    progress.clear();
                    tell(out, drawing, bodies.names().size() > 1);
                    return drawing.proved();
                });
            }
        }
        out.println(summary(fitting, tried));
        out.flush();
        return good ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }

    private void tell(PrintWriter out, Drawing drawing, boolean several) {
        if (several) {
            out.println(drawing.measurements().body() + ":");
        }
        Wording wording = tailoring.style().wording();
        for (Finding finding : drawing.findings()) {
            verdicts.merge(finding.verdict(), 1, Integer::sum);
            out.println("  " + word(finding.verdict()) + "  " + finding.name() + ": " + wording.say(finding.figures()));
        }
        if (!drawing.leftOut().isEmpty()) {
            out.println("  left out by choice: " + String.join(", ", drawing.leftOut()));
        }
        if (!drawing.estimated().isEmpty()) {
            out.println("  estimated, not measured: " + String.join(", ", drawing.estimated()));
        }
        out.flush();
    }

    private String summary(Fitting fitting, int tried) {
        List<String> parts = new ArrayList<>();
        parts.add(Messages.count(fitting.messages().errors(), "error"));
        parts.add(Messages.count(fitting.messages().warnings(), "warning"));
        for (Finding.Verdict verdict : Finding.Verdict.values()) {
            if (verdicts.containsKey(verdict)) {
                parts.add(verdicts.get(verdict) + " " + word(verdict).strip());
            }
        }
        String on = tried > 0
                ? ", tried on " + (tried == 1 ? "1 body" : tried + " bodies")
                : fitting.draftErrors().isEmpty() ? ", not tried on a body" : "";
        return fitting.file().source().name() + on + ": " + String.join(", ", parts);
    }

    private static String word(Finding.Verdict verdict) {
        return switch (verdict) {
            case PASSED -> "passed ";
            case FAILED -> "FAILED ";
            case SKIPPED -> "skipped";
            case UNKNOWN -> "unknown";
        };
    }
}
