package org.gusset.dsl.drafts;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.SizeChart;
import org.gusset.core.measure.Unit;

/** Charts of sizes for tests: rows of figures, a size for each column. */
final class Sizes {
    private Sizes() {}

    /** Sizes without measures. */
    static SizeChart named(String... names) {
        List<Measurements> sizes = new ArrayList<>();
        for (String name : names) {
            sizes.add(Measurements.of(name));
        }
        return new SizeChart("chart", sizes);
    }

    /** The chart with one more row; NaN for a blank cell. */
    static SizeChart with(SizeChart chart, String measure, Unit unit, double... figures) {
        List<Measurements> sizes = new ArrayList<>();
        for (int i = 0; i < figures.length; i++) {
            Measurements size = chart.sizes().get(i);
            sizes.add(Double.isNaN(figures[i]) ? size : size.with(measure, Quantity.of(figures[i], unit)));
        }
        return new SizeChart(chart.name(), sizes);
    }

    /** A chart of one measure in cm, its sizes called by their number from 1. */
    static SizeChart of(String measure, double... cm) {
        String[] names = new String[cm.length];
        for (int i = 0; i < cm.length; i++) {
            names[i] = String.valueOf(i + 1);
        }
        return with(named(names), measure, Unit.CM, cm);
    }
}
