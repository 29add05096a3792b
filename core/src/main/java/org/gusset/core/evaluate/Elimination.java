package org.gusset.core.evaluate;

/** Gauss's elimination with the largest pivot of the rest, for the few unknowns that a draft solves at once. */
final class Elimination {
    /** Pivots this much smaller than the largest count as nothing. */
    private static final double SINGULAR = 1e-9;

    private Elimination() {}

    /** The x with a x = b; empty if the rows depend on one another or are not numbers. */
    static double[] solve(double[][] a, double[] b) {
        int n = b.length;
        double[][] rows = new double[n][];
        for (int i = 0; i < n; i++) {
            rows[i] = java.util.Arrays.copyOf(a[i], n + 1);
            rows[i][n] = b[i];
        }
        int[] columns = new int[n];
        if (eliminate(rows, n, columns) < n) {
            return new double[0];
        }
        double[] x = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double sum = rows[i][n];
            for (int j = i + 1; j < n; j++) {
                sum -= rows[i][j] * x[columns[j]];
            }
            x[columns[i]] = sum / rows[i][i];
        }
        return x;
    }

    static int rank(double[][] a) {
        int n = a.length;
        double[][] rows = new double[n][];
        for (int i = 0; i < n; i++) {
            rows[i] = a[i].clone();
        }
        return eliminate(rows, n, new int[n]);
    }

    /** Brings the first n columns to upper form, swapping rows and columns; columns tells which unknown each column holds. */
    private static int eliminate(double[][] rows, int n, int[] columns) {
        for (int i = 0; i < n; i++) {
            columns[i] = i;
        }
        double largest = 0;
        for (int k = 0; k < n; k++) {
            int row = k;
            int column = k;
            for (int i = k; i < n; i++) {
                for (int j = k; j < n; j++) {
                    if (Math.abs(rows[i][j]) > Math.abs(rows[row][column])) {
                        row = i;
                        column = j;
                    }
                }
            }
            double pivot = Math.abs(rows[row][column]);
            largest = Math.max(largest, pivot);
            if (!(pivot > largest * SINGULAR) || pivot == 0) {
                return k;
            }
            double[] swapped = rows[k];
            rows[k] = rows[row];
            rows[row] = swapped;
            for (double[] each : rows) {
                double value = each[k];
                each[k] = each[column];
                each[column] = value;
            }
            int unknown = columns[k];
            columns[k] = columns[column];
            columns[column] = unknown;
            for (int i = k + 1; i < n; i++) {
                double factor = rows[i][k] / rows[k][k];
                for (int j = k; j < rows[i].length; j++) {
                    rows[i][j] -= factor * rows[k][j];
                }
            }
        }
        return n;
    }
}
