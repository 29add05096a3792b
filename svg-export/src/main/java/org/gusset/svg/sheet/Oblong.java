package org.gusset.svg.sheet;

import java.util.List;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;

/**
 * A rectangle, turned or not: the room that words take up.
 *
 * @param centre its centre
 * @param width its extent along its own right, in mm
 * @param height its extent along its own down, in mm
 * @param turn how far it is turned, in degrees anticlockwise as seen
 */
record Oblong(Point centre, double width, double height, double turn) {
    Vector along() {
        return Vector.atAngle(turn);
    }

    Vector down() {
        return along().right();
    }

    /** A place inside, counted from the centre along its own right and down. */
    Point at(double right, double down) {
        return centre.plus(along().times(right)).plus(down().times(down));
    }

    /** The corners in order round it, from the top left one as its words are read. */
    List<Point> corners() {
        double w = width / 2;
        double h = height / 2;
        return List.of(at(-w, -h), at(w, -h), at(w, h), at(-w, h));
    }

    /** True if a straight stretch comes within {@code clearance} of this rectangle (corners counted square). */
    boolean meets(Point from, Point to, double clearance) {
        Vector along = along();
        Vector down = along.right();
        Vector a = from.minus(centre);
        Vector b = to.minus(centre);
        double ax = a.dot(along);
        double ay = a.dot(down);
        double dx = b.dot(along) - ax;
        double dy = b.dot(down) - ay;
        double[] reach = {0, 1};
        return within(ax, dx, width / 2 + clearance, reach) && within(ay, dy, height / 2 + clearance, reach);
    }

    /** Narrows the share of a stretch to where one coordinate lies within a band; false if nothing is left. */
    private static boolean within(double start, double by, double half, double[] reach) {
        if (by == 0) {
            return Math.abs(start) < half;
        }
        double t0 = (-half - start) / by;
        double t1 = (half - start) / by;
        reach[0] = Math.max(reach[0], Math.min(t0, t1));
        reach[1] = Math.min(reach[1], Math.max(t0, t1));
        return reach[0] < reach[1];
    }
}
