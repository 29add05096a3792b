package org.gusset.core.sizing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.measure.Measurements;

/**
 * Which size fits a body.
 *
 * @param body the body
 * @param ranked every size that has one of the key measures, the best first
 * @param keys the measures by which the size was chosen, by their names in the chart
 * @param own the size of each key measure by itself
 * @param lacking measures that matter and that the body lacks, though the chart has them
 * @param pieces the size of each piece of the draft, by the measures of the draft that the piece rests on alone; empty without a draft
 */
public record SizeChoice(
        Measurements body,
        List<SizeFit> ranked,
        List<String> keys,
        Map<String, String> own,
        List<String> lacking,
        Map<String, String> pieces) {
    public SizeChoice {
        ranked = List.copyOf(ranked);
        keys = List.copyOf(keys);
        own = Collections.unmodifiableMap(new LinkedHashMap<>(own));
        lacking = List.copyOf(lacking);
        pieces = Collections.unmodifiableMap(new LinkedHashMap<>(pieces));
    }

    public SizeFit best() {
        return ranked.get(0);
    }

    /** The size that comes next; empty if the chart has one size only. */
    public Optional<SizeFit> second() {
        return ranked.stream().skip(1).findFirst();
    }

    /** True if the key measures are those of different sizes. */
    public boolean split() {
        return new LinkedHashSet<>(own.values()).size() > 1;
    }
}
