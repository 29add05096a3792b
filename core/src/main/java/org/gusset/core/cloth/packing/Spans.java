package org.gusset.core.cloth.packing;

import java.util.Arrays;

/** Open spans of x that are taken; used again and again by one thread. */
final class Spans {
    private double[] lows = new double[64];
    private double[] highs = new double[64];
    private int count;

    void clear() {
        count = 0;
    }

    void add(double low, double high) {
        if (count == lows.length) {
            lows = Arrays.copyOf(lows, 2 * count);
            highs = Arrays.copyOf(highs, 2 * count);
        }
        lows[count] = low;
        highs[count] = high;
        count++;
    }

    /** The least free x from {@code x} on, in the room's lattice; endless once it is known to be beyond {@code limit}. */
    double free(double x, Room room, double rounding, double limit) {
        sort();
        double at = room.xFrom(x);
        for (int i = 0; i < count; i++) {
            if (at > limit) {
                return Double.POSITIVE_INFINITY;
            }
            if (lows[i] >= at - rounding) {
                break;
            }
            if (highs[i] > at + rounding) {
                at = room.xFrom(highs[i]);
            }
        }
        return at;
    }

    private void sort() {
        // Few and often nearly in order: insertion.
        if (count <= 40) {
            for (int i = 1; i < count; i++) {
                double low = lows[i];
                double high = highs[i];
                int j = i - 1;
                while (j >= 0 && lows[j] > low) {
                    lows[j + 1] = lows[j];
                    highs[j + 1] = highs[j];
                    j--;
                }
                lows[j + 1] = low;
                highs[j + 1] = high;
            }
            return;
        }
        sortMany(0, count - 1);
    }

    /** Quicksort by the lows; the middle is the pivot, so that sorted runs are fast. */
    private void sortMany(int from, int to) {
        int i = from;
        int j = to;
        double pivot = lows[(from + to) >>> 1];
        while (i <= j) {
            while (lows[i] < pivot) {
                i++;
            }
            while (lows[j] > pivot) {
                j--;
            }
            if (i <= j) {
                double low = lows[i];
                double high = highs[i];
                lows[i] = lows[j];
                highs[i] = highs[j];
                lows[j] = low;
                highs[j] = high;
                i++;
                j--;
            }
        }
        if (from < j) {
            sortMany(from, j);
        }
        if (i < to) {
            sortMany(i, to);
        }
    }
}
