package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Needs;
import org.gusset.core.measure.FilledIn;
import org.gusset.core.measure.FillingIn;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.SizeChart;
import org.gusset.core.sizing.SizeChoice;
import org.gusset.core.sizing.SizeFinder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells of a chart of sizes: its steps, what is doubtful, which size fits whom, and measures between sizes. */
@Command(
        addMethodSubcommands = false,
        name = "sizes",
        description =
                "Tell the steps of a chart of sizes and what is doubtful in it; with --measures which size fits whom, and with"
                        + " --between the measures that bodies lack, taken from between the sizes.",
        footer = {
            "",
            "Examples:",
            "  gusset sizes --sizes stock.csv",
            "  gusset sizes --sizes stock.csv --measures cast.csv#'Ottilie Fenn'",
            "  gusset sizes smock.gusset --sizes stock.csv --measures cast.csv",
            "  gusset sizes --sizes stock.csv --measures cast.csv --between --lead hip_depth=hip > whole.csv"
        })
final class SizesCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(
            paramLabel = "DRAFT",
            arity = "0..1",
            description = "With --measures: the size is chosen for this draft, by the measures that it needs.")
    private String draft = "";

    @Option(
            names = "--sizes",
            required = true,
            paramLabel = "FILE",
            description = "The chart of sizes: a table of measures whose bodies are the sizes, the smallest first.")
    private String sizes = "";

    @Option(
            names = "--measures",
            paramLabel = "FILE[#NAME]",
            description = "The bodies to find sizes for; with a name only that body, else every body of the table.")
    private String measures = "";

    @Option(
            names = "--key",
            paramLabel = "MEASURE",
            description =
                    "With --measures: this measure chooses the size, and no other that is not named so. Once for each. Unless told"
                            + " bust or chest, waist and hip choose it.")
    private List<String> keys = new ArrayList<>();

    @Option(
            names = "--between",
            description =
                    "With --measures: write a table of measures in which what each body lacks is filled in from the"
                            + " chart, between the two sizes where it falls.")
    private boolean between;

    @Option(
            names = "--lead",
            paramLabel = "[MEASURE=]LEAD",
            description =
                    "With --between: the measure that tells between which sizes a body falls, the first of the chart that it"
                            + " has unless told; @|bold --lead hip_depth=hip|@ for one measure alone. Once for each.")
    private List<String> leads = new ArrayList<>();

    @Option(
            names = "--carry-on",
            description =
                    "With --between: beyond the first and the last size carry the nearest step on, instead of refusing.")
    private boolean carryOn;

    @Mixin
    private final Tailoring tailoring = new Tailoring();

    SizesCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        refuseWhatDoesNotGoTogether();
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        ChartFile chart = ChartFile.read(sizes);
        Messages messages = new Messages(bench, List::of, tailoring.style().wording(), between ? err : out);
        if (chart.unreadable()) {
            messages.tell("", chart.diagnostics());
            throw new Refusal("No size could be read.");
        }
        SizesText text = new SizesText(out, tailoring.style());
        if (measures.isEmpty()) {
            text.steps(chart.chart());
        }
        messages.tell("", chart.diagnostics());
        boolean good = messages.errors() == 0;
        if (chart.spoilt()) {
            messages.line("The chart has to be mended first.");
            return ExitCodes.FAULTS;
        }
        if (measures.isEmpty()) {
            messages.line(sizes + ": " + Messages.count(messages.errors(), "error") + ", "
                    + Messages.count(messages.warnings(), "warning"));
            out.flush();
            return good ? ExitCodes.GOOD : ExitCodes.FAULTS;
        }
        good &= between ? fill(chart.chart(), out, messages) : find(chart.chart(), text, messages);
        out.flush();
        return good ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }

    private void refuseWhatDoesNotGoTogether() {
        if (measures.isEmpty() && (between || !keys.isEmpty() || !draft.isEmpty())) {
            throw new Refusal("A size is found for a body: add --measures FILE[#NAME].");
        }
        if (!between && (carryOn || !leads.isEmpty())) {
            throw new Refusal("--lead and --carry-on belong to measures between sizes: add --between.");
        }
        if (between && (!keys.isEmpty() || !draft.isEmpty())) {
            throw new Refusal("--between fills in measures and finds no size: leave out the draft and --key.");
        }
    }

    private boolean fill(SizeChart chart, PrintWriter out, Messages messages) {
        FillingIn filling = FillingIn.from(chart);
        for (String written : leads) {
            int equals = written.indexOf('=');
            filling = equals < 0
                    ? filling.ledBy(written.strip())
                    : filling.withLead(
                            written.substring(0, equals).strip(),
                            written.substring(equals + 1).strip());
        }
        FillingIn chosen = carryOn ? filling.carriedOn() : filling;
        List<FilledIn> filled = new ArrayList<>();
        boolean good = each(messages, (heading, body) -> {
            Outcome<FilledIn> outcome = chosen.fill(body);
            messages.tell(heading, outcome.diagnostics());
            outcome.value().ifPresent(filled::add);
            return !outcome.hasErrors();
        });
        if (!filled.isEmpty()) {
            out.print(FilledTable.of(chart, filled));
        }
        return good;
    }

    private boolean find(SizeChart chart, SizesText text, Messages messages) {
        Optional<SizeFinder> finder = finder(chart);
        if (finder.isEmpty()) {
            messages.line("No size was looked for: the draft has to be mended first.");
            return false;
        }
        return each(messages, (heading, body) -> {
            Outcome<SizeChoice> outcome = finder.get().find(body);
            outcome.value().ifPresent(text::choice);
            messages.tell(outcome.value().isPresent() ? "" : heading, outcome.diagnostics());
            return !outcome.hasErrors();
        });
    }

    private Optional<SizeFinder> finder(SizeChart chart) {
        SizeFinder finder = SizeFinder.of(chart);
        if (!draft.isEmpty()) {
            Fitting fitting =
                    new Fitting(bench, draft, tailoring, spec.commandLine().getErr());
            if (fitting.draft().isEmpty() || !fitting.draftErrors().isEmpty()) {
                return Optional.empty();
            }
            Needs needs = Needs.of(fitting.draft().get(), tailoring.choices());
            fitting.messages().tell("", needs.diagnostics());
            if (needs.diagnostics().stream().anyMatch(Diagnostic::isError)) {
                return Optional.empty();
            }
            finder = finder.forDraft(needs);
        }
        return Optional.of(keys.isEmpty() ? finder : finder.withKeys(keys));
    }

    /** What is done with each body. */
    private interface Use {
        /** Takes the body; the heading is its name if there are several. True if nothing was wrong. */
        boolean take(String heading, Measurements body);
    }

    private boolean each(Messages messages, Use use) {
        Bodies bodies = Bodies.open(measures);
        messages.tell("", bodies.table().diagnostics());
        if (bodies.unreadable()) {
            throw new Refusal("No body could be read.");
        }
        if (bodies.spoilt()) {
            messages.line("The table has to be mended first.");
            return false;
        }
        boolean good = true;
        for (String name : bodies.names()) {
            Outcome<Measurements> body = bodies.body(name);
            String heading = bodies.names().size() > 1 ? name : "";
            messages.tell(heading, body.diagnostics());
            good &= !body.hasErrors();
            if (body.value().isPresent()) {
                good &= use.take(heading, body.value().get());
            }
        }
        return good;
    }
}
