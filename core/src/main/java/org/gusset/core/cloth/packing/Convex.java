package org.gusset.core.cloth.packing;

/** A convex polygon whose corners turn from the x axis toward the y axis. */
record Convex(double[] xs, double[] ys) {
    int size() {
        return xs.length;
    }

    /**
     * The places, seen from {@code fixed}, at which {@code moving} would overlap
     * it: the Minkowski sum of {@code fixed} and {@code moving} turned by half a turn. The edges of both, in the order of their directions.
     */
    static Convex difference(Convex fixed, Convex moving) {
        int n = fixed.size();
        int m = moving.size();
        int i = lowest(fixed, 1);
        int j = lowest(moving, -1);
        double[] xs = new double[n + m];
        double[] ys = new double[n + m];
        int count = 0;
        int doneFixed = 0;
        int doneMoving = 0;
        while (doneFixed < n || doneMoving < m) {
            xs[count] = fixed.xs[i] - moving.xs[j];
            ys[count] = fixed.ys[i] - moving.ys[j];
            count++;
            int nextI = (i + 1) % n;
            int nextJ = (j + 1) % m;
            double ax = fixed.xs[nextI] - fixed.xs[i];
            double ay = fixed.ys[nextI] - fixed.ys[i];
            double bx = moving.xs[j] - moving.xs[nextJ];
            double by = moving.ys[j] - moving.ys[nextJ];
            double turn = ax * by - ay * bx;
            // Edges of one direction but for rounding become one: between them there would be an edge of any direction.
            double parallel = 1e-14 * Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by));
            boolean fixedStep = doneMoving == m || (doneFixed < n && turn >= -parallel);
            boolean movingStep = doneFixed == n || (doneMoving < m && turn <= parallel);
            if (fixedStep) {
                i = nextI;
                doneFixed++;
            }
            if (movingStep) {
                j = nextJ;
                doneMoving++;
            }
        }
        return new Convex(java.util.Arrays.copyOf(xs, count), java.util.Arrays.copyOf(ys, count));
    }

    /** All that is nearer than {@code gap}: every edge moved out by it, every corner rounded by edges outside of its circle. */
    Convex widened(double gap) {
        int n = size();
        double[] outX = new double[n * (MOST_STEPS + 1)];
        double[] outY = new double[n * (MOST_STEPS + 1)];
        int count = 0;
        for (int i = 0; i < n; i++) {
            int before = (i + n - 1) % n;
            int after = (i + 1) % n;
            double from = StrictMath.atan2(ys[i] - ys[before], xs[i] - xs[before]);
            double to = StrictMath.atan2(ys[after] - ys[i], xs[after] - xs[i]);
            double left = to - from < 0 ? to - from + 2 * Math.PI : to - from;
            // What turns back does so by rounding.
            double turn = left > Math.PI ? 0 : left;
            int steps = Math.max(1, Math.min(MOST_STEPS, (int) Math.ceil(turn / (Math.PI / 12) - 1e-9)));
            double step = turn / steps;
            double reach = gap / StrictMath.cos(step / 2);
            for (int k = 0; k < steps; k++) {
                // The outer normal lies a quarter turn before the edge.
                double angle = from - Math.PI / 2 + (k + 0.5) * step;
                outX[count] = xs[i] + reach * StrictMath.cos(angle);
                outY[count] = ys[i] + reach * StrictMath.sin(angle);
                count++;
            }
        }
        return new Convex(java.util.Arrays.copyOf(outX, count), java.util.Arrays.copyOf(outY, count));
    }

    /** Corners are rounded in steps of 15 degrees. */
    private static final int MOST_STEPS = 24;

    private static int lowest(Convex c, int sign) {
        int best = 0;
        for (int k = 1; k < c.size(); k++) {
            double lower = sign * (c.ys[k] - c.ys[best]);
            if (lower < 0 || (lower == 0 && sign * (c.xs[k] - c.xs[best]) < 0)) {
                best = k;
            }
        }
        return best;
    }
}
