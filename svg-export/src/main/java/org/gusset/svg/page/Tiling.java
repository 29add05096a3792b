package org.gusset.svg.page;

import java.util.List;
import java.util.Objects;
import org.gusset.core.geometry.Box;

/**
 * A piece spread over a grid of pages. Neighbouring pages both show a band as broad as the overlap; they are joined along its
 * middle. Everything is in the piece's own frame.
 */
final class Tiling {
    /** Shares of the unused room that may lie before the piece, the best liked first. */
    private static final List<Double> SHARES = List.of(0.5, 0.375, 0.625, 0.25, 0.75, 0.125, 0.875, 0.0, 1.0);

    /** Half the breadth of a line: ink that comes nearer to a page than this is on it. */
    private static final double REACH = 0.15;

    /** How a length is covered by windows: how many, and where the first begins. */
    private record Row(int count, double start, double step, double window, double overlap) {
        static int count(double length, double window, double overlap) {
            return length <= window ? 1 : (int) Math.ceil((length - overlap) / (window - overlap) - 1e-9);
        }

        static Row of(double low, double high, double window, double overlap, double share) {
            int count = count(high - low, window, overlap);
            double step = window - overlap;
            double slack = (count - 1) * step + window - (high - low);
            // Whole tenths, so that a shift to the page's frame adds no error of its own.
            return new Row(count, Math.round((low - slack * share) * 10) / 10.0, step, window, overlap);
        }

        double windowFrom(int i) {
            return start + i * step;
        }

        double cellFrom(int i) {
            return i == 0 ? start : windowFrom(i) + overlap / 2;
        }

        double cellTo(int i) {
            return i == count - 1 ? windowFrom(i) + window : cellFrom(i + 1);
        }

        /** How many joins lie between two places. */
        long joins(double low, double high) {
            long crossed = 0;
            for (int i = 1; i < count; i++) {
                crossed += low < cellFrom(i) && cellFrom(i) < high ? 1 : 0;
            }
            return crossed;
        }
    }

    private final Row across;
    private final Row down;
    private final boolean[][] used;

    private Tiling(Row across, Row down, InkLines lines) {
        this.across = across;
        this.down = down;
        this.used = new boolean[down.count()][across.count()];
        for (InkLines.Stretch stretch : lines.sure()) {
            Box bounds = stretch.bounds().grown(REACH);
            for (int row = 0; row < down.count(); row++) {
                for (int column = 0; column < across.count(); column++) {
                    Box cell = cell(row, column).grown(REACH);
                    if (!used[row][column] && cell.meets(bounds) && stretch.reaches(cell)) {
                        used[row][column] = true;
                    }
                }
            }
        }
    }

    /** The pages of the grid that covers a box. */
    static long cells(Box box, double width, double height, double overlap) {
        return (long) Row.count(box.width(), width, overlap) * Row.count(box.height(), height, overlap);
    }

    /** The grid that needs the fewest pages and, of those, cuts the fewest words. */
    static Tiling of(Item item, double width, double height, double overlap) {
        Box box = item.bounds();
        Tiling best = null;
        long least = Long.MAX_VALUE;
        for (double left : SHARES) {
            for (double top : SHARES) {
                Row across = Row.of(box.left(), box.right(), width, overlap, left);
                Row down = Row.of(box.top(), box.bottom(), height, overlap, top);
                Tiling tiling = new Tiling(across, down, item.lines());
                long cost = 1000L * tiling.pages() + tiling.wordsCut(item.lines());
                if (cost < least) {
                    least = cost;
                    best = tiling;
                }
            }
        }
        return Objects.requireNonNull(best);
    }

    int rows() {
        return down.count();
    }

    int columns() {
        return across.count();
    }

    /** True if there is ink between the joins round a page. */
    boolean used(int row, int column) {
        return row >= 0 && column >= 0 && row < rows() && column < columns() && used[row][column];
    }

    /** What a page shows, overlaps among it. */
    Box window(int row, int column) {
        double left = across.windowFrom(column);
        double top = down.windowFrom(row);
        return new Box(left, top, left + across.window(), top + down.window());
    }

    /** What a page shows up to the joins round it. */
    Box cell(int row, int column) {
        return new Box(across.cellFrom(column), down.cellFrom(row), across.cellTo(column), down.cellTo(row));
    }

    /** All cells together. */
    Box all() {
        return cell(0, 0).with(cell(rows() - 1, columns() - 1));
    }

    double overlap() {
        return across.overlap();
    }

    private int pages() {
        int pages = 0;
        for (boolean[] row : used) {
            for (boolean cell : row) {
                pages += cell ? 1 : 0;
            }
        }
        return pages;
    }

    private long wordsCut(InkLines lines) {
        return lines.words().stream()
                .mapToLong(box -> across.joins(box.left(), box.right()) + down.joins(box.top(), box.bottom()))
                .sum();
    }
}
