package org.gusset.core.cloth.packing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;

/**
 * A simple polygon as convex parts between its own corners: ears are clipped (G. H. Meisters, "Polygons have ears", 1975, from memory), then
 * the diagonals that no corner needs are taken out again (S. Hertel, K. Mehlhorn, 1983, from memory), which leaves at most four times as many
 * parts as needed. Turns are decided by JTS with as many digits as it takes, so that the parts cover the polygon to the last bit of its
 * corners.
 */
final class ConvexParts {
    private final Coordinate[] at;

    private ConvexParts(double[] xs, double[] ys) {
        at = new Coordinate[xs.length];
        for (int i = 0; i < xs.length; i++) {
            at[i] = new Coordinate(xs[i], ys[i]);
        }
    }

    /** The parts of a ring that turns from the x axis toward the y axis. */
    static List<Convex> of(double[] xs, double[] ys) {
        ConvexParts parts = new ConvexParts(xs, ys);
        List<int[]> merged = parts.merged(parts.ears());
        List<Convex> out = new ArrayList<>();
        for (int[] corners : merged) {
            double[] px = new double[corners.length];
            double[] py = new double[corners.length];
            for (int i = 0; i < corners.length; i++) {
                px[i] = xs[corners[i]];
                py[i] = ys[corners[i]];
            }
            out.add(new Convex(px, py));
        }
        return out;
    }

    private int turn(int a, int b, int c) {
        return Orientation.index(at[a], at[b], at[c]);
    }

    private List<int[]> ears() {
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            left.add(i);
        }
        List<int[]> triangles = new ArrayList<>();
        while (left.size() > 3) {
            dropStraight(left);
            if (left.size() <= 3) {
                break;
            }
            int ear = bestEar(left);
            int n = left.size();
            triangles.add(new int[] {left.get((ear + n - 1) % n), left.get(ear), left.get((ear + 1) % n)});
            left.remove(ear);
        }
        if (left.size() == 3 && turn(left.get(0), left.get(1), left.get(2)) > 0) {
            triangles.add(new int[] {left.get(0), left.get(1), left.get(2)});
        }
        return triangles;
    }

    private void dropStraight(List<Integer> left) {
        for (int i = 0; i < left.size() && left.size() > 3; i++) {
            int n = left.size();
            if (turn(left.get((i + n - 1) % n), left.get(i), left.get((i + 1) % n)) == 0) {
                left.remove(i);
                i = Math.max(-1, i - 2);
            }
        }
    }

    /** Of all ears the one with the shortest diagonal: it makes fewer splinters. */
    private int bestEar(List<Integer> left) {
        int n = left.size();
        int best = -1;
        double shortest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            int a = left.get((i + n - 1) % n);
            int c = left.get((i + 1) % n);
            double length = at[a].distance(at[c]);
            if (length < shortest && ear(left, a, left.get(i), c)) {
                best = i;
                shortest = length;
            }
        }
        if (best < 0) {
            throw new IllegalStateException("a simple polygon has an ear");
        }
        return best;
    }

    private boolean ear(List<Integer> left, int a, int b, int c) {
        if (turn(a, b, c) <= 0) {
            return false;
        }
        for (int p : left) {
            if (p != a && p != b && p != c && turn(a, b, p) >= 0 && turn(b, c, p) >= 0 && turn(c, a, p) >= 0) {
                return false;
            }
        }
        return true;
    }

    private List<int[]> merged(List<int[]> triangles) {
        List<int[]> parts = new ArrayList<>(triangles);
        boolean again = true;
        while (again) {
            again = false;
            for (int i = 0; i < parts.size() && !again; i++) {
                for (int j = i + 1; j < parts.size() && !again; j++) {
                    int[] one = joined(parts.get(i), parts.get(j));
                    if (one.length > 0) {
                        parts.set(i, one);
                        parts.remove(j);
                        again = true;
                    }
                }
            }
        }
        return parts;
    }

    /** Both as one polygon if they share an edge and the outcome is convex; else empty. */
    private int[] joined(int[] a, int[] b) {
        for (int i = 0; i < a.length; i++) {
            int from = a[i];
            int to = a[(i + 1) % a.length];
            for (int j = 0; j < b.length; j++) {
                if (b[j] == to && b[(j + 1) % b.length] == from) {
                    int[] out = new int[a.length + b.length - 2];
                    int count = 0;
                    for (int k = 1; k <= a.length; k++) {
                        out[count++] = a[(i + k) % a.length];
                    }
                    for (int k = 2; k < b.length; k++) {
                        out[count++] = b[(j + k) % b.length];
                    }
                    return convex(out) ? out : new int[0];
                }
            }
        }
        return new int[0];
    }

    private boolean convex(int[] corners) {
        int n = corners.length;
        for (int i = 0; i < n; i++) {
            if (turn(corners[i], corners[(i + 1) % n], corners[(i + 2) % n]) < 0) {
                return false;
            }
        }
        return true;
    }
}
