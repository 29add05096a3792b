package org.gusset.core.cloth.packing;

import java.util.List;
import org.gusset.core.geometry.Point;

/** A ring on the strip as arrays, turning from the x axis toward the y axis, without points that repeat the one before, with its extent. */
record EdgeRing(double[] xs, double[] ys, double minX, double maxX, double minY, double maxY) {
    static EdgeRing of(List<Point> ring) {
        double[] xs = new double[ring.size()];
        double[] ys = new double[ring.size()];
        boolean reversed = Rings.signedArea(ring) < 0;
        for (int i = 0; i < ring.size(); i++) {
            Point p = ring.get(reversed ? ring.size() - 1 - i : i);
            xs[i] = p.x();
            ys[i] = p.y();
        }
        return of(xs, ys);
    }

    /** The ring of a shape whose origin lies at (x, y), with the same rounding as a placement's. */
    static EdgeRing of(Turned turned, double x, double y) {
        int n = turned.xs.length;
        double[] xs = new double[n];
        double[] ys = new double[n];
        for (int i = 0; i < n; i++) {
            xs[i] = turned.xs[i] + x;
            ys[i] = turned.ys[i] + y;
        }
        return of(xs, ys);
    }

    private static EdgeRing of(double[] allX, double[] allY) {
        int n = 0;
        double[] xs = new double[allX.length];
        double[] ys = new double[allX.length];
        double minX = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < allX.length; i++) {
            int before = (i + allX.length - 1) % allX.length;
            if (allX[i] != allX[before] || allY[i] != allY[before]) {
                xs[n] = allX[i];
                ys[n] = allY[i];
                n++;
            }
            minX = Math.min(minX, allX[i]);
            maxX = Math.max(maxX, allX[i]);
            minY = Math.min(minY, allY[i]);
            maxY = Math.max(maxY, allY[i]);
        }
        return new EdgeRing(java.util.Arrays.copyOf(xs, n), java.util.Arrays.copyOf(ys, n), minX, maxX, minY, maxY);
    }

    int size() {
        return xs.length;
    }
}
