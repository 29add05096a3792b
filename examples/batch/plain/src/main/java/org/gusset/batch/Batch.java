package org.gusset.batch;

import com.jerolba.carpet.CarpetWriter;
import com.jerolba.carpet.io.FileSystemOutputFile;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command line of plain batches. */
@Command(
        name = "batch",
        description = "One draft over a table of many bodies.",
        mixinStandardHelpOptions = true,
        subcommands = {Batch.Run.class, Batch.Make.class})
public final class Batch {
    public static void main(String[] args) {
        System.exit(commandLine().execute(args));
    }

    /** The commands, with refusals told in one line. */
    public static CommandLine commandLine() {
        return new CommandLine(new Batch()).setExecutionExceptionHandler((thrown, line, parsed) -> {
            if (thrown instanceof BatchException refusal) {
                line.getErr().println(refusal.getMessage());
                return 2;
            }
            if (thrown instanceof IOException || thrown instanceof UncheckedIOException) {
                line.getErr()
                        .println("The files cannot be written (" + BatchFolder.reason(thrown)
                                + "). Nothing was changed. Name a place that you may write to, with room in it.");
                return 2;
            }
            throw thrown;
        });
    }

    /** Evaluates a draft for a table. */
    @Command(name = "run", description = "Evaluate a draft for every row of a table.")
    static final class Run implements Callable<Integer> {
        @Spec
        @SuppressWarnings("NullAway.Init")
        private CommandSpec spec;

        @Parameters(index = "0", paramLabel = "DRAFT", description = "The draft.")
        private String draft = "";

        @Parameters(index = "1", paramLabel = "TABLE", description = "The bodies, one a row: CSV or .parquet.")
        private String table = "";

        @Option(names = "--out", paramLabel = "FOLDER", required = true, description = "Where the parts go.")
        private String out = "";

        @Option(names = "--set", paramLabel = "NAME=VALUE", description = "A choice for all bodies.")
        private List<String> settings = new ArrayList<>();

        @Option(names = "--threads", paramLabel = "NUMBER", description = "As many as there are cores unless told.")
        private int threads = Runtime.getRuntime().availableProcessors();

        @Option(names = "--part-rows", paramLabel = "NUMBER", description = "Rows in a part, 5000 unless told.")
        private int partRows = 5000;

        @Override
        public Integer call() {
            PrintWriter err = spec.commandLine().getErr();
            long began = System.nanoTime();
            BatchOrder order = new BatchOrder(DraftTexts.read(Path.of(draft)), settings);
            ProgressLine line = new ProgressLine(err);
            Totals totals = new PlainBatch(order, Path.of(table), Path.of(out), threads, partRows, line).run();
            line.end();
            PrintWriter words = spec.commandLine().getOut();
            totals.words().forEach((name, value) -> words.println(name + ": " + value));
            words.printf(Locale.ROOT, "seconds: %.1f%n", (System.nanoTime() - began) / 1e9);
            words.flush();
            return 0;
        }
    }

    /** Makes up a crowd. */
    @Command(name = "make-bodies", description = "Make up bodies for the smock, the same for the same seed.")
    static final class Make implements Callable<Integer> {
        @Parameters(index = "0", paramLabel = "TABLE", description = "The file to write: CSV or .parquet.")
        private String table = "";

        @Option(names = "--rows", paramLabel = "NUMBER", description = "How many, 10000 unless told.")
        private long rows = 10_000;

        @Option(names = "--seed", paramLabel = "NUMBER", description = "1 unless told.")
        private long seed = 1;

        @Option(names = "--bad", paramLabel = "SHARE", description = "The share of spoilt rows, 0.01 unless told.")
        private double bad = 0.01;

        @Override
        public Integer call() throws IOException {
            write(Path.of(table), rows, new MakeBodies(seed, bad));
            return 0;
        }
    }

    /** A row of a made-up table as Parquet holds it: cells as written, since bad ones hold no numbers. */
    public record MadeBody(
            String body,

            @com.jerolba.carpet.annotation.Alias("chest [cm]")
            String chest,

            @com.jerolba.carpet.annotation.Alias("shoulder_width [cm]")
            String shoulderWidth,

            @com.jerolba.carpet.annotation.Alias("neck [cm]")
            String neck,

            @com.jerolba.carpet.annotation.Alias("upper_arm [cm]")
            String upperArm,

            @com.jerolba.carpet.annotation.Alias("arm_length [cm]")
            String armLength,

            @com.jerolba.carpet.annotation.Alias("scye_depth [cm]")
            String scyeDepth) {}

    /** Writes a table of made-up bodies, whole. A Parquet row cannot be ragged: there a cell that is lacking is blank. */
    public static void write(Path table, long rows, MakeBodies crowd) throws IOException {
        try {
            Path beside = BatchFolder.beside(table);
            if (table.toString().endsWith(".parquet")) {
                Files.deleteIfExists(beside);
                try (CarpetWriter<MadeBody> out =
                        new CarpetWriter<>(new FileSystemOutputFile(beside.toFile()), MadeBody.class)) {
                    for (long i = 0; i < rows; i++) {
                        List<String> c = new ArrayList<>(crowd.body(i));
                        while (c.size() < MakeBodies.HEADINGS.size()) {
                            c.add("");
                        }
                        out.write(new MadeBody(c.get(0), c.get(1), c.get(2), c.get(3), c.get(4), c.get(5), c.get(6)));
                    }
                }
            } else {
                try (BufferedWriter out = Files.newBufferedWriter(beside, StandardCharsets.UTF_8)) {
                    out.write(CsvLine.written(MakeBodies.HEADINGS) + "\n");
                    for (long i = 0; i < rows; i++) {
                        out.write(CsvLine.written(crowd.body(i)) + "\n");
                    }
                }
            }
            BatchFolder.move(table);
        } finally {
            BatchFolder.drop(table);
        }
    }
}
