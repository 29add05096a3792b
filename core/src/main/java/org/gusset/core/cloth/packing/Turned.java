package org.gusset.core.cloth.packing;

import java.util.List;
import org.gusset.core.geometry.Point;

/** An item in one orientation, its origin at (0, 0); the ring turns from the x axis toward the y axis. */
final class Turned {
    final int item;
    final Orientation orientation;
    final double[] xs;
    final double[] ys;
    final double minX;
    final double maxX;
    final double minY;
    final double maxY;

    private Turned(int item, Orientation orientation, List<Point> ring) {
        this.item = item;
        this.orientation = orientation;
        int n = ring.size();
        xs = new double[n];
        ys = new double[n];
        boolean reversed = Rings.signedArea(ring) < 0 ^ orientation.mirrored();
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            Point p = orientation.apply(ring.get(reversed ? n - 1 - i : i));
            xs[i] = p.x();
            ys[i] = p.y();
            left = Math.min(left, p.x());
            right = Math.max(right, p.x());
            low = Math.min(low, p.y());
            high = Math.max(high, p.y());
        }
        this.minX = left;
        this.maxX = right;
        this.minY = low;
        this.maxY = high;
    }

    static Turned of(Item item, int number, Orientation orientation) {
        return of(item.ring(), number, orientation);
    }

    static Turned of(List<Point> ring, int number, Orientation orientation) {
        return new Turned(number, orientation, ring);
    }
}
