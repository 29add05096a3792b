package org.gusset.core.cloth.packing;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Pieces on a strip, some of them overlapping, and what that costs: for every two that overlap their depth, times a factor for their size,
 * times the weight of the two, which grows as long as they overlap (guided local search; for packing J. Egeblad, B. K. Nielsen, A. Odgaard,
 * "Fast neighborhood search for two- and three-dimensional nesting problems", 2007, from memory).
 */
final class Crowding {
    /** In a sweep the weight of a pair that overlaps grows by so much at least, and by so much for the deepest. */
    private static final float LEAST_GROWTH = 1.2f;

    private static final float MOST_GROWTH = 2;
    private static final float FADING = 0.95f;
    /** Pairs that stay stuck for hundreds of sweeps would grow beyond all numbers. */
    private static final float MOST_WEIGHT = 1e15f;
    /** Large pieces are dear: by this power of their mean extent. */
    private static final double POWER_OF_SIZE = 1.5;

    final int pieces;
    final int[] shape;
    final double[] x;
    final double[] y;
    /** How many places have been asked for, ever since. */
    long asked;

    private final Shapes shapes;
    private final Depths depths;
    private final int kinds;
    private final @Nullable DepthTable[] tables;
    private final boolean[] turned;
    private final double[] factor;
    private final double[] left;
    private final double[] right;
    private final double[] low;
    private final double[] high;
    private final float[] weight;
    private final float[] depth;
    private Slices slices;
    private int generation;

    Crowding(Shapes shapes, Depths depths, Layout start) {
        this.shapes = shapes;
        this.depths = depths;
        pieces = start.shape().length;
        kinds = shapes.size();
        shape = start.shape().clone();
        x = start.x().clone();
        y = start.y().clone();
        tables = new DepthTable[kinds * kinds];
        turned = new boolean[kinds * kinds];
        factor = factors(shapes, pieces);
        left = new double[pieces];
        right = new double[pieces];
        low = new double[pieces];
        high = new double[pieces];
        weight = new float[pieces * pieces];
        depth = new float[pieces * pieces];
        slices = new Slices(pieces, start.length(), shapes.strip.width());
        start(start);
    }

    private static double[] factors(Shapes shapes, int pieces) {
        int kinds = shapes.size();
        double[] area = shapes.turned.stream()
                .mapToDouble(t -> shapes.strip.items().get(t.item).area())
                .toArray();
        double mean = shapes.strip.area() / pieces;
        double[] out = new double[kinds * kinds];
        for (int i = 0; i < kinds; i++) {
            for (int j = 0; j < kinds; j++) {
                out[i * kinds + j] = StrictMath.pow(area[i] / mean * (area[j] / mean), POWER_OF_SIZE / 4);
            }
        }
        return out;
    }

    /** Lets go of tables that have been dropped elsewhere, so that they do not take up memory. */
    private void refresh() {
        if (generation != depths.generation()) {
            generation = depths.generation();
            Arrays.fill(tables, null);
        }
    }

    /** Begins anew from a plan. */
    void start(Layout from) {
        slices = new Slices(pieces, from.length(), shapes.strip.width());
        for (int i = 0; i < pieces; i++) {
            put(i, from.shape()[i], from.x()[i], from.y()[i]);
        }
    }

    /** Puts a piece down; depths are not measured anew. */
    void put(int i, int newShape, double newX, double newY) {
        Turned as = shapes.turned.get(newShape);
        shape[i] = newShape;
        x[i] = newX;
        y[i] = newY;
        left[i] = newX + as.minX;
        right[i] = newX + as.maxX;
        low[i] = newY + as.minY;
        high[i] = newY + as.maxY;
        slices.enter(i, left[i], right[i], low[i], high[i]);
    }

    private double depth(int fixed, int moving, double dx, double dy) {
        int at = fixed * kinds + moving;
        DepthTable table = tables[at];
        if (table == null) {
            table = depths.table(fixed, moving);
            tables[at] = table;
            turned[at] = depths.turned(fixed, moving);
        }
        return factor[at] * (turned[at] ? table.depth(-dx, -dy) : table.depth(dx, dy));
    }

    /** What a piece would cost at a place; not less than {@code bound} once that is known. */
    double cost(int piece, Turned turnedAs, int as, double atX, double atY, double bound) {
        asked++;
        double gap = shapes.strip.gap();
        double l = atX + turnedAs.minX - gap;
        double r = atX + turnedAs.maxX + gap;
        double b = atY + turnedAs.minY - gap;
        double t = atY + turnedAs.maxY + gap;
        int fromX = slices.column(l);
        int toX = slices.column(r);
        int fromY = slices.row(b);
        int toY = slices.row(t);
        int row = piece * pieces;
        double sum = 0;
        for (int k = 0; k < slices.words; k++) {
            long near = slices.near(fromX, toX, fromY, toY, k);
            while (near != 0) {
                int j = (k << 6) + Long.numberOfTrailingZeros(near);
                near &= near - 1;
                if (left[j] < r && right[j] > l && low[j] < t && high[j] > b && j != piece) {
                    sum += weight[row + j] * depth(shape[j], as, atX - x[j], atY - y[j]);
                    if (sum >= bound) {
                        return sum;
                    }
                }
            }
        }
        return sum;
    }

    /** Measures the depths of a piece where it lies. */
    void measure(int piece) {
        for (int j = 0; j < pieces; j++) {
            float deep = j == piece ? 0 : (float) depth(shape[j], shape[piece], x[piece] - x[j], y[piece] - y[j]);
            depth[piece * pieces + j] = deep;
            depth[j * pieces + piece] = deep;
        }
    }

    void measureAll() {
        for (int i = 0; i < pieces; i++) {
            measure(i);
        }
    }

    /** Whether a piece overlaps any, as last measured. */
    boolean crowded(int piece) {
        for (int j = piece * pieces; j < (piece + 1) * pieces; j++) {
            if (depth[j] > 0) {
                return true;
            }
        }
        return false;
    }

    /** The depths of all pairs, as last measured; 0 exactly if the plan is sound. */
    double total() {
        double sum = 0;
        for (int i = 0; i < pieces; i++) {
            for (int j = 0; j < i; j++) {
                sum += depth[i * pieces + j];
            }
        }
        return sum;
    }

    void evenWeights() {
        Arrays.fill(weight, 1);
    }

    /** Pairs that overlap weigh more, the deepest most; the others go back toward 1. */
    void weigh() {
        refresh();
        float deepest = 0;
        for (float d : depth) {
            deepest = Math.max(deepest, d);
        }
        for (int i = 0; i < pieces; i++) {
            for (int j = 0; j < i; j++) {
                float d = depth[i * pieces + j];
                float old = weight[i * pieces + j];
                float grown = old * (LEAST_GROWTH + (MOST_GROWTH - LEAST_GROWTH) * d / deepest);
                float now = d > 0 ? Math.min(grown, MOST_WEIGHT) : Math.max(1, old * FADING);
                weight[i * pieces + j] = now;
                weight[j * pieces + i] = now;
            }
        }
    }

    Layout layout(double length) {
        return new Layout(shape.clone(), x.clone(), y.clone(), length);
    }

    /** The greatest x that any piece reaches. */
    double end() {
        double end = 0;
        for (double r : right) {
            end = Math.max(end, r);
        }
        return end;
    }
}
