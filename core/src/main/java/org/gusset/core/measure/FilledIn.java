package org.gusset.core.measure;

import java.util.List;
import java.util.Optional;

/**
 * A body whose blank measures were taken from a chart.
 *
 * @param measurements her own measures, as they were, and behind them those of the chart that she lacked
 * @param taken how each of those was found, in the same order
 */
public record FilledIn(Measurements measurements, List<Taken> taken) {
    /**
     * A measure that was taken from the chart.
     *
     * @param measure its name in the chart
     * @param lead the measure whose place in the chart it follows
     * @param lower the size it is reckoned from
     * @param upper the next size
     * @param share how far it lies from lower to upper: 0 at lower, 1 at upper, beyond them if a step was carried on
     */
    public record Taken(String measure, String lead, String lower, String upper, double share) {
        /** In words, as the measure's place names it: {@code between 12 and 14}, {@code as 12}, {@code beyond 18}. */
        public String words() {
            if (share == 0 || share == 1) {
                return "as " + (share == 0 ? lower : upper);
            }
            return share < 0 ? "beyond " + lower : share > 1 ? "beyond " + upper : "between " + lower + " and " + upper;
        }
    }

    public FilledIn {
        taken = List.copyOf(taken);
    }

    /** How a measure was found; empty for one that she had herself. */
    public Optional<Taken> taken(String measure) {
        String key = Measurements.key(measure);
        return taken.stream()
                .filter(t -> Measurements.key(t.measure()).equals(key))
                .findFirst();
    }
}
