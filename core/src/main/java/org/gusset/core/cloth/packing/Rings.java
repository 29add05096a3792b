package org.gusset.core.cloth.packing;

import java.util.List;
import org.gusset.core.geometry.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;

/** Rings of points as JTS knows them, and what is asked of every ring. */
final class Rings {
    private Rings() {}

    /** Twice halved cross products about the first point; positive where the ring turns from the x axis toward the y axis. */
    static double signedArea(List<Point> ring) {
        Point o = ring.get(0);
        double twice = 0;
        for (int i = 1; i + 1 < ring.size(); i++) {
            Point p = ring.get(i);
            Point q = ring.get(i + 1);
            twice += (p.x() - o.x()) * (q.y() - o.y()) - (q.x() - o.x()) * (p.y() - o.y());
        }
        return twice / 2;
    }

    /** How many corners point inward. */
    static int inward(List<Point> ring) {
        double side = Math.signum(signedArea(ring));
        int n = ring.size();
        int count = 0;
        for (int i = 0; i < n; i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % n);
            Point c = ring.get((i + 2) % n);
            double turn = (b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x());
            count += turn * side < 0 ? 1 : 0;
        }
        return count;
    }

    static void requireSimple(String name, List<Point> ring) {
        if (ring.size() < 3) {
            throw new IllegalArgumentException("the ring of " + name + " needs three points: " + ring.size());
        }
        for (Point p : ring) {
            if (!Double.isFinite(p.x()) || !Double.isFinite(p.y())) {
                throw new IllegalArgumentException("the ring of " + name + " has a point that is not finite");
            }
        }
        IsValidOp valid = new IsValidOp(polygon(ring));
        if (!valid.isValid() || signedArea(ring) == 0) {
            throw new IllegalArgumentException("the ring of " + name + " is not a simple polygon: "
                    + (valid.isValid()
                            ? "nothing inside"
                            : valid.getValidationError().getMessage()));
        }
    }

    static Polygon polygon(List<Point> ring) {
        Coordinate[] shell = new Coordinate[ring.size() + 1];
        for (int i = 0; i < ring.size(); i++) {
            shell[i] = new Coordinate(ring.get(i).x(), ring.get(i).y());
        }
        shell[ring.size()] = shell[0].copy();
        return new GeometryFactory().createPolygon(shell);
    }
}
