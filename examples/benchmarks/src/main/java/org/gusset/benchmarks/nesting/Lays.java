package org.gusset.benchmarks.nesting;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BooleanSupplier;
import org.gusset.core.cloth.packing.Packer;
import org.gusset.core.cloth.packing.Packing;
import org.gusset.core.cloth.packing.PackingCheck;
import org.gusset.core.cloth.packing.Search;
import org.gusset.core.cloth.packing.Strip;

/**
 * Packs the classic sets and prints how dense, beside the best published figure. One run of the longest time a set; the densities of shorter
 * times are what the same run had reached by then. Every plan is checked. {@code Lays [--seconds 5,60] [--seed 1] [--threads 2]
 * [name ...]}; or {@code Lays --rounds 400 --seed 1,2,3}, whose figures are the same on every machine.
 */
public final class Lays {
    private Lays() {}

    /** One set's outcome: densities in per cent at each of the times. */
    private record Row(Published set, double first, double firstMillis, double[] reached) {}

    public static void main(String[] args) throws IOException {
        double[] seconds = {5, 60};
        long[] seeds = {1};
        int threads = 2;
        int rounds = 0;
        List<String> names = new ArrayList<>();
        for (int i = 0; i < args.length; i++) {
            switch (args[i]) {
                case "--seconds" ->
                    seconds = Arrays.stream(args[++i].split(","))
                            .mapToDouble(Double::parseDouble)
                            .toArray();
                case "--seed" ->
                    seeds = Arrays.stream(args[++i].split(","))
                            .mapToLong(Long::parseLong)
                            .toArray();
                case "--rounds" -> rounds = Integer.parseInt(args[++i]);
                case "--threads" -> threads = Integer.parseInt(args[++i]);
                default -> names.add(args[i]);
            }
        }
        Path folder = Path.of(System.getProperty("gusset.facts", "../shared/facts"), "nesting", "json");
        if (!Files.isDirectory(folder)) {
            System.err.println(
                    "no folder " + folder.toAbsolutePath().normalize() + "; name it with -Dgusset.facts=DIR");
            return;
        }
        System.out.println(rounds > 0 ? "density after " + rounds + " rounds, each seed and their mean" : header(seconds));
        ExecutorService executor = Executors.newFixedThreadPool(threads);
        try {
            for (Published set : Published.SETS) {
                if (names.isEmpty() || names.contains(set.name())) {
                    Strip strip = SetFile.read(folder.resolve(set.name() + ".json"));
                    if (rounds > 0) {
                        inRounds(set, strip, rounds, seeds, threads, executor);
                    } else {
                        Search search = new Search(seeds[0], Integer.MAX_VALUE, threads);
                        print(System.out, run(set, strip, seconds, search, executor));
                    }
                }
            }
        } finally {
            executor.shutdown();
        }
    }

    /** The same on every machine, however busy: to compare one search with another. */
    private static void inRounds(
            Published set, Strip strip, int rounds, long[] seeds, int threads, ExecutorService executor) {
        Packing first = Packer.first(strip).orElseThrow();
        StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%-10s", set.name()));
        double sum = 0;
        for (long seed : seeds) {
            Packing packing = Packer.improve(
                    strip, first, new Search(seed, rounds, threads), () -> true, executor, progress -> {});
            double density = density(set, strip, packing.length());
            sum += density;
            line.append(String.format(Locale.ROOT, " %.2f", density));
        }
        System.out.println(line + String.format(Locale.ROOT, "  mean %.3f", sum / seeds.length));
    }

    private static Row run(Published set, Strip strip, double[] seconds, Search search, ExecutorService executor) {
        long start = System.nanoTime();
        Packing first = Packer.first(strip).orElseThrow();
        double firstMillis = (System.nanoTime() - start) / 1e6;
        double last = seconds[seconds.length - 1];
        double[] length = new double[seconds.length];
        Arrays.fill(length, first.length());
        BooleanSupplier keepGoing = () -> System.nanoTime() - start < last * 1e9;
        Packing packing = Packer.improve(strip, first, search, keepGoing, executor, progress -> {
            double now = (System.nanoTime() - start) / 1e9;
            for (int i = 0; i < seconds.length; i++) {
                if (now <= seconds[i]) {
                    length[i] = progress.length();
                }
            }
        });
        length[seconds.length - 1] = packing.length();
        var flaws = new ArrayList<>(PackingCheck.flaws(strip, first));
        flaws.addAll(PackingCheck.flaws(strip, packing));
        if (!flaws.isEmpty()) {
            throw new IllegalStateException(set.name() + " is not sound: " + flaws);
        }
        double[] reached =
                Arrays.stream(length).map(l -> density(set, strip, l)).toArray();
        return new Row(set, density(set, strip, first.length()), firstMillis, reached);
    }

    private static double density(Published set, Strip strip, double length) {
        return 100 * strip.area() / (set.width() * length);
    }

    private static String header(double[] seconds) {
        StringBuilder out = new StringBuilder("| set | kind | at once |");
        StringBuilder line = new StringBuilder("| --- | --- | ---: |");
        for (double s : seconds) {
            out.append(String.format(Locale.ROOT, " %.0f s |", s));
            line.append(" ---: |");
        }
        return out + " best published | short of it by | mean published |\n" + line + " ---: | ---: | ---: |";
    }

    private static void print(PrintStream out, Row row) {
        StringBuilder line = new StringBuilder(String.format(
                Locale.ROOT,
                "| %s | %s | %.2f (%.0f ms) |",
                row.set().name(),
                row.set().garment() ? "garment" : "general",
                row.first(),
                row.firstMillis()));
        for (double d : row.reached()) {
            line.append(String.format(Locale.ROOT, " %.2f |", d));
        }
        double last = row.reached()[row.reached().length - 1];
        out.println(line
                + String.format(
                        Locale.ROOT,
                        " %.2f | %.2f | %s |",
                        row.set().best(),
                        row.set().best() - last,
                        Double.isNaN(row.set().mean()) ? "" : String.format(Locale.ROOT, "%.2f", row.set().mean())));
    }
}
