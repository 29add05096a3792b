package org.gusset.core.cloth;

import java.util.Comparator;
import java.util.List;

/**
 * How plans are bettered once they are made.
 *
 * @param patience how long it may take
 */
public record LaySearch(Patience patience) {
    /** Arrangements that are longer than the shortest by more are not searched. */
    private static final double WORTH = 1.15;

    /** So many arrangements are searched at the most. */
    private static final int MOST = 3;

    /** Plans as they are made at once. */
    public static LaySearch none() {
        return new LaySearch(Patience.none());
    }

    /** The arrangements, those that are worth it bettered, shortest first. */
    List<Laid> improved(List<Laid> all, int clothsLeft) {
        return all.stream().sorted(Comparator.comparingDouble(Laid::length)).toList();
    }
}
