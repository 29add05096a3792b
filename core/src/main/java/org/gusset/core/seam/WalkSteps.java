package org.gusset.core.seam;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.geometry.Path;
import org.gusset.core.graph.Effort;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;

/**
 * How many steps it takes to walk seams, counted from what they join before they are walked, so that it is the same whether or not some of
 * them were walked before. A seam of every copy of an edge has a leg for each; the ways of its two sides are held against one another
 * mark by mark, and the order of sewing is sought along all corners that seams bring together. See {@link Effort} for what a step is.
 */
public final class WalkSteps {
    /** Pairs of marks, legs or corners that count one step. */
    private static final int PAIRS = 4;

    /** Edges that run side by side are told by this many places. */
    private static final int PLACES = 5;

    private final Map<String, Piece> pieces = new HashMap<>();
    private final Map<String, Map<String, Integer>> notches = new HashMap<>();
    private final int seams;
    private long runs;
    private long joins;

    /**
     * @param all the sound pieces
     * @param walks all seams that are to be walked
     */
    public WalkSteps(List<Piece> all, List<Walk> walks) {
        for (Piece piece : all) {
            pieces.put(piece.name(), piece);
            Map<String, Integer> own = new HashMap<>();
            for (Notch notch : piece.notches()) {
                own.merge(notch.edge(), 1, Integer::sum);
            }
            notches.put(piece.name(), own);
        }
        this.seams = walks.size();
        for (Walk walk : walks) {
            long first = walk.first().size();
            long second = walk.second().size();
            runs += first + second;
            joins += 2 + Math.min(legs(walk.first()) * legs(walk.second()), 4 * first * second);
        }
    }

    private static long legs(List<Run> side) {
        return side.stream().mapToLong(Run::copies).sum();
    }

    /** The steps of one of the seams. */
    public long of(Walk walk) {
        Counted first = counted(walk.first());
        Counted second = counted(walk.second());
        long own = walk.first().size() + walk.second().size();
        long found = first.found + second.found;
        // Every seam may wait for every other to join its edges.
        long ready = seams
                * (first.ways * walk.first().size()
                        + second.ways * walk.second().size())
                / PAIRS;
        long pair = (first.marks * second.marks + first.legs * second.legs) / PAIRS
                + first.marks
                + second.marks
                + walk.matches().size() * (first.look + second.look);
        long pairs = 2 * Math.min(first.ways, Directions.MOST_WAYS) * Math.min(second.ways, Directions.MOST_WAYS);
        // The order of sewing, edges that are sewn twice, seams that look alike.
        long others = (own * joins + own * runs / PAIRS + seams * (first.marks + second.marks)) / PAIRS;
        return found + ready + pairs * pair + others;
    }

    /**
     * The steps of looking whether edges of a piece are parallel copies of lines on it.
     *
     * @param inner its lines that are no edges
     */
    public static long beside(Piece piece, List<Sewing.Inner> inner) {
        long steps = (long) piece.edges().size() * inner.size() / PAIRS;
        for (Edge edge : piece.edges()) {
            for (Sewing.Inner line : inner) {
                if (Bookkeeping.comparable(edge, line.path())) {
                    steps += PLACES * Effort.looking(line.path());
                }
            }
        }
        return steps;
    }

    /**
     * One side.
     *
     * @param legs its copies of edges
     * @param marks its notches and joints
     * @param look the steps of looking for a point on every leg
     * @param ways how its edges may run
     * @param found the steps of finding its edges and notches
     */
    private record Counted(long legs, long marks, long look, long ways, long found) {}

    private Counted counted(List<Run> side) {
        long legs = 0;
        long marks = 0;
        long look = 0;
        long found = 0;
        for (Run run : side) {
            Path path = run.path();
            long looking = Effort.looking(path);
            legs += run.copies();
            look += run.copies() * looking;
            Piece piece = pieces.get(run.piece());
            if (piece == null) {
                continue;
            }
            long on = run.edge().isEmpty()
                    ? piece.notches().size()
                    : notches.getOrDefault(run.piece(), Map.of()).getOrDefault(run.edge(), 0);
            marks += run.copies() * on;
            found += (piece.edges().size() + piece.notches().size()) / PAIRS + on * looking;
            if (piece.edge(run.edge()).isEmpty()) {
                for (Edge edge : piece.edges()) {
                    found += PLACES * Effort.looking(edge.path());
                }
            }
        }
        long ways = side.size() > Directions.MOST_RUNS ? 1 : 1L << side.size();
        return new Counted(legs, marks + legs, look, ways, found);
    }
}
