package org.gusset.core.cloth.packing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Whether the insides of two rings meet, decided edge by edge and without error.
 *
 * <p>If two edges cross at a point inside both, they do. If none cross, the border of one ring changes between inside and outside of the
 * other only at corners that lie on the other's border; there each stretch of an edge up to the next such corner lies inside, outside or on
 * the other's border, as its middle does. The insides meet if a stretch lies inside, or on the border with both insides on the same side.
 * Rings without any contact lie apart, or one lies inside the other, which one corner tells.
 */
final class EdgeOverlap {
    private enum Where {
        INSIDE,
        OUTSIDE,
        BORDER_SAME_WAY,
        BORDER_OTHER_WAY
    }

    private static final BigDecimal HALF = new BigDecimal("0.5");

    private EdgeOverlap() {}

    static boolean overlap(EdgeRing a, EdgeRing b) {
        if (a.maxX() <= b.minX() || b.maxX() <= a.minX() || a.maxY() <= b.minY() || b.maxY() <= a.minY()) {
            return false;
        }
        if (crossing(a, b)) {
            return true;
        }
        List<double[]> stretches = stretches(a, b);
        List<double[]> others = stretches(b, a);
        if (stretches.isEmpty() && others.isEmpty()) {
            return inside(a.xs()[0], a.ys()[0], b) || inside(b.xs()[0], b.ys()[0], a);
        }
        return meets(stretches, b) || meets(others, a);
    }

    private static boolean inside(double x, double y, EdgeRing ring) {
        BigDecimal px = new BigDecimal(x);
        BigDecimal py = new BigDecimal(y);
        return where(px, py, px, py, ring) == Where.INSIDE;
    }

    private static boolean meets(List<double[]> stretches, EdgeRing ring) {
        for (double[] s : stretches) {
            BigDecimal x = new BigDecimal(s[0]).add(new BigDecimal(s[2])).multiply(HALF);
            BigDecimal y = new BigDecimal(s[1]).add(new BigDecimal(s[3])).multiply(HALF);
            BigDecimal dx = new BigDecimal(s[2]).subtract(new BigDecimal(s[0]));
            BigDecimal dy = new BigDecimal(s[3]).subtract(new BigDecimal(s[1]));
            Where where = where(x, y, dx, dy, ring);
            if (where == Where.INSIDE || where == Where.BORDER_SAME_WAY) {
                return true;
            }
        }
        return false;
    }

    private static boolean crossing(EdgeRing a, EdgeRing b) {
        for (int i = 0; i < a.size(); i++) {
            double ax = a.xs()[i];
            double ay = a.ys()[i];
            double bx = a.xs()[(i + 1) % a.size()];
            double by = a.ys()[(i + 1) % a.size()];
            for (int j = 0; j < b.size(); j++) {
                double cx = b.xs()[j];
                double cy = b.ys()[j];
                double dx = b.xs()[(j + 1) % b.size()];
                double dy = b.ys()[(j + 1) % b.size()];
                if (apart(ax, bx, cx, dx) || apart(ay, by, cy, dy)) {
                    continue;
                }
                if (Exact.side(ax, ay, bx, by, cx, cy) * Exact.side(ax, ay, bx, by, dx, dy) < 0
                        && Exact.side(cx, cy, dx, dy, ax, ay) * Exact.side(cx, cy, dx, dy, bx, by) < 0) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean apart(double a, double b, double c, double d) {
        return Math.max(a, b) < Math.min(c, d) || Math.max(c, d) < Math.min(a, b);
    }

    /** The stretches of edges of {@code a} that begin or end at a contact with the border of {@code b}: x, y, x, y. */
    private static List<double[]> stretches(EdgeRing a, EdgeRing b) {
        boolean[] touching = new boolean[a.size()];
        for (int i = 0; i < a.size(); i++) {
            touching[i] = onBorder(a.xs()[i], a.ys()[i], b);
        }
        List<double[]> out = new ArrayList<>();
        for (int i = 0; i < a.size(); i++) {
            int next = (i + 1) % a.size();
            double ax = a.xs()[i];
            double ay = a.ys()[i];
            double bx = a.xs()[next];
            double by = a.ys()[next];
            List<double[]> corners = new ArrayList<>();
            for (int j = 0; j < b.size(); j++) {
                double x = b.xs()[j];
                double y = b.ys()[j];
                if (on(ax, ay, bx, by, x, y) && !(x == ax && y == ay) && !(x == bx && y == by)) {
                    corners.add(new double[] {x, y});
                }
            }
            if (corners.isEmpty() && !touching[i] && !touching[next]) {
                continue;
            }
            // Along an edge one coordinate grows or falls all the way, so that distance needs no computing.
            corners.sort(
                    Comparator.comparingDouble(p -> bx != ax ? (bx > ax ? p[0] : -p[0]) : (by > ay ? p[1] : -p[1])));
            double fromX = ax;
            double fromY = ay;
            corners.add(new double[] {bx, by});
            for (double[] to : corners) {
                if (to[0] != fromX || to[1] != fromY) {
                    out.add(new double[] {fromX, fromY, to[0], to[1]});
                }
                fromX = to[0];
                fromY = to[1];
            }
        }
        return out;
    }

    private static boolean onBorder(double x, double y, EdgeRing ring) {
        for (int i = 0; i < ring.size(); i++) {
            int next = (i + 1) % ring.size();
            if (on(ring.xs()[i], ring.ys()[i], ring.xs()[next], ring.ys()[next], x, y)) {
                return true;
            }
        }
        return false;
    }

    private static boolean on(double ax, double ay, double bx, double by, double x, double y) {
        return x >= Math.min(ax, bx)
                && x <= Math.max(ax, bx)
                && y >= Math.min(ay, by)
                && y <= Math.max(ay, by)
                && Exact.side(ax, ay, bx, by, x, y) == 0;
    }

    /** Where a point lies; on the border, whether a stretch that goes (dx, dy) there runs the way of the border. */
    private static Where where(BigDecimal x, BigDecimal y, BigDecimal dx, BigDecimal dy, EdgeRing ring) {
        boolean inside = false;
        for (int i = 0; i < ring.size(); i++) {
            int next = (i + 1) % ring.size();
            BigDecimal ay = new BigDecimal(ring.ys()[i]);
            BigDecimal by = new BigDecimal(ring.ys()[next]);
            int fromA = y.compareTo(ay);
            int fromB = y.compareTo(by);
            if (fromA * fromB > 0) {
                continue;
            }
            BigDecimal ax = new BigDecimal(ring.xs()[i]);
            BigDecimal bx = new BigDecimal(ring.xs()[next]);
            int side = Exact.side(ax, ay, bx, by, x, y);
            if (side == 0 && x.compareTo(ax) * x.compareTo(bx) <= 0) {
                int sameWay = bx.subtract(ax)
                        .multiply(dx)
                        .add(by.subtract(ay).multiply(dy))
                        .signum();
                return sameWay > 0 ? Where.BORDER_SAME_WAY : Where.BORDER_OTHER_WAY;
            }
            // The ray along x crosses edges that have their lower end at or below it, and their upper end above.
            if (fromA >= 0 && fromB < 0 && side > 0) {
                inside = !inside;
            } else if (fromB >= 0 && fromA < 0 && side < 0) {
                inside = !inside;
            }
        }
        return inside ? Where.INSIDE : Where.OUTSIDE;
    }
}
