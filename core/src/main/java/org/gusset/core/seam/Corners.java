package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.geometry.Point;

/** Corners of pieces, and which of them seams bring together: union-find without ranks, since there are few. */
final class Corners {
    /** Ends of edges closer than this are one corner, in mm. */
    private static final double ONE = 1e-3;

    /** Joints on both sides of a seam closer than this come together, in mm. */
    static final double JOINTS = 2 * Walking.TOLERANCE;

    private final List<Point> corners = new ArrayList<>();
    private final Map<String, List<Integer>> ofPiece = new HashMap<>();
    private final List<Integer> parents = new ArrayList<>();

    /** The corners at the start and the end of each run. */
    private final Map<Run, int[]> ends = new IdentityHashMap<>();

    Corners(List<Walk> walks) {
        for (Walk walk : walks) {
            for (Run run : walk.runs()) {
                ends.put(run, new int[] {
                    of(run.piece(), run.path().start()),
                    of(run.piece(), run.path().end())
                });
            }
        }
    }

    /** The numbers of the corners at the ends of all runs: alike for walks whose edges meet in the same places. */
    List<Integer> numbers(List<Walk> walks) {
        List<Integer> numbers = new ArrayList<>();
        for (Walk walk : walks) {
            for (Run run : walk.runs()) {
                for (int corner : endsOf(run)) {
                    numbers.add(corner);
                }
            }
        }
        return numbers;
    }

    private int[] endsOf(Run run) {
        int[] own = ends.get(run);
        if (own == null) {
            throw new IllegalArgumentException(run.words() + " is of no walk");
        }
        return own;
    }

    /** The number of a corner. */
    private int of(String piece, Point at) {
        List<Integer> own = ofPiece.computeIfAbsent(piece, k -> new ArrayList<>());
        for (int i : own) {
            if (corners.get(i).distance(at) <= ONE) {
                return i;
            }
        }
        own.add(corners.size());
        corners.add(at);
        parents.add(corners.size() - 1);
        return corners.size() - 1;
    }

    /** Two corners that a seam brings together. */
    record Together(int one, int other) {}

    /** What the two sides of a seam bring together: their ends, and joints that lie at one place on both. */
    List<Together> together(WalkedSide first, WalkedSide second) {
        List<Together> together = new ArrayList<>();
        together.add(new Together(start(first.first()), start(second.first())));
        together.add(new Together(end(first.last()), end(second.last())));
        for (WalkedSide.Leg one : first.legs()) {
            for (WalkedSide.Leg other : second.legs()) {
                if (one.from() > 0 && Math.abs(one.from() - other.from()) <= JOINTS) {
                    together.add(new Together(start(one), start(other)));
                }
            }
        }
        return together;
    }

    /** The corner at which an edge begins as it is sewn. */
    int start(WalkedSide.Leg leg) {
        return endsOf(leg.run())[leg.reversed() ? 1 : 0];
    }

    /** The corner at which it ends. */
    int end(WalkedSide.Leg leg) {
        return endsOf(leg.run())[leg.reversed() ? 0 : 1];
    }

    void join(int one, int other) {
        parents.set(root(one), root(other));
    }

    /** Takes all joins back. */
    void part() {
        for (int i = 0; i < parents.size(); i++) {
            parents.set(i, i);
        }
    }

    boolean joined(int one, int other) {
        return root(one) == root(other);
    }

    private int root(int corner) {
        int at = corner;
        while (parents.get(at) != at) {
            // Halves the way for whoever asks next.
            parents.set(at, parents.get(parents.get(at)));
            at = parents.get(at);
        }
        return at;
    }
}
