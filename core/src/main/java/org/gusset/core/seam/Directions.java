package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.pattern.Edge;
import org.jspecify.annotations.Nullable;

/**
 * Finds which end of one side of a seam comes to which end of the other, and which way each edge runs. A draft names edges, not
 * their ends: two edges in a row share a corner, or corners that another seam brings together; of the ways that remain the one is
 * taken in which matched points, notches and the edges beside the ends agree best.
 */
final class Directions {
    /** A side of more edges than this is walked as written. */
    static final int MOST_RUNS = 8;

    /** More ways of one side than this are not compared: where no seam joins its edges, any is as good. */
    static final int MOST_WAYS = 16;

    /** What a mark without a partner costs, in mm. */
    private static final double ALONE = 30;

    /** What one agreement of the edges beside two ends is worth, in mm. */
    private static final double AGREEMENT = 20;

    private final Sides sides;
    private final Corners corners;

    Directions(Sides sides, Corners corners) {
        this.sides = sides;
        this.corners = corners;
    }

    /** Both sides of a seam, beginning at the same end. */
    record Pair(WalkedSide first, WalkedSide second) {}

    /**
     * What was found.
     *
     * @param walks the seams
     * @param pairs the pairs for all seams, in order
     * @param order in which order they were found, which is the order in which they joined corners
     * @param together what each brought together, in the order in which they were found
     * @param corners the corners that all this speaks of
     */
    record Found(
            List<Walk> walks,
            List<Pair> pairs,
            List<Integer> order,
            List<List<Corners.Together>> together,
            List<Integer> corners) {}

    /**
     * The pairs for all seams.
     *
     * @param before what was found before, if anything was
     * @param same the walks that are the same as before, along the same pieces
     */
    Found of(List<Walk> walks, @Nullable Found before, Set<Walk> same) {
        if (before != null
                && before.pairs().size() == walks.size()
                && before.corners().equals(corners.numbers(walks))) {
            Found again = again(walks, before, same);
            if (again != null) {
                return again;
            }
            corners.part();
        }
        return anew(walks);
    }

    /** Goes the same way as before and looks only at seams that changed; null if one of them joins other corners than before. */
    private @Nullable Found again(List<Walk> walks, Found before, Set<Walk> same) {
        List<Pair> pairs = new ArrayList<>(before.pairs());
        for (int k = 0; k < before.order().size(); k++) {
            int i = before.order().get(k);
            List<Corners.Together> together = before.together().get(k);
            if (!(same.contains(walks.get(i))
                    && SameObject.is(walks.get(i), before.walks().get(i)))) {
                Pair pair = best(walks.get(i));
                pairs.set(i, pair);
                if (!corners.together(pair.first(), pair.second()).equals(together)) {
                    return null;
                }
            }
            together.forEach(t -> corners.join(t.one(), t.other()));
        }
        return new Found(List.copyOf(walks), List.copyOf(pairs), before.order(), before.together(), before.corners());
    }

    private Found anew(List<Walk> walks) {
        List<Optional<Pair>> found = new ArrayList<>();
        List<Integer> order = new ArrayList<>();
        List<List<Corners.Together>> all = new ArrayList<>();
        walks.forEach(w -> found.add(Optional.empty()));
        boolean waits = true;
        while (order.size() < walks.size()) {
            boolean moved = false;
            for (int i = 0; i < walks.size(); i++) {
                Walk walk = walks.get(i);
                boolean ready = !waits || (ready(walk.first()) && ready(walk.second()));
                if (found.get(i).isEmpty() && ready) {
                    Pair pair = best(walk);
                    List<Corners.Together> together = corners.together(pair.first(), pair.second());
                    together.forEach(t -> corners.join(t.one(), t.other()));
                    found.set(i, Optional.of(pair));
                    order.add(i);
                    all.add(together);
                    moved = true;
                    waits = true;
                }
            }
            waits = moved;
        }
        return new Found(
                List.copyOf(walks),
                found.stream().map(Optional::orElseThrow).toList(),
                List.copyOf(order),
                List.copyOf(all),
                corners.numbers(walks));
    }

    /** True if every two edges in a row can be joined. */
    private boolean ready(List<Run> runs) {
        return mostJoints(runs, ways(runs)) == runs.size() - 1;
    }

    private static List<List<Boolean>> ways(List<Run> runs) {
        List<List<Boolean>> ways = new ArrayList<>();
        int count = runs.size() > MOST_RUNS ? 1 : 1 << runs.size();
        for (int bits = 0; bits < count; bits++) {
            List<Boolean> way = new ArrayList<>();
            for (int i = 0; i < runs.size(); i++) {
                way.add((bits >> Math.min(i, 30) & 1) == 1);
            }
            ways.add(way);
        }
        return ways;
    }

    private int mostJoints(List<Run> runs, List<List<Boolean>> ways) {
        int most = 0;
        for (List<Boolean> way : ways) {
            most = Math.max(most, joints(runs, way));
        }
        return most;
    }

    /** How many of the edges in a row are joined when they run this way. */
    private int joints(List<Run> runs, List<Boolean> way) {
        int joints = 0;
        for (int i = 0; i + 1 < runs.size(); i++) {
            if (joined(
                    new WalkedSide.Leg(runs.get(i), way.get(i), 0),
                    new WalkedSide.Leg(runs.get(i + 1), way.get(i + 1), 0))) {
                joints++;
            }
        }
        return joints;
    }

    /** True if one edge goes on where the other ends: at one corner, or at corners that a seam joins. */
    boolean joined(WalkedSide.Leg one, WalkedSide.Leg next) {
        return corners.joined(corners.end(one), corners.start(next));
    }

    private List<WalkedSide> candidates(List<Run> runs) {
        List<List<Boolean>> ways = ways(runs);
        int most = mostJoints(runs, ways);
        List<WalkedSide> candidates = new ArrayList<>();
        for (List<Boolean> way : ways) {
            if (candidates.size() < MOST_WAYS && joints(runs, way) == most) {
                candidates.add(WalkedSide.of(runs, way));
            }
        }
        return candidates;
    }

    private Pair best(Walk walk) {
        Pair best = null;
        double least = Double.POSITIVE_INFINITY;
        for (WalkedSide first : candidates(walk.first())) {
            for (WalkedSide second : candidates(walk.second())) {
                for (WalkedSide turned : List.of(second, second.backwards())) {
                    Pair pair = new Pair(first, turned);
                    double cost = cost(walk, pair);
                    if (cost < least - 1e-9) {
                        best = pair;
                        least = cost;
                    }
                }
            }
        }
        if (best == null) {
            throw new IllegalStateException("a seam without edges");
        }
        return best;
    }

    private double cost(Walk walk, Pair pair) {
        double cost = 0;
        for (Walk.Match match : walk.matches()) {
            List<Double> one = pair.first().places(match.first());
            List<Double> other = pair.second().places(match.second());
            if (!one.isEmpty() && !other.isEmpty()) {
                cost += 100 * nearest(one.get(0), other, pair);
            }
        }
        List<SeamMark> first = sides.marks(pair.first());
        List<SeamMark> second = sides.marks(pair.second());
        cost += apart(first, second, pair) + apart(second, first, new Pair(pair.second(), pair.first()));
        cost -= AGREEMENT * (agreement(pair, true) + agreement(pair, false));
        return cost - AGREEMENT * (folded(pair.first()) + folded(pair.second()));
    }

    private static double nearest(double at, List<Double> others, Pair pair) {
        double least = Double.POSITIVE_INFINITY;
        for (double other : others) {
            double fromStart = Math.abs(at - other);
            double fromEnd =
                    Math.abs(pair.first().length() - at - (pair.second().length() - other));
            least = Math.min(least, Math.min(fromStart, fromEnd));
        }
        return least;
    }

    private static double apart(List<SeamMark> marks, List<SeamMark> others, Pair pair) {
        double cost = 0;
        for (SeamMark mark : marks) {
            List<Double> alike = new ArrayList<>();
            for (SeamMark other : others) {
                if (other.strokes() == mark.strokes() || other.joint()) {
                    alike.add(other.at());
                }
            }
            if (!mark.joint()) {
                cost += Math.min(ALONE, nearest(mark.at(), alike, pair));
            }
        }
        return cost;
    }

    /** How well the edges beside an end of both sides agree: one name, both on a fold, both hems. */
    private int agreement(Pair pair, boolean atStart) {
        Optional<Edge> one =
                sides.neighbour(atStart ? pair.first().first() : pair.first().last(), atStart);
        Optional<Edge> other =
                sides.neighbour(atStart ? pair.second().first() : pair.second().last(), atStart);
        if (one.isEmpty() || other.isEmpty()) {
            return 0;
        }
        int agreement = 0;
        if (one.get().name().equals(other.get().name())) {
            agreement += 2;
        }
        if (one.get().onFold() && other.get().onFold()) {
            agreement += 2;
        }
        if (one.get().allowance().turnedUp() && other.get().allowance().turnedUp()) {
            agreement += 1;
        }
        return agreement;
    }

    /** How many copies go on into the next across the fold between them. */
    private int folded(WalkedSide side) {
        int folded = 0;
        for (int i = 0; i + 1 < side.legs().size(); i++) {
            WalkedSide.Leg leg = side.legs().get(i);
            WalkedSide.Leg next = side.legs().get(i + 1);
            boolean same = leg.run().equals(next.run()) && leg.reversed() != next.reversed();
            if (same && sides.neighbour(leg, false).map(Edge::onFold).orElse(false)) {
                folded++;
            }
        }
        return folded;
    }
}
