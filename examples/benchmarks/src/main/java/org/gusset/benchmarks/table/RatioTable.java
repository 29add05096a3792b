package org.gusset.benchmarks.table;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The rows as a table in Markdown. */
public final class RatioTable {
    private RatioTable() {}

    /** The table. */
    public static String of(List<Row> rows, Map<Bench, Score> scores) {
        StringBuilder out = new StringBuilder();
        out.append("| what | baseline in the same run | ours | baseline | ratio | target | met | allocations |\n");
        out.append("| --- | --- | --- | --- | --- | --- | --- | --- |\n");
        for (Row row : rows) {
            Score ours = scores.get(row.ours());
            Score baseline = scores.get(row.baseline());
            if (ours == null || baseline == null) {
                throw new IllegalStateException("there is no score for " + row.what());
            }
            double ratio = ours.time() / baseline.time();
            double bytes = ours.bytes() / baseline.bytes();
            boolean met = ratio <= row.most().orElse(Double.POSITIVE_INFINITY)
                    && bytes <= row.mostBytes().orElse(Double.POSITIVE_INFINITY);
            String target =
                    row.most().isPresent() ? "at most " + shown(row.most().getAsDouble()) : "";
            String allocations = shown(bytes)
                    + (row.mostBytes().isPresent()
                            ? ", at most " + shown(row.mostBytes().getAsDouble())
                            : "");
            out.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s | %s | %s | %s | %s |%n",
                    row.what(),
                    row.against(),
                    ours,
                    baseline,
                    shown(ratio),
                    target,
                    row.most().isEmpty() ? "" : met ? "yes" : "**no**",
                    allocations));
        }
        return out.toString();
    }

    /** A ratio with three digits that count. */
    public static String shown(double ratio) {
        String text = String.format(Locale.ROOT, ratio >= 10 ? "%.1f" : ratio >= 1 ? "%.2f" : "%.3f", ratio);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
