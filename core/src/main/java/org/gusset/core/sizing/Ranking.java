package org.gusset.core.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.SizeChart;

/** A size's place among the others; used within one search. */
record Ranking(int index, double shortage, int lacking, long girths, long lengths, long letOut) {
    private static final Comparator<Ranking> BEST_FIRST = Comparator.comparingInt(Ranking::lacking)
            .thenComparingDouble(Ranking::shortage)
            .thenComparingLong(Ranking::girths)
            .thenComparingLong(Ranking::lengths)
            .thenComparingLong(Ranking::letOut)
            .thenComparingInt(Ranking::index);

    /** Sums are compared in whole millionths, so that rounding of figures in inches makes no difference. */
    private static final double ROUND = 1e6;

    static List<Ranking> of(SizeChart chart, List<Common> keys, List<Common> used) {
        List<Ranking> ranking = new ArrayList<>();
        for (int i = 0; i < chart.sizes().size(); i++) {
            of(i, keys, used).ifPresent(ranking::add);
        }
        ranking.sort(BEST_FIRST);
        return ranking;
    }

    private static Optional<Ranking> of(int index, List<Common> keys, List<Common> used) {
        double shortage = 0;
        double girths = 0;
        double lengths = 0;
        double letOut = 0;
        int lacking = 0;
        for (Common key : used) {
            boolean main = keys.contains(key);
            Optional<Measurements.Entry> entry = key.cover().entry(index);
            if (entry.isEmpty()) {
                lacking += main ? 1 : 0;
                continue;
            }
            double size = entry.get().quantity().value();
            double more = key.value() - size;
            double step = more > 0 ? key.cover().stepUp(size) : key.cover().stepDown(size);
            double off = more / step * (more / step);
            if (key.kind() == MeasureKind.GIRTH || key.kind() == MeasureKind.WIDTH) {
                girths += off;
            } else {
                lengths += off;
            }
            if (main && key.kind() == MeasureKind.GIRTH && more > 0) {
                letOut += more;
                shortage = Math.max(shortage, rounded((more - step / 2) / step) / ROUND);
            }
        }
        return lacking == keys.size()
                ? Optional.empty()
                : Optional.of(
                        new Ranking(index, shortage, lacking, rounded(girths), rounded(lengths), rounded(letOut)));
    }

    private static long rounded(double value) {
        return Math.round(value * ROUND);
    }
}
