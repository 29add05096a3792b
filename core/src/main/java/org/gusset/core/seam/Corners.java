package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Point;

/** Corners of pieces, and which of them seams bring together: union-find without ranks, since there are few. */
final class Corners {
    /** Ends of edges closer than this are one corner, in mm. */
    private static final double ONE = 1e-3;

    private record Corner(String piece, Point at) {}

    private final List<Corner> corners = new ArrayList<>();
    private final List<Integer> parents = new ArrayList<>();

    /** The number of a corner. */
    int of(String piece, Point at) {
        for (int i = 0; i < corners.size(); i++) {
            Corner corner = corners.get(i);
            if (corner.piece().equals(piece) && corner.at().distance(at) <= ONE) {
                return i;
            }
        }
        corners.add(new Corner(piece, at));
        parents.add(corners.size() - 1);
        return corners.size() - 1;
    }

    void join(int one, int other) {
        parents.set(root(one), root(other));
    }

    boolean joined(int one, int other) {
        return root(one) == root(other);
    }

    private int root(int corner) {
        int at = corner;
        while (parents.get(at) != at) {
            at = parents.get(at);
        }
        return at;
    }
}
