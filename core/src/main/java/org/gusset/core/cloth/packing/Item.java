package org.gusset.core.cloth.packing;

import java.util.List;
import org.gusset.core.geometry.Point;

/**
 * A shape that is placed one or more times.
 *
 * @param name for whoever reads the plan
 * @param ring a simple polygon, in either direction, the first point not repeated at the end; the origin (0, 0) of its coordinates is what
 *     a placement places
 * @param demand how often it must be placed, at least 1
 * @param orientations how it may be turned, at least one
 * @param rail where it may lie
 */
public record Item(String name, List<Point> ring, int demand, List<Orientation> orientations, Rail rail) {
    /**
     * An item.
     *
     * @throws IllegalArgumentException if the ring is not a simple polygon with an inside, the demand is below 1, or there is no orientation
     */
    public Item {
        ring = List.copyOf(ring);
        orientations = orientations.stream().distinct().toList();
        if (demand < 1) {
            throw new IllegalArgumentException("the demand of " + name + " must be at least 1: " + demand);
        }
        if (orientations.isEmpty()) {
            throw new IllegalArgumentException(name + " needs at least one orientation");
        }
        Rings.requireSimple(name, ring);
    }

    /** An item that may lie anywhere. */
    public static Item of(String name, List<Point> ring, int demand, List<Orientation> orientations) {
        return new Item(name, ring, demand, orientations, Rail.free());
    }

    /** The area of one piece. */
    public double area() {
        return Math.abs(Rings.signedArea(ring));
    }
}
