package org.gusset.core.cloth.packing;

import java.util.Optional;

/**
 * Makes a plan exact. Where pieces touch along an axis, rounding can make them overlap by the last bits of a coordinate; such a piece is
 * pushed by a few of these bits. What overlaps by more is refused.
 */
final class Settling {
    private static final int PASSES = 24;

    private final Shapes shapes;
    private final int[] shape;
    private final double[] x;
    private final double[] y;

    private Settling(Shapes shapes, Layout layout) {
        this.shapes = shapes;
        this.shape = layout.shape();
        this.x = layout.x().clone();
        this.y = layout.y().clone();
    }

    /** The plan without any overlap; empty if more than bits are in the way. */
    static Optional<Layout> settle(Shapes shapes, Layout layout) {
        return new Settling(shapes, layout).settled(layout);
    }

    private Optional<Layout> settled(Layout layout) {
        for (int pass = 0; pass < PASSES; pass++) {
            boolean clean = true;
            for (int i = 0; i < shape.length; i++) {
                for (int j = 0; j < shape.length; j++) {
                    if (x[j] < x[i] || (x[j] == x[i] && j <= i) || !overlap(i, j)) {
                        continue;
                    }
                    clean = false;
                    if (!pushed(i, j, pass)) {
                        return Optional.empty();
                    }
                }
            }
            if (clean) {
                return Optional.of(pass == 0 ? layout : new Layout(shape, x, y, end()));
            }
        }
        return Optional.empty();
    }

    private double end() {
        double end = 0;
        for (int i = 0; i < shape.length; i++) {
            end = Math.max(end, x[i] + shapes.turned.get(shape[i]).maxX);
        }
        return end;
    }

    private boolean overlap(int i, int j) {
        Turned a = shapes.turned.get(shape[i]);
        Turned b = shapes.turned.get(shape[j]);
        if (x[i] + a.maxX <= x[j] + b.minX
                || x[j] + b.maxX <= x[i] + a.minX
                || y[i] + a.maxY <= y[j] + b.minY
                || y[j] + b.maxY <= y[i] + a.minY) {
            return false;
        }
        return EdgeOverlap.overlap(EdgeRing.of(a, x[i], y[i]), EdgeRing.of(b, x[j], y[j]));
    }

    /** Moves the right one of the two by the least that parts them, upward, downward or to the right. */
    private boolean pushed(int i, int j, int pass) {
        double fromX = x[j];
        double fromY = y[j];
        boolean upward = y[j] + shapes.turned.get(shape[j]).minY > y[i] + shapes.turned.get(shape[i]).minY;
        double scale = Math.ulp(Math.max(shapes.strip.width(), Math.abs(x[i]) + Math.abs(x[j])));
        for (double by = scale; by <= 4096 * scale; by *= 2) {
            double[][] ways = {{by, 0}, {0, upward ? by : -by}, {0, upward ? -by : by}};
            for (int k = 0; k < ways.length; k++) {
                double[] way = ways[(k + pass / 8) % ways.length];
                x[j] = fromX + way[0];
                y[j] = fromY + way[1];
                if (inside(j) && !overlap(i, j)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean inside(int j) {
        Turned turned = shapes.turned.get(shape[j]);
        double slack = shapes.strip.width() * 1e-10;
        return y[j] + turned.minY >= -slack && y[j] + turned.maxY <= shapes.strip.width() + slack;
    }
}
