package org.gusset.core.cloth.packing;

import java.util.ArrayList;
import java.util.List;

/**
 * The places at which one turned item overlaps another, seen from the other's origin: the no-fit polygon, as a union of convex polygons, each
 * the Minkowski sum of a convex part of both. A convex polygon is kept as half planes {@code nx * x + ny * y < c} with (nx, ny) of length 1
 * that points out.
 *
 * <p>Planes that are aslant are moved out by the clearance, which keeps pieces apart by more than rounding can bring them together. Planes
 * along the axes are moved out by less or not at all, so that rectangles may touch exactly; each polygon has the four planes of its own extent.
 */
final class NoFit {
    final List<Convex> sums;
    final double minX;
    final double maxX;
    final double minY;
    final double maxY;
    /** Where the planes of each sum begin; one more entry than sums. */
    final int[] from;

    final double[] nx;
    final double[] ny;
    final double[] c;

    private NoFit(List<Convex> sums, double clearance, double onAxes) {
        this.sums = sums;
        int planes = 0;
        for (Convex sum : sums) {
            planes += sum.size() + 4;
        }
        from = new int[sums.size() + 1];
        nx = new double[planes];
        ny = new double[planes];
        c = new double[planes];
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        int count = 0;
        for (int k = 0; k < sums.size(); k++) {
            Convex sum = sums.get(k);
            from[k] = count;
            // The extent first: it is what most places fail.
            double sumLeft = min(sum.xs()) - onAxes;
            double sumRight = -min(negated(sum.xs())) + onAxes;
            double sumLow = min(sum.ys()) - onAxes;
            double sumHigh = -min(negated(sum.ys())) + onAxes;
            count = plane(count, 0, -1, -sumLow);
            count = plane(count, 0, 1, sumHigh);
            count = plane(count, -1, 0, -sumLeft);
            count = plane(count, 1, 0, sumRight);
            left = Math.min(left, sumLeft);
            right = Math.max(right, sumRight);
            low = Math.min(low, sumLow);
            high = Math.max(high, sumHigh);
            int n = sum.size();
            for (int i = 0; i < n; i++) {
                int j = (i + 1) % n;
                double ex = sum.xs()[j] - sum.xs()[i];
                double ey = sum.ys()[j] - sum.ys()[i];
                double length = Math.sqrt(ex * ex + ey * ey);
                // An edge along an axis is its extent's plane already.
                if (Math.abs(ex) > length * 1e-12 && Math.abs(ey) > length * 1e-12 && length > clearance) {
                    double px = ey / length;
                    double py = -ex / length;
                    double far = Math.max(px * sum.xs()[i] + py * sum.ys()[i], px * sum.xs()[j] + py * sum.ys()[j]);
                    count = plane(count, px, py, far + clearance);
                }
            }
        }
        from[sums.size()] = count;
        minX = left;
        maxX = right;
        minY = low;
        maxY = high;
    }

    private int plane(int at, double px, double py, double pc) {
        nx[at] = px;
        ny[at] = py;
        c[at] = pc;
        return at + 1;
    }

    private static double min(double[] values) {
        double least = Double.POSITIVE_INFINITY;
        for (double v : values) {
            least = Math.min(least, v);
        }
        return least;
    }

    private static double[] negated(double[] values) {
        double[] out = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            out[i] = -values[i];
        }
        return out;
    }

    /** The no-fit polygon of the parts of a moving item beside the parts of a fixed one, with a gap around it. */
    static NoFit of(List<Convex> fixed, List<Convex> moving, double gap, double clearance, double onAxes) {
        List<Convex> sums = new ArrayList<>();
        for (Convex a : fixed) {
            for (Convex b : moving) {
                Convex sum = Convex.difference(a, b);
                sums.add(gap > 0 ? sum.widened(gap) : sum);
            }
        }
        return new NoFit(sums, clearance, onAxes);
    }

    /** Whether the items overlap by more than rounding when the moving one lies at (x, y). */
    boolean overlaps(double x, double y, double rounding) {
        for (int k = 0; k < from.length - 1; k++) {
            boolean within = true;
            for (int p = from[k]; p < from[k + 1] && within; p++) {
                within = nx[p] * x + ny[p] * y < c[p] - rounding;
            }
            if (within) {
                return true;
            }
        }
        return false;
    }

    /** Adds the spans of x within which the items overlap at this y, moved by {@code shift}. */
    void spans(double y, double shift, double rounding, Spans out) {
        if (y <= minY + rounding || y >= maxY - rounding) {
            return;
        }
        for (int k = 0; k < from.length - 1; k++) {
            int p = from[k];
            if (-y >= c[p] - rounding || y >= c[p + 1] - rounding) {
                continue;
            }
            double low = -c[p + 2];
            double high = c[p + 3];
            for (p += 4; p < from[k + 1]; p++) {
                double at = (c[p] - ny[p] * y) / nx[p];
                if (nx[p] > 0) {
                    high = Math.min(high, at);
                } else {
                    low = Math.max(low, at);
                }
            }
            if (high - low > rounding) {
                out.add(low + shift, high + shift);
            }
        }
    }
}
