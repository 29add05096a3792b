package org.gusset.core.cloth.packing;

/**
 * Which pieces' extents may meet an extent, as sets of bits: for each slice along the strip the pieces that begin before its end and those
 * that end after its beginning, and the same across. Four sets are met, whatever the number of slices that the extent spans.
 */
final class Slices {
    private static final int COUNT = 64;

    final int words;
    private final double perX;
    private final double perY;
    private final long[] begunX;
    private final long[] openX;
    private final long[] begunY;
    private final long[] openY;

    Slices(int pieces, double length, double width) {
        words = (pieces + 63) / 64;
        perX = COUNT / length;
        perY = COUNT / width;
        begunX = new long[COUNT * words];
        openX = new long[COUNT * words];
        begunY = new long[COUNT * words];
        openY = new long[COUNT * words];
    }

    /** Enters a piece anew. */
    void enter(int piece, double left, double right, double low, double high) {
        enter(piece, begunX, openX, slice(left, perX), slice(right, perX));
        enter(piece, begunY, openY, slice(low, perY), slice(high, perY));
    }

    private void enter(int piece, long[] begun, long[] open, int first, int last) {
        long bit = 1L << piece;
        for (int k = 0, at = piece >> 6; k < COUNT; k++, at += words) {
            begun[at] = k >= first ? begun[at] | bit : begun[at] & ~bit;
            open[at] = k <= last ? open[at] | bit : open[at] & ~bit;
        }
    }

    /** Where the sets for this greatest and least x and y begin; then {@link #near}. */
    int column(double x) {
        return slice(x, perX) * words;
    }

    int row(double y) {
        return slice(y, perY) * words;
    }

    /** The pieces 64 k to 64 k + 63 that may be near. */
    long near(int leftColumn, int rightColumn, int lowRow, int highRow, int k) {
        return begunX[rightColumn + k] & openX[leftColumn + k] & begunY[highRow + k] & openY[lowRow + k];
    }

    private static int slice(double at, double per) {
        int k = (int) (at * per);
        return k < 0 ? 0 : Math.min(k, COUNT - 1);
    }
}
