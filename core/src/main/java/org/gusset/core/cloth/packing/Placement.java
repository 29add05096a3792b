package org.gusset.core.cloth.packing;

import java.util.List;
import org.gusset.core.geometry.Point;

/**
 * Where one piece lies.
 *
 * @param item its number among the strip's items
 * @param orientation how it is turned
 * @param x where its origin lies along the strip, after the turn
 * @param y where its origin lies across the strip
 */
public record Placement(int item, Orientation orientation, double x, double y) {
    /**
     * A placement.
     *
     * @throws IllegalArgumentException if the place is not finite
     */
    public Placement {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a place must be finite: " + x + ", " + y);
        }
    }

    /** The piece's ring on the strip. */
    public List<Point> ring(Strip strip) {
        return strip.items().get(item).ring().stream()
                .map(p -> {
                    Point turned = orientation.apply(p);
                    return new Point(turned.x() + x, turned.y() + y);
                })
                .toList();
    }
}
