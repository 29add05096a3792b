package org.gusset.core.pattern;

import java.util.List;
import org.gusset.core.geometry.Point;

/**
 * Squared distances from the lines of a ring. A piece asks some hundred thousand times, so that the lines stand as numbers, in
 * runs whose box tells when none of them can be nearer than what is known.
 */
final class RingDistances {
    /** Lines of a run. */
    private static final int RUN = 8;

    /** What rounding may take from the distance of a box, as a share. */
    private static final double SAFE = 1 - 1e-9;

    private final double[] xs;
    private final double[] ys;

    /** Of each run: left, top, right, bottom. */
    private final double[] boxes;

    RingDistances(List<Point> ring) {
        xs = new double[ring.size()];
        ys = new double[ring.size()];
        for (int i = 0; i < xs.length; i++) {
            xs[i] = ring.get(i).x();
            ys[i] = ring.get(i).y();
        }
        boxes = new double[4 * ((xs.length - 1 + RUN - 1) / RUN)];
        for (int run = 0; 4 * run < boxes.length; run++) {
            double left = Double.POSITIVE_INFINITY;
            double top = Double.POSITIVE_INFINITY;
            double right = Double.NEGATIVE_INFINITY;
            double bottom = Double.NEGATIVE_INFINITY;
            for (int i = run * RUN; i <= Math.min(xs.length - 1, (run + 1) * RUN); i++) {
                left = Math.min(left, xs[i]);
                top = Math.min(top, ys[i]);
                right = Math.max(right, xs[i]);
                bottom = Math.max(bottom, ys[i]);
            }
            boxes[4 * run] = left;
            boxes[4 * run + 1] = top;
            boxes[4 * run + 2] = right;
            boxes[4 * run + 3] = bottom;
        }
    }

    /** The squared distance of the nearest line, or {@code known} if that is less. */
    double least(Point p, double known) {
        double x = p.x();
        double y = p.y();
        double least = known;
        for (int run = 0; 4 * run < boxes.length; run++) {
            double dx = Math.max(0, Math.max(boxes[4 * run] - x, x - boxes[4 * run + 2]));
            double dy = Math.max(0, Math.max(boxes[4 * run + 1] - y, y - boxes[4 * run + 3]));
            if ((dx * dx + dy * dy) * SAFE > least) {
                continue;
            }
            int end = Math.min(xs.length - 1, (run + 1) * RUN);
            for (int i = run * RUN; i < end; i++) {
                least = Math.min(least, squared(x, y, i));
            }
        }
        return least;
    }

    private double squared(double x, double y, int line) {
        double alongX = xs[line + 1] - xs[line];
        double alongY = ys[line + 1] - ys[line];
        double offX = x - xs[line];
        double offY = y - ys[line];
        double dot = offX * alongX + offY * alongY;
        // Beyond its ends, where most of the ring lies, nothing need be divided.
        if (dot <= 0) {
            return offX * offX + offY * offY;
        }
        double square = alongX * alongX + alongY * alongY;
        double share = dot >= square ? 1 : dot / square;
        offX -= share * alongX;
        offY -= share * alongY;
        return offX * offX + offY * offY;
    }
}
