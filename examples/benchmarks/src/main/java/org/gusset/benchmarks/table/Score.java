package org.gusset.benchmarks.table;

import java.util.Locale;
import org.openjdk.jmh.util.ListStatistics;

/** What a benchmark scored in all rounds: microseconds and bytes for one run. */
public final class Score {
    private final ListStatistics time = new ListStatistics();
    private final ListStatistics bytes = new ListStatistics();

    void addTime(double microseconds) {
        time.addValue(microseconds);
    }

    void addBytes(double allocated) {
        bytes.addValue(allocated);
    }

    /** The mean time in microseconds. */
    public double time() {
        return time.getMean();
    }

    /** The mean of the bytes that were allocated. */
    public double bytes() {
        return bytes.getMean();
    }

    /** The mean with the half width of its interval of 99.9 %. */
    @Override
    public String toString() {
        double unit = time() >= 10_000 ? 1000 : 1;
        return shown(time() / unit) + " ± " + shown(time.getMeanErrorAt(0.999) / unit) + (unit == 1 ? " µs" : " ms");
    }

    private static String shown(double value) {
        return String.format(Locale.ROOT, value >= 100 ? "%.0f" : value >= 10 ? "%.1f" : "%.2f", value);
    }
}
