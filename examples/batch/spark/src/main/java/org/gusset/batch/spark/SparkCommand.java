package org.gusset.batch.spark;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.apache.spark.sql.SparkSession;
import org.gusset.batch.BatchException;
import org.gusset.batch.BatchOrder;
import org.gusset.batch.DraftTexts;
import org.gusset.batch.Totals;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The program for {@code spark-submit}; where it runs is told there, or with {@code -Dspark.master=local[2]}. */
@Command(
        name = "spark-batch",
        description = "One draft over a table of many bodies, on Spark.",
        mixinStandardHelpOptions = true)
public final class SparkCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Parameters(
            index = "0",
            paramLabel = "DRAFT",
            description = "The draft, a file of the machine that starts the batch.")
    private String draft = "";

    @Parameters(
            index = "1",
            paramLabel = "TABLE",
            description = "The bodies: CSV or .parquet, where all machines see it.")
    private String table = "";

    @Option(names = "--out", paramLabel = "FOLDER", required = true, description = "Where all machines can write.")
    private String out = "";

    @Option(names = "--set", paramLabel = "NAME=VALUE", description = "A choice for all bodies.")
    private List<String> settings = new ArrayList<>();

    @Option(names = "--slice-rows", paramLabel = "NUMBER", description = "Rows in a slice, 100000 unless told.")
    private long sliceRows = 100_000;

    @Option(
            names = "--tasks",
            paramLabel = "NUMBER",
            description = "Tasks in a slice; as many as there are cores, four times over, unless told.")
    private int tasks;

    @Option(names = "--svg", paramLabel = "ROW", split = ",", description = "Draw the sheets of these rows too.")
    private List<Long> svg = new ArrayList<>();

    public static void main(String[] args) {
        int code = new CommandLine(new SparkCommand())
                .setExecutionExceptionHandler((thrown, line, parsed) -> {
                    if (thrown instanceof BatchException refusal) {
                        line.getErr().println(refusal.getMessage());
                        return 2;
                    }
                    throw thrown;
                })
                .execute(args);
        if (code != 0) {
            System.exit(code);
        }
    }

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        PrintWriter words = spec.commandLine().getOut();
        BatchOrder order = new BatchOrder(DraftTexts.read(Path.of(draft)), settings);
        try (SparkSession spark = SparkSession.builder().appName("Gusset batch").getOrCreate()) {
            int several = tasks > 0 ? tasks : 4 * spark.sparkContext().defaultParallelism();
            long began = System.nanoTime();
            SparkBatch batch = new SparkBatch(
                    spark, order, table, out, sliceRows, several, RowWatch.none(), (slice, slices, soFar) -> {
                        err.println(String.format(
                                Locale.ROOT,
                                "slice %d of %d, %,d rows in %.0f s",
                                slice,
                                slices,
                                soFar.rows(),
                                (System.nanoTime() - began) / 1e9));
                        err.flush();
                    });
            Totals totals = batch.run();
            totals.words().forEach((name, value) -> words.println(name + ": " + value));
            if (!svg.isEmpty()) {
                for (long row : batch.draw(svg)) {
                    words.println("row " + row + " has no sheet: it was set aside, or there is no such row");
                }
            }
            words.printf(Locale.ROOT, "seconds: %.1f%n", (System.nanoTime() - began) / 1e9);
            words.flush();
        }
        return 0;
    }
}
