package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.measure.Measurements;
import org.gusset.core.stress.Settings;
import org.gusset.core.stress.Stress;
import org.gusset.core.stress.StressReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Searches for bodies that break a draft. */
@Command(
        addMethodSubcommands = false,
        name = "stress",
        description = "Search all that the ranges of a draft let in for bodies that break it.",
        footer = {
            "",
            "Examples:",
            "  gusset stress smock.gusset --bodies 100000",
            "  gusset stress smock.gusset --people cast.csv --set neckline=round"
        })
final class StressCommand implements Callable<Integer> {
    private static final int MOST_BODIES = 10_000_000;

    private final Bench bench;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(paramLabel = "DRAFT", description = "The draft.")
    private String draft = "";

    @Option(
            names = "--bodies",
            paramLabel = "NUMBER",
            description =
                    "How many bodies to make up, 2000 unless told; the search toward failure adds half as many at most.")
    private int bodies = 2000;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            description = "The same seed gives the same report; 1 unless told.")
    private long seed = 1;

    @Option(
            names = "--people",
            paramLabel = "FILE[#NAME]",
            description = "A table of measures; every body in it is tried too, with the draft's usual choices.")
    private String people = "";

    @Option(
            names = "--threads",
            paramLabel = "NUMBER",
            description = "How many threads do the work; as many as there are cores unless told.")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Mixin
    private final Tailoring tailoring = new Tailoring();

    StressCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        if (bodies < 0 || bodies > MOST_BODIES) {
            throw new Refusal("`--bodies " + bodies + "` must be from 0 to " + MOST_BODIES + ".");
        }
        if (threads < 1 || threads > 1000) {
            throw new Refusal("`--threads " + threads + "` must be from 1 to 1000.");
        }
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Fitting fitting = new Fitting(bench, draft, tailoring, out);
        if (fitting.draft().isEmpty() || !fitting.draftErrors().isEmpty()) {
            fitting.messages()
                    .line("No stress: the draft has "
                            + Messages.count(fitting.draftErrors().size(), "error") + ".");
            return ExitCodes.FAULTS;
        }
        Optional<List<Measurements>> table = people.isEmpty() ? Optional.of(List.of()) : table(fitting);
        if (table.isEmpty()) {
            return ExitCodes.FAULTS;
        }
        ExecutorService workers = Executors.newFixedThreadPool(threads, work -> {
            Thread thread = new Thread(work, "stress");
            thread.setDaemon(true);
            return thread;
        });
        StressReport report;
        StageProgress progress = new StageProgress(err);
        try {
            report = Stress.of(
                    fitting.draft().get(),
                    table.get(),
                    Settings.defaults()
                            .withBodies(bodies)
                            .withSeed(seed)
                            .withFixed(tailoring.choices())
                            .withExecutor(workers)
                            .withProgress(progress));
        } finally {
            workers.shutdownNow();
            progress.clear();
        }
        out.print(new StressText(tailoring.style()).of(report));
        out.flush();
        return report.passes() ? ExitCodes.GOOD : ExitCodes.FAULTS;
    }

    /** The people of the table; those with cells that cannot be read are told of and left out. */
    private Optional<List<Measurements>> table(Fitting fitting) {
        Bodies open = Bodies.open(people);
        fitting.messages().tell("", open.table().diagnostics());
        if (open.unreadable()) {
            throw new Refusal("No body could be read.");
        }
        if (open.spoilt()) {
            fitting.messages().line("The table has to be mended first.");
            return Optional.empty();
        }
        List<Measurements> read = new ArrayList<>();
        for (String name : open.names()) {
            Outcome<Measurements> body = open.body(name);
            fitting.messages().tell(name, body.diagnostics());
            if (!body.hasErrors()) {
                body.value().ifPresent(read::add);
            }
        }
        fitting.messages().tellAgain();
        return Optional.of(read);
    }

    /** Shows each stage on a line of its own. */
    private static final class StageProgress implements Settings.Progress {
        private final PrintWriter err;
        private Optional<Settings.Stage> stage = Optional.empty();
        private Progress line;

        StageProgress(PrintWriter err) {
            this.err = err;
            this.line = Progress.on(err, 0);
        }

        @Override
        public void at(Settings.Stage now, int done, int all) {
            if (!stage.equals(Optional.of(now))) {
                line.clear();
                stage = Optional.of(now);
                line = Progress.on(err, all);
            }
            line.at(done, words(now));
        }

        void clear() {
            line.clear();
        }

        private static String words(Settings.Stage stage) {
            return switch (stage) {
                case CORNERS -> "batches of bodies at the ends of the ranges";
                case SPREAD -> "batches of bodies spread over the ranges";
                case SEARCH -> "searches toward failure";
                case CURES -> "failures, narrower ranges sought";
                case PEOPLE -> "batches of people";
            };
        }
    }
}
