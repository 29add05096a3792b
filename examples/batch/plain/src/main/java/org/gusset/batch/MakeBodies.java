package org.gusset.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Makes up bodies for the smock of the Quillhaven Players. Each row rests on the seed and its number alone, so that a table is the
 * same whoever makes it, and any stretch of it can be made on its own. The bodies are invented: round a chest drawn from a bell, the
 * other measures keep the proportions that the draft takes.
 */
public final class MakeBodies {
    /** The headings of the table. */
    public static final List<String> HEADINGS = List.of(
            "body",
            "chest [cm]",
            "shoulder_width [cm]",
            "neck [cm]",
            "upper_arm [cm]",
            "arm_length [cm]",
            "scye_depth [cm]");

    private final long seed;
    private final double badShare;

    /**
     * A crowd.
     *
     * @param seed the same seed gives the same bodies
     * @param badShare which share of the rows is spoilt, from 0 to 1
     */
    public MakeBodies(long seed, double badShare) {
        if (!(badShare >= 0 && badShare <= 1)) {
            throw new BatchException("The share of bad rows must be from 0 to 1.");
        }
        this.seed = seed;
        this.badShare = badShare;
    }

    /** One body, counted from 0, as the cells of its row. */
    public List<String> body(long number) {
        SplittableRandom random = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + number);
        double chest = tenth(between(61, 168, 0.36 + 0.16 * bell(random)));
        double shoulders = inside(Math.max(20, chest * 0.29), chest * 0.5, 0.12, 0.55, random);
        double neck = inside(chest * 0.3, chest * 0.5, 0.15, 0.7, random);
        double arm = inside(chest * 0.25, Math.min(chest * 0.43, chest / 4 + 19), 0.1, 0.7, random);
        double reach = tenth(between(45, 72, 0.5 + 0.2 * bell(random)));
        double scye = inside(Math.max(16, arm / 2 + 5), arm / 2 + 14, 0.2, 0.8, random);
        boolean estimated = random.nextInt(4) == 0;
        List<String> cells = new ArrayList<>(List.of(
                "Body " + (number + 1),
                written(chest),
                written(shoulders),
                written(neck),
                written(arm),
                written(reach),
                estimated ? "" : written(scye)));
        return random.nextDouble() < badShare ? spoilt(cells, random) : cells;
    }

    private static List<String> spoilt(List<String> cells, SplittableRandom random) {
        switch (random.nextInt(6)) {
            case 0 -> cells.remove(cells.size() - 1 - random.nextInt(3));
            case 1 -> cells.set(1 + random.nextInt(5), "about ninety");
            case 2 -> cells.set(1 + random.nextInt(5), "");
            case 3 -> cells.set(1, written(tenth(Double.parseDouble(cells.get(1)) / 10)));
            case 4 -> cells.set(4, written(tenth(Double.parseDouble(cells.get(4)) * 3)));
            default -> cells.set(2, cells.get(2).replace('.', ','));
        }
        return cells;
    }

    private static double inside(double low, double high, double from, double to, SplittableRandom random) {
        double share = from + (to - from) * random.nextDouble();
        return Math.max(
                Math.ceil(low * 10) / 10, Math.min(Math.floor(high * 10) / 10, tenth(between(low, high, share))));
    }

    private static double between(double low, double high, double share) {
        return low + (high - low) * Math.max(0, Math.min(1, share));
    }

    /** From -3 to 3, most of it near 0: the sum of twelve even draws, less six, has mean 0 and deviation 1. */
    private static double bell(SplittableRandom random) {
        double sum = -6;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return Math.max(-3, Math.min(3, sum));
    }

    private static double tenth(double value) {
        return Math.rint(value * 10) / 10;
    }

    private static String written(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
