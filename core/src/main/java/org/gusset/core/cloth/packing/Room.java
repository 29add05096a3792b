package org.gusset.core.cloth.packing;

import java.util.Optional;

/**
 * Where the origin of a turned item may lie.
 *
 * @param low least y
 * @param high greatest y
 * @param left least x; the greatest depends on the strip's length
 * @param reach how far the item reaches beyond its origin along the strip
 */
record Room(double low, double high, double left, double reach, Optional<Lattice> along, Optional<Lattice> across) {
    /** The room of an item on a strip of a width; none if it does not fit. */
    static Optional<Room> of(Turned turned, Rail rail, double width) {
        double slack = width * 1e-12;
        double low = Math.max(0, rail.low()) - turned.minY;
        double high = Math.min(width, rail.high()) - turned.maxY;
        if (rail.across().isPresent()) {
            Lattice lattice = rail.across().get();
            double first = lattice.atOrAbove(low);
            double last = lattice.atOrBelow(high);
            if (first < low - slack || first > high + slack) {
                return Optional.empty();
            }
            low = first;
            high = Math.max(first, last);
        } else if (low > high) {
            if (low > high + slack) {
                return Optional.empty();
            }
            // As wide as the strip but for rounding.
            high = low;
        }
        return Optional.of(new Room(low, high, -turned.minX, turned.maxX, rail.along(), rail.across()));
    }

    /** The least x that is not below {@code x}. */
    double xFrom(double x) {
        double from = Math.max(x, left);
        return along.isPresent() ? along.get().atOrAbove(from) : from;
    }

    /** The x nearest to {@code x} on a strip of a length; not a number if there is none. */
    double x(double x, double length) {
        double last = length - reach + length * 1e-12;
        double within = Math.max(left, Math.min(last, x));
        if (along.isEmpty()) {
            return within;
        }
        double at = along.get().nearest(within);
        double down = at > last ? along.get().atOrBelow(last) : at;
        double up = down < left ? along.get().atOrAbove(left) : down;
        return up > last ? Double.NaN : up;
    }

    /** The least length of a strip that the shape lies on. */
    double leastLength() {
        return xFrom(left) + reach;
    }

    /** The y nearest to {@code y}. */
    double y(double y) {
        double within = Math.max(low, Math.min(high, y));
        return across.isPresent() ? Math.max(low, Math.min(high, across.get().nearest(within))) : within;
    }
}
