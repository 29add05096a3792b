package org.gusset.core.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Fact;

/** One measure through the sizes of a chart, in their order: only those sizes that have it, in one dimension. */
record ChartSeries(String measure, List<At> at) {
    /** The measure in one size. */
    record At(int index, String size, Measurements.Entry entry) {
        double value() {
            return entry.quantity().value();
        }

        Fact fact() {
            return ChartSeries.fact(entry.quantity());
        }
    }

    ChartSeries {
        at = List.copyOf(at);
    }

    /** The measures of a chart in the order in which its sizes bring them up, each under the name it has first. */
    static List<ChartSeries> of(SizeChart chart) {
        Map<String, String> names = new LinkedHashMap<>();
        for (Measurements size : chart.sizes()) {
            size.entries().keySet().forEach(name -> names.putIfAbsent(Measurements.key(name), name));
        }
        return names.values().stream().map(name -> of(chart, name)).toList();
    }

    /** One measure; empty if no size has it. Sizes that have it in another dimension than the first one does are left out. */
    static ChartSeries of(SizeChart chart, String measure) {
        List<At> at = new ArrayList<>();
        for (int i = 0; i < chart.sizes().size(); i++) {
            Measurements size = chart.sizes().get(i);
            Optional<Measurements.Entry> entry = size.entry(measure);
            if (entry.isPresent()
                    && (at.isEmpty()
                            || at.get(0)
                                    .entry()
                                    .quantity()
                                    .dimension()
                                    .equals(entry.get().quantity().dimension()))) {
                at.add(new At(i, size.body(), entry.get()));
            }
        }
        return new ChartSeries(measure, at);
    }

    boolean isLength() {
        return !at.isEmpty() && at.get(0).entry().quantity().dimension().equals(Dimension.LENGTH);
    }

    int count() {
        return at.size();
    }

    At get(int i) {
        return at.get(i);
    }

    /** From the size at this place to the next one that has the measure. */
    double step(int i) {
        return at.get(i + 1).value() - at.get(i).value();
    }

    static Fact fact(Quantity quantity) {
        return quantity.dimension().equals(Dimension.LENGTH)
                ? Fact.length(quantity.value())
                : quantity.dimension().equals(Dimension.ANGLE)
                        ? Fact.angle(quantity.value())
                        : Fact.number(quantity.value());
    }
}
