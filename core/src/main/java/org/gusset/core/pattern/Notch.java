package org.gusset.core.pattern;

import java.util.List;
import org.gusset.core.geometry.Point;

/**
 * A sewing mark on an edge, cut into the allowance.
 *
 * @param edge the edge's name
 * @param s the arc length along the edge in mm, from the edge's start in outline direction
 * @param at the point on the stitching line
 * @param ticks one, two or three strokes, each from the cutting line inwards
 */
public record Notch(String edge, double s, Point at, List<Tick> ticks) {
    /** One stroke of a notch. */
    public record Tick(Point outer, Point inner) {}

    public Notch {
        ticks = List.copyOf(ticks);
    }
}
