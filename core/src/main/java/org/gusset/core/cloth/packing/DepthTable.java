package org.gusset.core.cloth.packing;

import java.util.Arrays;

/**
 * How deep one shape lies in another, for every place: how far it must be moved at least until they part (the penetration depth of T.
 * Imamichi, M. Yagiura, H. Nagamochi, 2009, from memory), looked up in a grid over the no-fit polygon.
 *
 * <p>A cell that no part of the no-fit polygon reaches is free. In a cell that its border crosses, the half planes that cross it are asked,
 * so that whether the shapes overlap is exact. In a cell inside, the depths at its four corners are drawn between; there it only guides.
 */
final class DepthTable {
    private static final int FREE = -1;
    private static final int INSIDE = -2;
    /** About so many cells a table. */
    private static final int CELLS = 1600;

    private final double x0;
    private final double y0;
    private final double perUnit;
    private final int cols;
    private final int rows;
    private final int[] cell;
    private final float[] node;
    /** For each crossed cell: the number of polygons, then for each the number of its planes, then the planes' numbers. */
    private int[] codes = new int[256];

    private int coded;
    private final double[] planes;
    private final double least;

    DepthTable(NoFit fit, double rounding, double tolerance) {
        double width = fit.maxX - fit.minX;
        double height = fit.maxY - fit.minY;
        double size = Math.sqrt(width * height / CELLS);
        cols = (int) Math.ceil(width / size) + 1;
        rows = (int) Math.ceil(height / size) + 1;
        least = size * 1e-3;
        x0 = fit.minX - (cols * size - width) / 2;
        y0 = fit.minY - (rows * size - height) / 2;
        perUnit = 1 / size;
        cell = new int[cols * rows];
        node = new float[(cols + 1) * (rows + 1)];
        Arrays.fill(node, -1);
        planes = new double[3 * fit.c.length];
        for (int p = 0; p < fit.c.length; p++) {
            planes[3 * p] = fit.nx[p];
            planes[3 * p + 1] = fit.ny[p];
            planes[3 * p + 2] = fit.c[p] - rounding;
        }
        fill(fit, Border.of(fit, tolerance), size);
    }

    /** How much memory it takes, about. */
    long bytes() {
        return 4L * (cell.length + node.length + codes.length) + 8L * planes.length;
    }

    private void fill(NoFit fit, Border border, double size) {
        boolean[] crossed = new boolean[cols * rows];
        border.mark(x0, y0, size, cols, rows, crossed);
        for (int row = 0; row < rows; row++) {
            for (int col = 0; col < cols; col++) {
                cell[row * cols + col] = kind(fit, x0 + col * size, y0 + row * size, size, crossed[row * cols + col]);
            }
        }
        for (int row = 0; row < rows; row++) {
            for (int col = 0; col < cols; col++) {
                if (cell[row * cols + col] == INSIDE) {
                    corner(border, col, row, size);
                    corner(border, col + 1, row, size);
                    corner(border, col, row + 1, size);
                    corner(border, col + 1, row + 1, size);
                }
            }
        }
        codes = Arrays.copyOf(codes, coded);
    }

    private void corner(Border border, int col, int row, double size) {
        int at = row * (cols + 1) + col;
        if (node[at] < 0) {
            node[at] = (float) Math.max(least, border.distance(x0 + col * size, y0 + row * size));
        }
    }

    private int kind(NoFit fit, double left, double low, double size, boolean crossed) {
        double midX = left + size / 2;
        double midY = low + size / 2;
        double half = size / 2 * 1.0001;
        int start = coded;
        push(0);
        int polygons = 0;
        boolean middleInside = false;
        for (int k = 0; k < fit.from.length - 1; k++) {
            int before = coded;
            push(0);
            boolean reaches = true;
            boolean holdsMiddle = true;
            for (int p = fit.from[k]; p < fit.from[k + 1] && reaches; p++) {
                double inside = planes[3 * p + 2] - fit.nx[p] * midX - fit.ny[p] * midY;
                double spread = half * (Math.abs(fit.nx[p]) + Math.abs(fit.ny[p]));
                reaches = inside > -spread;
                holdsMiddle &= inside > 0;
                if (inside < spread + size) {
                    push(p);
                }
            }
            if (!reaches) {
                coded = before;
                continue;
            }
            middleInside |= holdsMiddle;
            codes[before] = coded - before - 1;
            polygons++;
            if (covers(fit, k, midX, midY, half)) {
                coded = start;
                return INSIDE;
            }
        }
        if (polygons == 0) {
            coded = start;
            return FREE;
        }
        if (!crossed && middleInside) {
            coded = start;
            return INSIDE;
        }
        codes[start] = polygons;
        return start;
    }

    private boolean covers(NoFit fit, int k, double midX, double midY, double half) {
        for (int p = fit.from[k]; p < fit.from[k + 1]; p++) {
            double inside = planes[3 * p + 2] - fit.nx[p] * midX - fit.ny[p] * midY;
            if (inside < half * (Math.abs(fit.nx[p]) + Math.abs(fit.ny[p]))) {
                return false;
            }
        }
        return true;
    }

    private void push(int value) {
        if (coded == codes.length) {
            codes = Arrays.copyOf(codes, 2 * coded);
        }
        codes[coded++] = value;
    }

    /** The depth at a place; 0 exactly if the shapes do not overlap there. */
    double depth(double x, double y) {
        double u = (x - x0) * perUnit;
        double v = (y - y0) * perUnit;
        int col = (int) u;
        int row = (int) v;
        if (u < 0 || v < 0 || col >= cols || row >= rows) {
            return 0;
        }
        int kind = cell[row * cols + col];
        if (kind == FREE) {
            return 0;
        }
        if (kind == INSIDE) {
            int at = row * (cols + 1) + col;
            double fx = u - col;
            double fy = v - row;
            double low = node[at] + fx * (node[at + 1] - node[at]);
            int above = at + cols + 1;
            double high = node[above] + fx * (node[above + 1] - node[above]);
            return low + fy * (high - low);
        }
        return crossed(kind, x, y);
    }

    private double crossed(int kind, double x, double y) {
        double deepest = 0;
        int at = kind;
        int polygons = codes[at++];
        for (int k = 0; k < polygons; k++) {
            int end = at + 1 + codes[at];
            double inside = Double.POSITIVE_INFINITY;
            for (at++; at < end; at++) {
                int p = 3 * codes[at];
                double slack = planes[p + 2] - planes[p] * x - planes[p + 1] * y;
                if (slack < inside) {
                    inside = slack;
                    if (slack <= deepest) {
                        break;
                    }
                }
            }
            at = end;
            if (inside > deepest) {
                deepest = inside;
            }
        }
        return deepest;
    }
}
