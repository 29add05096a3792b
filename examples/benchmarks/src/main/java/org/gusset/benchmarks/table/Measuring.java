package org.gusset.benchmarks.table;

import java.io.PrintStream;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.BenchmarkResult;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Runs benchmarks in rounds. In each round every benchmark has a virtual machine of its own, and those that are held against one another
 * stand side by side, so that a machine that grows slow for a while slows both.
 */
public final class Measuring {
    private static final String BYTES = "gc.alloc.rate.norm";

    private final int rounds;
    private final int warmups;
    private final int iterations;
    private final PrintStream progress;
    private final Map<Bench, Score> scores = new LinkedHashMap<>();

    /**
     * @param rounds how many virtual machines each benchmark gets
     * @param warmups seconds before measuring in each
     * @param iterations seconds of measuring
     * @param progress where a line for each benchmark goes
     */
    public Measuring(int rounds, int warmups, int iterations, PrintStream progress) {
        this.rounds = rounds;
        this.warmups = warmups;
        this.iterations = iterations;
        this.progress = progress;
    }

    /** Runs what the rows and the other benchmarks ask for, each once a round. */
    public Map<Bench, Score> run(List<Row> rows, List<Bench> others) throws RunnerException {
        Set<Bench> all = new LinkedHashSet<>();
        for (Row row : rows) {
            all.add(row.ours());
            all.add(row.baseline());
        }
        all.addAll(others);
        for (int round = 1; round <= rounds; round++) {
            int done = 0;
            for (Bench bench : all) {
                done++;
                progress.println("round " + round + " of " + rounds + ", " + done + " of " + all.size() + ": "
                        + bench.name() + " " + bench.parameter().value());
                run(bench);
            }
        }
        return scores;
    }

    private void run(Bench bench) throws RunnerException {
        ChainedOptionsBuilder options = new OptionsBuilder()
                .include("^" + Pattern.quote(bench.name()) + "$")
                .mode(Mode.AverageTime)
                .timeUnit(TimeUnit.MICROSECONDS)
                .forks(1)
                .jvmArgsAppend("-Xms1g", "-Xmx1g", "-XX:+AlwaysPreTouch", "-Djava.awt.headless=true")
                .warmupIterations(warmups)
                .warmupTime(TimeValue.seconds(1))
                .measurementIterations(iterations)
                .measurementTime(TimeValue.seconds(1))
                .addProfiler(GCProfiler.class)
                .shouldFailOnError(true)
                .verbosity(VerboseMode.SILENT);
        if (!bench.parameter().equals(Bench.Parameter.NONE)) {
            options.param(bench.parameter().name(), bench.parameter().value());
        }
        Score score = scores.computeIfAbsent(bench, b -> new Score());
        for (RunResult result : new Runner(options.build()).run()) {
            for (BenchmarkResult benchmark : result.getBenchmarkResults()) {
                for (IterationResult iteration : benchmark.getIterationResults()) {
                    score.addTime(iteration.getPrimaryResult().getScore());
                    Result<?> bytes = iteration.getSecondaryResults().get(BYTES);
                    if (bytes != null) {
                        score.addBytes(bytes.getScore());
                    }
                }
            }
        }
    }
}
