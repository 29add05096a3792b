package org.gusset.core.sizing;

import java.util.List;
import java.util.Optional;
import org.gusset.core.measure.Measurements;

/**
 * How a size fits a body.
 *
 * @param size the size
 * @param measures every measure that both have, in the chart's order
 * @param shortage by how many steps the worst key girth is larger than the size covers; 0 if none is
 */
public record SizeFit(Measurements size, List<MeasureFit> measures, double shortage) {
    public SizeFit {
        measures = List.copyOf(measures);
    }

    /** True if no key girth is larger than the size covers. */
    public boolean canBeWorn() {
        return shortage == 0;
    }

    public Optional<MeasureFit> measure(String name) {
        String key = Measurements.key(name);
        return measures.stream()
                .filter(m -> Measurements.key(m.measure()).equals(key))
                .findFirst();
    }
}
