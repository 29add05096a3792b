package org.gusset.benchmarks;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.gusset.benchmarks.table.Bench;
import org.gusset.benchmarks.table.Measuring;
import org.gusset.benchmarks.table.RatioTable;
import org.gusset.benchmarks.table.Row;
import org.gusset.benchmarks.table.Score;
import org.gusset.core.draft.Draft;
import org.openjdk.jmh.runner.RunnerException;

/**
 * Prints every ratio as a table in Markdown. Arguments: words of rows ({@code smock}, {@code formulas}, {@code measure},
 * {@code compile}, {@code allowance}, {@code curves}, {@code svg}; all without any), and {@code rounds=2}, {@code warmups=10},
 * {@code iterations=5} to measure shorter or longer.
 */
public final class Ratios {
    private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    private final PrintStream progress = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    private final List<String> asked = new ArrayList<>();
    private int rounds = 2;
    private int warmups = 10;
    private int iterations = 5;

    private Ratios() {}

    /** See the class. */
    public static void main(String[] arguments) throws RunnerException {
        Ratios ratios = new Ratios();
        for (String argument : arguments) {
            ratios.take(argument);
        }
        ratios.run();
    }

    private void take(String argument) {
        String[] setting = argument.split("=", 2);
        boolean row = Rows.all().stream().anyMatch(r -> r.key().equals(argument));
        if (row) {
            asked.add(argument);
        } else if (setting.length == 2 && setting[0].equals("rounds")) {
            rounds = Integer.parseInt(setting[1]);
        } else if (setting.length == 2 && setting[0].equals("warmups")) {
            warmups = Integer.parseInt(setting[1]);
        } else if (setting.length == 2 && setting[0].equals("iterations")) {
            iterations = Integer.parseInt(setting[1]);
        } else {
            throw new IllegalArgumentException("there is no row and no setting " + argument);
        }
    }

    private boolean wants(String key) {
        return asked.isEmpty() || asked.contains(key);
    }

    private void run() throws RunnerException {
        List<Row> rows = Rows.all().stream().filter(r -> wants(r.key())).toList();
        List<Bench> others = new ArrayList<>();
        if (wants("compile")) {
            Rows.LINES.forEach(lines -> others.add(Rows.compile(lines)));
        }
        Measuring measuring = new Measuring(rounds, warmups, iterations, progress);
        Map<Bench, Score> scores = measuring.run(rows, others);
        out.println(machine());
        out.println();
        out.println(RatioTable.of(
                rows.stream().filter(r -> !r.key().equals("measure")).toList(), scores));
        if (wants("measure")) {
            measures(rows.stream().filter(r -> r.key().equals("measure")).toList(), scores);
        }
        if (wants("compile")) {
            lines(scores);
        }
    }

    private static String machine() {
        return String.format(
                Locale.ROOT,
                "%s %s, %s, %d processors.",
                System.getProperty("java.vm.name"),
                Runtime.version(),
                System.getProperty("os.arch"),
                Runtime.getRuntime().availableProcessors());
    }

    private void measures(List<Row> rows, Map<Bench, Score> scores) {
        Draft draft = SmockDraft.draft();
        NodeCosts costs = NodeCosts.of(draft, SmockDraft.measurements(SmockDraft.maren()));
        out.println(
                "| measure changed | ours | full evaluation | ratio | share of the nodes' cost | share + 0.1 met |");
        out.println("| --- | --- | --- | --- | --- | --- |");
        for (int i = 0; i < rows.size(); i++) {
            Score anew = scores.get(rows.get(i).ours());
            Score whole = scores.get(rows.get(i).baseline());
            String measure = Rows.MEASURES.get(i);
            if (anew == null || whole == null) {
                throw new IllegalStateException("there is no score for " + measure);
            }
            double ratio = anew.time() / whole.time();
            double share = costs.dependingOn(measure) / costs.all();
            out.printf(
                    Locale.ROOT,
                    "| `%s` | %s | %s | %s | %s | %s |%n",
                    measure,
                    anew,
                    whole,
                    RatioTable.shown(ratio),
                    RatioTable.shown(share),
                    ratio <= share + 0.1 ? "yes" : "**no**");
        }
        out.println();
    }

    private void lines(Map<Bench, Score> scores) {
        out.println("| lines compiled | time | a line |");
        out.println("| --- | --- | --- |");
        for (int lines : Rows.LINES) {
            Score score = scores.get(Rows.compile(lines));
            if (score == null) {
                throw new IllegalStateException("there is no score for " + lines + " lines");
            }
            out.printf(Locale.ROOT, "| %,d | %s | %.2f µs |%n", lines, score, score.time() / lines);
        }
        out.println();
    }
}
