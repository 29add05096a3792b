package org.gusset.core.cloth.packing;

import java.util.Arrays;

/**
 * Moves one piece to the cheapest place found: places all over the strip and near the old one are tried, and the best few are bettered by
 * going along x, y or both in steps that shrink where they fail (coordinate descent; the scheme is that of J. Gardeyn, G. Vanden Berghe, T.
 * Wauters, 2025, arXiv 2509.13329).
 */
final class Moving {
    /** Places tried near the old one, and all over the strip. */
    private static final int NEAR = 20;

    private static final int ALL_OVER = 40;
    /** Of those near, the first is bettered; of those all over, the others. */
    private static final int KEPT_NEAR = 1;

    private static final int KEPT = 3;
    /** Near is within so much of the piece's extent. */
    private static final double NEARNESS = 0.25;
    /** Steps of the descent as shares of the piece's lesser extent: from, on to, and for the best place in the end to. */
    private static final double COARSE = 0.1;

    private static final double MIDDLE = 0.01;
    private static final double FINE = 0.0001;
    private static final double SHRUNK = 0.5;
    private static final double GROWN = 1.1;

    private final Shapes shapes;
    private final Crowding crowd;
    private final Chance chance;

    private final int[] bestShape = new int[KEPT];
    private final double[] bestX = new double[KEPT];
    private final double[] bestY = new double[KEPT];
    private final double[] bestCost = new double[KEPT];

    Moving(Shapes shapes, Crowding crowd, Chance chance) {
        this.shapes = shapes;
        this.crowd = crowd;
        this.chance = chance;
    }

    void move(int piece, double length) {
        int old = crowd.shape[piece];
        Turned turned = shapes.turned.get(old);
        double spanX = turned.maxX - turned.minX;
        double spanY = turned.maxY - turned.minY;
        Arrays.fill(bestCost, Double.POSITIVE_INFINITY);
        Arrays.fill(bestShape, old);
        tryNear(piece, old, spanX, spanY, length);
        tryAllOver(piece, turned.item, length);
        double size = Math.min(spanX, spanY);
        int best = 0;
        for (int k = 0; k < KEPT; k++) {
            if (bestCost[k] < Double.POSITIVE_INFINITY) {
                descend(piece, k, length, COARSE * size, MIDDLE * size);
                best = bestCost[k] < bestCost[best] ? k : best;
            }
        }
        descend(piece, best, length, MIDDLE * size, FINE * size);
        crowd.put(piece, bestShape[best], bestX[best], bestY[best]);
        crowd.measure(piece);
    }

    private void tryNear(int piece, int as, double spanX, double spanY, double length) {
        double oldX = crowd.x[piece];
        double oldY = crowd.y[piece];
        keep(0, KEPT_NEAR, as, oldX, oldY, cost(piece, as, oldX, oldY, Double.POSITIVE_INFINITY));
        for (int k = 0; k < NEAR; k++) {
            double atX = oldX + (chance.share() - 0.5) * 2 * NEARNESS * spanX;
            double atY = oldY + (chance.share() - 0.5) * 2 * NEARNESS * spanY;
            tryAt(piece, 0, KEPT_NEAR, as, atX, atY, length);
        }
    }

    private void tryAllOver(int piece, int item, double length) {
        int[] options = shapes.ofItem[item];
        for (int k = 0; k < ALL_OVER; k++) {
            int as = options[options.length == 1 ? 0 : chance.below(options.length)];
            Room room = shapes.rooms.get(as);
            double atX = room.left() + chance.share() * (length - room.reach() - room.left());
            double atY = room.low() + chance.share() * (room.high() - room.low());
            tryAt(piece, KEPT_NEAR, KEPT, as, atX, atY, length);
        }
    }

    private double cost(int piece, int as, double atX, double atY, double bound) {
        return crowd.cost(piece, shapes.turned.get(as), as, atX, atY, bound);
    }

    private void tryAt(int piece, int from, int to, int as, double atX, double atY, double length) {
        Room room = shapes.rooms.get(as);
        double px = room.x(atX, length);
        double py = room.y(atY);
        if (!Double.isNaN(px)) {
            keep(from, to, as, px, py, cost(piece, as, px, py, bestCost[to - 1]));
        }
    }

    /** Keeps a place among those from {@code from} to {@code to} if it is one of the best. */
    private void keep(int from, int to, int as, double px, double py, double cost) {
        if (cost >= bestCost[to - 1]) {
            return;
        }
        int k = to - 1;
        while (k > from && bestCost[k - 1] > cost) {
            bestShape[k] = bestShape[k - 1];
            bestX[k] = bestX[k - 1];
            bestY[k] = bestY[k - 1];
            bestCost[k] = bestCost[k - 1];
            k--;
        }
        bestShape[k] = as;
        bestX[k] = px;
        bestY[k] = py;
        bestCost[k] = cost;
    }

    private void descend(int piece, int k, double length, double from, double to) {
        Room room = shapes.rooms.get(bestShape[k]);
        double stepX = from;
        double stepY = from;
        while ((stepX > to || stepY > to) && bestCost[k] > 0) {
            // Along x, along y, or along one of the diagonals.
            int way = chance.below(4);
            double dx = way == 1 ? 0 : stepX;
            double dy = way == 0 ? 0 : way == 3 ? -stepY : stepY;
            double fromX = bestX[k];
            double fromY = bestY[k];
            boolean forward = go(piece, k, room, fromX + dx, fromY + dy, length);
            boolean backward = go(piece, k, room, fromX - dx, fromY - dy, length);
            double by = forward || backward ? GROWN : SHRUNK;
            if (way >= 2) {
                by = Math.sqrt(by);
            }
            stepX *= way == 1 ? 1 : by;
            stepY *= way == 0 ? 1 : by;
        }
    }

    private boolean go(int piece, int k, Room room, double toX, double toY, double length) {
        double px = room.x(toX, length);
        double py = room.y(toY);
        if (Double.isNaN(px) || (px == bestX[k] && py == bestY[k])) {
            return false;
        }
        double cost = cost(piece, bestShape[k], px, py, bestCost[k]);
        if (cost >= bestCost[k]) {
            return false;
        }
        bestX[k] = px;
        bestY[k] = py;
        bestCost[k] = cost;
        return true;
    }
}
