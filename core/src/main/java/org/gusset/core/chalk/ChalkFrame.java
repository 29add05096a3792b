package org.gusset.core.chalk;

import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;

/**
 * The two lines from which marks are set off: a base along the cloth, and a top line square to it through the highest point.
 *
 * @param base what the base is
 * @param edge the name of the edge that lies on the base; empty if it is the grain line or none
 * @param origin where the top line meets the base, in the piece's frame
 * @param across the unit way square off the base, into the piece; right of the grain line as seen with the top up
 * @param down the unit way along the base
 */
public record ChalkFrame(Base base, String edge, Point origin, Vector across, Vector down) {
    /** What marks are set off from. */
    public enum Base {
        /** The fold of the cloth. */
        FOLD,
        /** A straight edge of the piece along the warp, chalked first. */
        EDGE,
        /** A line along the warp inside the piece, chalked first; marks lie on both sides of it. */
        GRAIN,
        /** An upright line at the side of a piece that tells no grain. */
        UPRIGHT
    }

    /** How far a point is off the base. */
    public double across(Point p) {
        return across.dot(p.minus(origin));
    }

    /** How far a point is below the top line. */
    public double down(Point p) {
        return down.dot(p.minus(origin));
    }

    /** True if the piece lies to the left of its base as it is drafted, seen with the top up. */
    public boolean turned() {
        return across.dot(down.left()) < 0;
    }

    /** The point at these distances. */
    public Point at(double acrossBy, double downBy) {
        return origin.plus(across.times(acrossBy)).plus(down.times(downBy));
    }
}
