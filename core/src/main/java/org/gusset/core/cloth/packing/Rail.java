package org.gusset.core.cloth.packing;

import java.util.Optional;

/**
 * Where an item may lie, beside being within the strip.
 *
 * @param low no point of the item lies below this y; may be infinite
 * @param high no point of the item lies above this y; may be infinite
 * @param along the values that x of the item's origin may take, as stripes across the strip ask; any if empty
 * @param across the values that y of the item's origin may take; any if empty
 */
public record Rail(double low, double high, Optional<Lattice> along, Optional<Lattice> across) {
    /**
     * A rail.
     *
     * @throws IllegalArgumentException if {@code low} is not below {@code high}, or the lattice along the strip has a single value: two
     *     pieces might have no place at all
     */
    public Rail {
        if (!(low < high)) {
            throw new IllegalArgumentException("low must be below high: " + low + ", " + high);
        }
        if (along.isPresent() && along.get().step() == 0) {
            throw new IllegalArgumentException("the lattice along the strip needs a step");
        }
    }

    /** Anywhere in the strip. */
    public static Rail free() {
        return new Rail(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Optional.empty(), Optional.empty());
    }

    /** The item's origin at exactly this y, as a piece whose fold lies on the fold of the cloth. */
    public static Rail at(double y) {
        return free().withAcross(Lattice.only(y));
    }

    /** All points of the item from {@code low} to {@code high}. */
    public static Rail within(double low, double high) {
        return new Rail(low, high, Optional.empty(), Optional.empty());
    }

    public Rail withAlong(Lattice lattice) {
        return new Rail(low, high, Optional.of(lattice), across);
    }

    public Rail withAcross(Lattice lattice) {
        return new Rail(low, high, along, Optional.of(lattice));
    }
}
