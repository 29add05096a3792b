package org.gusset.svg.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;

/**
 * The free room of a piece as a grid of square cells, in a frame that may be turned: a cell is free if all of it lies inside
 * the outline and keeps clear of every line and word. Counts of taken cells are summed up from the corner (a summed-area table,
 * F. Crow 1984, from memory), so that any upright rectangle is tested with four look-ups.
 */
final class FreeCells {
    private static final double HALF_DIAGONAL = Math.sqrt(0.5);

    private final double turn;
    private final double cell;
    private final double left;
    private final double top;
    private final int columns;
    private final int rows;
    private final int[] taken;

    /** Cells across at the most, so that a slip in a unit does not fill the memory. */
    private static final double MOST_ACROSS = 1000;

    private FreeCells(double turn, double cell, double left, double top, int columns, int rows, int[] taken) {
        this.turn = turn;
        this.cell = cell;
        this.left = left;
        this.top = top;
        this.columns = columns;
        this.rows = rows;
        this.taken = taken;
    }

    /**
     * The free cells of a room.
     *
     * @param turn how far the grid is turned, in degrees anticlockwise as seen
     * @param clearance how far free cells keep from everything, in mm
     */
    static FreeCells of(Room room, double turn, double clearance) {
        List<Point> ring = room.ring().stream().map(p -> toGrid(p, turn)).toList();
        double left = ring.stream().mapToDouble(Point::x).min().orElse(0);
        double right = ring.stream().mapToDouble(Point::x).max().orElse(0);
        double top = ring.stream().mapToDouble(Point::y).min().orElse(0);
        double bottom = ring.stream().mapToDouble(Point::y).max().orElse(0);
        double extent = Math.max(right - left, bottom - top);
        double cell = Math.max(extent / MOST_ACROSS, Math.min(4, Math.max(0.5, extent / 220)));
        int columns = (int) Math.ceil((right - left) / cell) + 1;
        int rows = (int) Math.ceil((bottom - top) / cell) + 1;
        boolean[] blocked = new boolean[columns * rows];
        FreeCells grid = new FreeCells(turn, cell, left, top, columns, rows, new int[(columns + 1) * (rows + 1)]);
        grid.blockOutside(ring, blocked);
        double reach = clearance + cell * HALF_DIAGONAL;
        for (Room.Stretch stretch : room.stretches()) {
            grid.blockAlong(toGrid(stretch.from(), turn), toGrid(stretch.to(), turn), reach, blocked);
        }
        grid.sum(blocked);
        return grid;
    }

    /** A rectangle of this size with {@code margin} free all round, as near to a point as there is one. */
    Optional<Oblong> nearest(double width, double height, double margin, Point target) {
        int across = (int) Math.ceil((width + 2 * margin) / cell);
        int down = (int) Math.ceil((height + 2 * margin) / cell);
        Point aim = toGrid(target, turn);
        double least = Double.POSITIVE_INFINITY;
        Point best = aim;
        for (int row = 0; row + down <= rows; row++) {
            double y = top + (row + down / 2.0) * cell;
            for (int column = 0; column + across <= columns; column++) {
                double x = left + (column + across / 2.0) * cell;
                double distance = (x - aim.x()) * (x - aim.x()) + (y - aim.y()) * (y - aim.y());
                if (distance < least && free(column, row, across, down)) {
                    least = distance;
                    best = new Point(x, y);
                }
            }
        }
        return least == Double.POSITIVE_INFINITY
                ? Optional.empty()
                : Optional.of(new Oblong(fromGrid(best), width, height, turn));
    }

    private boolean free(int column, int row, int across, int down) {
        int stride = columns + 1;
        int upper = row * stride;
        int lower = (row + down) * stride;
        return taken[lower + column + across]
                        - taken[lower + column]
                        - taken[upper + column + across]
                        + taken[upper + column]
                == 0;
    }

    private void blockOutside(List<Point> ring, boolean[] blocked) {
        Arrays.fill(blocked, true);
        double[] crossings = new double[ring.size() + 1];
        for (int row = 0; row < rows; row++) {
            double y = top + (row + 0.5) * cell;
            int count = 0;
            for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
                Point a = ring.get(i);
                Point b = ring.get(j);
                if (a.y() > y != b.y() > y) {
                    crossings[count++] = (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()) + a.x();
                }
            }
            Arrays.sort(crossings, 0, count);
            for (int k = 0; k + 1 < count; k += 2) {
                int first = Math.max(0, (int) Math.ceil((crossings[k] - left) / cell - 0.5));
                int last = Math.min(columns - 1, (int) Math.floor((crossings[k + 1] - left) / cell - 0.5));
                for (int column = first; column <= last; column++) {
                    blocked[row * columns + column] = false;
                }
            }
        }
    }

    private void blockAlong(Point from, Point to, double reach, boolean[] blocked) {
        int parts = Math.max(1, (int) Math.ceil(from.distance(to) / (8 * cell)));
        for (int i = 0; i < parts; i++) {
            block(from.toward(to, (double) i / parts), from.toward(to, (i + 1.0) / parts), reach, blocked);
        }
    }

    private void block(Point from, Point to, double reach, boolean[] blocked) {
        int firstColumn = column(Math.min(from.x(), to.x()) - reach);
        int lastColumn = column(Math.max(from.x(), to.x()) + reach);
        int firstRow = row(Math.min(from.y(), to.y()) - reach);
        int lastRow = row(Math.max(from.y(), to.y()) + reach);
        double wx = to.x() - from.x();
        double wy = to.y() - from.y();
        double square = wx * wx + wy * wy;
        for (int row = firstRow; row <= lastRow; row++) {
            double y = top + (row + 0.5) * cell - from.y();
            for (int column = firstColumn; column <= lastColumn; column++) {
                double x = left + (column + 0.5) * cell - from.x();
                double share = square == 0 ? 0 : Math.max(0, Math.min(1, (x * wx + y * wy) / square));
                double dx = x - share * wx;
                double dy = y - share * wy;
                if (dx * dx + dy * dy < reach * reach) {
                    blocked[row * columns + column] = true;
                }
            }
        }
    }

    private void sum(boolean[] blocked) {
        int stride = columns + 1;
        for (int row = 0; row < rows; row++) {
            int inRow = 0;
            for (int column = 0; column < columns; column++) {
                inRow += blocked[row * columns + column] ? 1 : 0;
                taken[(row + 1) * stride + column + 1] = taken[row * stride + column + 1] + inRow;
            }
        }
    }

    private int column(double x) {
        return Math.max(0, Math.min(columns - 1, (int) Math.floor((x - left) / cell)));
    }

    private int row(double y) {
        return Math.max(0, Math.min(rows - 1, (int) Math.floor((y - top) / cell)));
    }

    private static Point toGrid(Point p, double turn) {
        Vector along = Vector.atAngle(turn);
        Vector from = p.minus(Point.ORIGIN);
        return new Point(from.dot(along), from.dot(along.right()));
    }

    private Point fromGrid(Point p) {
        Vector along = Vector.atAngle(turn);
        return Point.ORIGIN.plus(along.times(p.x())).plus(along.right().times(p.y()));
    }
}
