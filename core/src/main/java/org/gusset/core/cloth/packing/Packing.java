package org.gusset.core.cloth.packing;

import java.util.List;
import org.gusset.core.geometry.Point;

/**
 * A plan: every piece in its place.
 *
 * @param length how much of the strip it takes, from x = 0
 * @param placements one for each piece, in the order of the items
 */
public record Packing(double length, List<Placement> placements) {
    public Packing {
        placements = List.copyOf(placements);
    }

    /** The share of the strip's area, from 0 to 1, that the pieces cover. */
    public double share(Strip strip) {
        return strip.area() / (strip.width() * length);
    }

    /** The rings of all pieces on the strip, in the order of the placements. */
    public List<List<Point>> rings(Strip strip) {
        return placements.stream().map(p -> p.ring(strip)).toList();
    }
}
