package org.gusset.benchmarks.table;

import java.util.OptionalDouble;

/**
 * A line of the table: ours against a baseline.
 *
 * @param key the word by which a single row is asked for; several rows may share it
 * @param what what is measured
 * @param against the baseline in words
 * @param ours the library's side
 * @param baseline the other side
 * @param most our time over the baseline's is at most this; empty where it is only reported
 * @param mostBytes our allocations over the baseline's are at most this, if told
 */
public record Row(
        String key,
        String what,
        String against,
        Bench ours,
        Bench baseline,
        OptionalDouble most,
        OptionalDouble mostBytes) {
    /** A row with a bound on time. */
    public static Row atMost(double most, String key, String what, String against, Bench ours, Bench baseline) {
        return new Row(key, what, against, ours, baseline, OptionalDouble.of(most), OptionalDouble.empty());
    }

    /** The same row with a bound on allocations as well. */
    public Row withBytes(double bound) {
        return new Row(key, what, against, ours, baseline, most, OptionalDouble.of(bound));
    }
}
