package org.gusset.core.cloth.packing;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Point;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;

/**
 * A ring with fewer corners that holds the whole of another: hollows are bridged and short edges between two outer corners are replaced by
 * the point in which their neighbours meet, the smallest triangles first, as long as what is added stays a small share of the area. The ring
 * never grows beyond its extent, so that what fits a strip still does.
 */
final class Outward {
    /** Rings with so many corners or fewer stay as they are. */
    private static final int FEW = 12;
    /** Rings with more corners than this may grow by more. */
    private static final int MANY = 36;

    private static final double SHARE_OF_FEW = 0.001;
    private static final double SHARE_OF_MANY = 0.003;

    private final List<Coordinate> ring = new ArrayList<>();
    private final double minX;
    private final double maxX;
    private final double minY;
    private final double maxY;

    private Outward(Turned of) {
        for (int i = 0; i < of.xs.length; i++) {
            ring.add(new Coordinate(of.xs[i], of.ys[i]));
        }
        minX = of.minX;
        maxX = of.maxX;
        minY = of.minY;
        maxY = of.maxY;
    }

    /** The convex parts of a ring around a shape. */
    static List<Convex> parts(Turned shape) {
        Outward outward = new Outward(shape);
        outward.straighten();
        double[] xs = outward.ring.stream().mapToDouble(c -> c.x).toArray();
        double[] ys = outward.ring.stream().mapToDouble(c -> c.y).toArray();
        return outward.simple() ? ConvexParts.of(xs, ys) : ConvexParts.of(shape.xs, shape.ys);
    }

    /** Rounding could make a ring whose edges all but touch cross itself. */
    private boolean simple() {
        return Rings.polygon(ring.stream().map(c -> new Point(c.x, c.y)).toList())
                .isValid();
    }

    private void straighten() {
        double area = 0;
        for (int i = 0; i < ring.size(); i++) {
            Coordinate a = ring.get(i);
            Coordinate b = at(i + 1);
            area += (a.x * b.y - b.x * a.y) / 2;
        }
        double added = 0;
        while (ring.size() > FEW) {
            double left = (ring.size() > MANY ? SHARE_OF_MANY : SHARE_OF_FEW) * area - added;
            int best = -1;
            Coordinate meeting = null;
            double least = left;
            for (int i = 0; i < ring.size(); i++) {
                double bridged = bridge(i);
                if (bridged < least && free(at(i - 1), ring.get(i), at(i + 1))) {
                    best = i;
                    least = bridged;
                    meeting = null;
                }
                Coordinate met = meeting(i);
                if (met != null) {
                    double triangle = triangle(ring.get(i), met, at(i + 1));
                    if (triangle < least && free(ring.get(i), met, at(i + 1))) {
                        best = i;
                        least = triangle;
                        meeting = met;
                    }
                }
            }
            if (best < 0) {
                return;
            }
            added += least;
            if (meeting == null) {
                ring.remove(best);
            } else {
                ring.set(best, meeting);
                ring.remove((best + 1) % ring.size());
            }
        }
    }

    private Coordinate at(int i) {
        int n = ring.size();
        return ring.get((i % n + n) % n);
    }

    private static double triangle(Coordinate a, Coordinate b, Coordinate c) {
        return Math.abs((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y)) / 2;
    }

    /** What a straight line past a hollow corner adds; endless at an outer one. */
    private double bridge(int i) {
        return Orientation.index(at(i - 1), ring.get(i), at(i + 1)) <= 0
                ? triangle(at(i - 1), ring.get(i), at(i + 1))
                : Double.POSITIVE_INFINITY;
    }

    /** Where the edges before and after the edge from corner i meet beyond it; null if they do not, or outside of the extent. */
    private @Nullable Coordinate meeting(int i) {
        Coordinate a = at(i - 1);
        Coordinate b = ring.get(i);
        Coordinate c = at(i + 1);
        Coordinate d = at(i + 2);
        if (Orientation.index(a, b, c) <= 0 || Orientation.index(b, c, d) <= 0) {
            return null;
        }
        double ex = b.x - a.x;
        double ey = b.y - a.y;
        double fx = c.x - d.x;
        double fy = c.y - d.y;
        double turn = ex * fy - ey * fx;
        double lengths = Math.sqrt((ex * ex + ey * ey) * (fx * fx + fy * fy));
        // Both edges run toward the meeting; nearly parallel ones meet far away or nowhere.
        if (turn >= -0.05 * lengths) {
            return null;
        }
        double s = ((d.x - a.x) * fy - (d.y - a.y) * fx) / turn;
        // A hair further out, so that rounding does not cut the corners off.
        double x = a.x + s * ex;
        double y = a.y + s * ey;
        double hair = 1e-10;
        x += hair * (x - (b.x + c.x) / 2);
        y += hair * (y - (b.y + c.y) / 2);
        boolean within = x >= minX && x <= maxX && y >= minY && y <= maxY;
        return within && s > 1 ? new Coordinate(x, y) : null;
    }

    /** Whether no other corner lies in the triangle. */
    private boolean free(Coordinate a, Coordinate b, Coordinate c) {
        int way = Orientation.index(a, b, c);
        for (Coordinate p : ring) {
            if (p.equals2D(a) || p.equals2D(b) || p.equals2D(c)) {
                continue;
            }
            if (Orientation.index(a, b, p) * way >= 0
                    && Orientation.index(b, c, p) * way >= 0
                    && Orientation.index(c, a, p) * way >= 0) {
                return false;
            }
        }
        return true;
    }
}
