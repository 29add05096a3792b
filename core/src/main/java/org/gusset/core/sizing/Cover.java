package org.gusset.core.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.SizeChart;

/**
 * What each size of a chart covers of one measure: half a step on either side of it. At the ends of the chart, and where the measure
 * stands still, the nearest step in which it moves counts.
 */
final class Cover {
    /** The step of a measure that never moves: that of girths in EN 13402-3, in mm. */
    private static final double USUAL_STEP = 40;

    private final List<Optional<Measurements.Entry>> entries = new ArrayList<>();
    private final List<Double> values = new ArrayList<>();

    private Cover() {}

    /** The measure in every size that has it in this dimension. */
    static Cover of(SizeChart chart, String measure, Dimension dimension) {
        Cover cover = new Cover();
        for (Measurements size : chart.sizes()) {
            Optional<Measurements.Entry> entry =
                    size.entry(measure).filter(e -> e.quantity().dimension().equals(dimension));
            cover.entries.add(entry);
            entry.ifPresent(e -> cover.values.add(e.quantity().value()));
        }
        return cover;
    }

    Optional<Measurements.Entry> entry(int size) {
        return entries.get(size);
    }

    /** The distance to the next larger value of the chart. */
    double stepUp(double value) {
        return step(value, true);
    }

    /** The distance to the next smaller value of the chart. */
    double stepDown(double value) {
        return step(value, false);
    }

    private double step(double value, boolean up) {
        double above = Double.POSITIVE_INFINITY;
        double below = Double.POSITIVE_INFINITY;
        for (double other : values) {
            above = other > value ? Math.min(above, other - value) : above;
            below = other < value ? Math.min(below, value - other) : below;
        }
        double wanted = up ? above : below;
        double instead = up ? below : above;
        return Double.isFinite(wanted) ? wanted : Double.isFinite(instead) ? instead : USUAL_STEP;
    }

    boolean isLargest(double value) {
        return values.stream().noneMatch(v -> v > value);
    }

    boolean isSmallest(double value) {
        return values.stream().noneMatch(v -> v < value);
    }
}
