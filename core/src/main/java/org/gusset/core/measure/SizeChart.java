package org.gusset.core.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;

/** A table of bodies or sizes in order: one measurement set a column. */
public record SizeChart(String name, List<Measurements> sizes) {
    public SizeChart {
        sizes = List.copyOf(sizes);
    }

    /** The size or body with this name, exactly as written. */
    public Optional<Measurements> size(String name) {
        return sizes.stream().filter(m -> m.body().equals(name)).findFirst();
    }

    /** The names of the sizes or bodies, in order. */
    public List<String> names() {
        return sizes.stream().map(Measurements::body).toList();
    }

    /**
     * A size between two of this chart, each measure on the straight line from one to the other. With a share of 0 or 1 it is the size
     * itself, to the last bit. Between them the place of every measure is a name, {@code between 12 and 14}; measures that one of the
     * two lacks are left out, with a warning.
     *
     * @param share from 0, the lower size, to 1, the upper
     * @return GRD011 for a size that is not in the chart, GRD012 for a share that is none
     */
    public Outcome<Measurements> between(String lower, String upper, double share) {
        List<Diagnostic> diagnostics = new ArrayList<>();
        for (String wanted : List.of(lower, upper)) {
            if (size(wanted).isEmpty()) {
                diagnostics.add(Diagnostic.of(ChartCode.NO_SUCH_SIZE, Place.named(name), "size", wanted, "chart", name)
                        .with(Hint.of("GRD011.hint", "It has {sizes}.", "sizes", String.join(", ", names()))));
            }
        }
        if (!(share >= 0 && share <= 1)) {
            diagnostics.add(Diagnostic.of(ChartCode.SHARE_OUTSIDE, Place.named(name), "share", Double.toString(share)));
        }
        if (!diagnostics.isEmpty()) {
            return Outcome.none(diagnostics);
        }
        Measurements low = size(lower).orElseThrow();
        Measurements high = size(upper).orElseThrow();
        if (share == 0 || share == 1) {
            return Outcome.of(share == 0 ? low : high);
        }
        String between = "between " + lower + " and " + upper;
        Map<String, Measurements.Entry> entries = new LinkedHashMap<>();
        List<String> left = new ArrayList<>();
        low.entries().forEach((measure, entry) -> {
            Optional<Quantity> other = high.entry(measure)
                    .map(Measurements.Entry::quantity)
                    .filter(q -> q.dimension().equals(entry.quantity().dimension()));
            if (other.isPresent()) {
                double value = line(entry.quantity().value(), other.get().value(), share);
                entries.put(
                        measure,
                        new Measurements.Entry(
                                new Quantity(value, entry.quantity().dimension()), Place.named(between)));
            } else {
                left.add(measure);
            }
        });
        high.entries().keySet().stream()
                .filter(measure -> low.entry(measure).isEmpty())
                .forEach(left::add);
        if (!left.isEmpty()) {
            diagnostics.add(Diagnostic.of(
                    ChartCode.NOT_IN_BOTH,
                    Place.named(name),
                    "between",
                    Fact.words(between),
                    "measures",
                    String.join(", ", left)));
        }
        return Outcome.of(new Measurements(between, entries), diagnostics);
    }

    /** On the straight line from one value to the other; at 0 and 1 the values themselves. */
    static double line(double from, double to, double share) {
        return share == 0 ? from : share == 1 ? to : from + share * (to - from);
    }
}
