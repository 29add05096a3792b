package org.gusset.core.cloth.packing;

import java.util.Arrays;

/**
 * The border of a no-fit polygon as loose segments: of each edge of each of its convex polygons what no other of them covers. Found by
 * clipping edges to polygons one by one, which needs no overlay and no topology. It measures how deep a place lies inside; whether it lies
 * inside is never asked of it.
 */
final class Border {
    private double[] ax = new double[64];
    private double[] ay = new double[64];
    private double[] bx = new double[64];
    private double[] by = new double[64];
    private int count;

    private Border() {}

    static Border of(NoFit fit, double tolerance) {
        Border border = new Border();
        double[] covered = new double[64];
        for (int k = 0; k < fit.sums.size(); k++) {
            Convex sum = fit.sums.get(k);
            for (int i = 0; i < sum.size(); i++) {
                int next = (i + 1) % sum.size();
                double px = sum.xs()[i];
                double py = sum.ys()[i];
                double qx = sum.xs()[next];
                double qy = sum.ys()[next];
                double length = Math.sqrt((qx - px) * (qx - px) + (qy - py) * (qy - py));
                if (length <= tolerance) {
                    continue;
                }
                int spans = 0;
                for (int j = 0; j < fit.sums.size(); j++) {
                    if (j == k || beside(fit, j, px, py, qx, qy)) {
                        continue;
                    }
                    if (covered.length < spans + 2) {
                        covered = Arrays.copyOf(covered, 2 * covered.length);
                    }
                    if (clip(fit, k, j, px, py, qx, qy, tolerance, covered, spans)) {
                        spans += 2;
                    }
                }
                border.addUncovered(px, py, qx, qy, covered, spans, tolerance / length);
            }
        }
        return border;
    }

    private static boolean beside(NoFit fit, int j, double px, double py, double qx, double qy) {
        int p = fit.from[j];
        return Math.max(py, qy) < -fit.c[p]
                || Math.min(py, qy) > fit.c[p + 1]
                || Math.max(px, qx) < -fit.c[p + 2]
                || Math.min(px, qx) > fit.c[p + 3];
    }

    /** Writes the share of the edge that polygon j covers; whether there is any. */
    private static boolean clip(
            NoFit fit,
            int k,
            int j,
            double px,
            double py,
            double qx,
            double qy,
            double tolerance,
            double[] covered,
            int at) {
        double from = 0;
        double to = 1;
        for (int p = fit.from[j]; p < fit.from[j + 1]; p++) {
            double insideP = fit.c[p] - fit.nx[p] * px - fit.ny[p] * py;
            double insideQ = fit.c[p] - fit.nx[p] * qx - fit.ny[p] * qy;
            if (Math.abs(insideP) <= tolerance && Math.abs(insideQ) <= tolerance) {
                boolean sameWay = fit.nx[p] * (qy - py) - fit.ny[p] * (qx - px) > 0;
                if (sameWay && j > k) {
                    // Of two edges on one line the first is kept.
                    return false;
                }
            } else if (insideP <= 0 && insideQ <= 0) {
                return false;
            } else if (insideP < 0) {
                from = Math.max(from, insideP / (insideP - insideQ));
            } else if (insideQ < 0) {
                to = Math.min(to, insideP / (insideP - insideQ));
            }
            if (to <= from) {
                return false;
            }
        }
        covered[at] = from;
        covered[at + 1] = to;
        return true;
    }

    private void addUncovered(double px, double py, double qx, double qy, double[] covered, int spans, double least) {
        double at = 0;
        while (at < 1) {
            // The covered spans are few: the one that reaches furthest from here, then the next to begin.
            double reached = at;
            boolean grown = true;
            while (grown) {
                grown = false;
                for (int s = 0; s < spans; s += 2) {
                    if (covered[s] <= reached + least && covered[s + 1] > reached) {
                        reached = covered[s + 1];
                        grown = true;
                    }
                }
            }
            double end = 1;
            for (int s = 0; s < spans; s += 2) {
                if (covered[s] > reached) {
                    end = Math.min(end, covered[s]);
                }
            }
            if (reached >= 1) {
                return;
            }
            if (end - reached > least) {
                add(px + (qx - px) * reached, py + (qy - py) * reached, px + (qx - px) * end, py + (qy - py) * end);
            }
            at = end;
        }
    }

    private void add(double x1, double y1, double x2, double y2) {
        if (count == ax.length) {
            ax = Arrays.copyOf(ax, 2 * count);
            ay = Arrays.copyOf(ay, 2 * count);
            bx = Arrays.copyOf(bx, 2 * count);
            by = Arrays.copyOf(by, 2 * count);
        }
        ax[count] = x1;
        ay[count] = y1;
        bx[count] = x2;
        by[count] = y2;
        count++;
    }

    int size() {
        return count;
    }

    /** How far a place lies from the border; 0 if there is none. */
    double distance(double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            double ex = bx[i] - ax[i];
            double ey = by[i] - ay[i];
            double t = ((x - ax[i]) * ex + (y - ay[i]) * ey) / (ex * ex + ey * ey);
            double s = t < 0 ? 0 : t > 1 ? 1 : t;
            double dx = x - ax[i] - s * ex;
            double dy = y - ay[i] - s * ey;
            least = Math.min(least, dx * dx + dy * dy);
        }
        return count == 0 ? 0 : Math.sqrt(least);
    }

    /** Marks the cells of a grid that the border runs through, with a margin of a share of a cell. */
    void mark(double x0, double y0, double cell, int cols, int rows, boolean[] marks) {
        double margin = 0.01;
        for (int i = 0; i < count; i++) {
            double ux = (ax[i] - x0) / cell;
            double uy = (ay[i] - y0) / cell;
            double vx = (bx[i] - x0) / cell;
            double vy = (by[i] - y0) / cell;
            int firstRow = Math.max(0, (int) Math.floor(Math.min(uy, vy) - margin));
            int lastRow = Math.min(rows - 1, (int) Math.floor(Math.max(uy, vy) + margin));
            for (int row = firstRow; row <= lastRow; row++) {
                double left = Math.min(ux, vx);
                double right = Math.max(ux, vx);
                if (uy != vy) {
                    // What of the segment lies in this row.
                    double s = Math.max(0, Math.min(1, (row - margin - uy) / (vy - uy)));
                    double t = Math.max(0, Math.min(1, (row + 1 + margin - uy) / (vy - uy)));
                    left = Math.min(ux + s * (vx - ux), ux + t * (vx - ux));
                    right = Math.max(ux + s * (vx - ux), ux + t * (vx - ux));
                }
                int first = Math.max(0, (int) Math.floor(left - margin));
                int last = Math.min(cols - 1, (int) Math.floor(right + margin));
                for (int col = first; col <= last; col++) {
                    marks[row * cols + col] = true;
                }
            }
        }
    }
}
