package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Position;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;
import org.jspecify.annotations.Nullable;

/** What lies along the sides of seams: notches, joints, and the edges that meet their ends. */
final class Sides {
    /** An end of an edge closer to a corner than this is that corner, in mm. */
    private static final double ONE = 1e-3;

    private final Map<String, Piece> pieces;
    private final Map<Run, List<SeamMark>> notches = new IdentityHashMap<>();
    private final Map<Run, Optional<Edge>> edges = new IdentityHashMap<>();

    Sides(Map<String, Piece> pieces) {
        this.pieces = pieces;
    }

    /** With what is known of the runs of walks that are the same as before, along the same pieces. */
    Sides(Map<String, Piece> pieces, Sides before, Set<Walk> same) {
        this(pieces);
        for (Walk walk : same) {
            for (Run run : walk.runs()) {
                Optional.ofNullable(before.notches.get(run)).ifPresent(found -> notches.put(run, found));
                Optional.ofNullable(before.edges.get(run)).ifPresent(found -> edges.put(run, found));
            }
        }
    }

    Optional<Piece> piece(String name) {
        return Optional.ofNullable(pieces.get(name));
    }

    /** Notches along a side and the joints between its edges, in order; marks of darts are none. */
    List<SeamMark> marks(WalkedSide side) {
        List<SeamMark> marks = new ArrayList<>();
        for (int i = 0; i < side.legs().size(); i++) {
            WalkedSide.Leg leg = side.legs().get(i);
            List<SeamMark> own = new ArrayList<>();
            for (SeamMark notch : notches(leg.run())) {
                own.add(new SeamMark(leg.at(notch.at()), notch.strokes(), notch.piece(), notch.edge()));
            }
            own.sort((a, b) -> Double.compare(a.at(), b.at()));
            marks.addAll(own);
            if (i + 1 < side.legs().size()) {
                marks.add(new SeamMark(leg.to(), 0, leg.run().piece(), leg.run().words()));
            }
        }
        return marks;
    }

    /** The notches of one copy, by their place along the edge with darts closed. */
    private List<SeamMark> notches(Run run) {
        return notches.computeIfAbsent(run, this::found);
    }

    private List<SeamMark> found(Run run) {
        List<SeamMark> marks = new ArrayList<>();
        for (Notch notch : piece(run.piece()).map(Piece::notches).orElse(List.of())) {
            if (!run.edge().isEmpty() && !run.edge().equals(notch.edge())) {
                continue;
            }
            Position at = run.path().nearest(notch.at());
            boolean end = at.s() <= Run.OFF || at.s() >= run.path().length() - Run.OFF;
            if (at.distance() <= Run.OFF && !end && !run.isTaken(at.s())) {
                marks.add(new SeamMark(run.sewnAt(at.s()), notch.ticks().size(), run.piece(), notch.edge()));
            }
        }
        return marks;
    }

    /** The edge of a piece that a run lies on; empty if the piece is not sound or has none. */
    Optional<Edge> edge(Run run) {
        return edges.computeIfAbsent(run, this::edgeUnder);
    }

    private Optional<Edge> edgeUnder(Run run) {
        Optional<Piece> piece = piece(run.piece());
        if (piece.isEmpty()) {
            return Optional.empty();
        }
        Optional<Edge> named = piece.get().edge(run.edge());
        if (named.isPresent()) {
            return named;
        }
        Edge best = null;
        double least = Run.OFF;
        for (Edge edge : piece.get().edges()) {
            double off = 0;
            for (double share : new double[] {0, 0.23, 0.5, 0.81, 1}) {
                double s = share * run.path().length();
                if (!run.isTaken(s)) {
                    off = Math.max(off, edge.path().nearest(run.path().at(s)).distance());
                }
            }
            if (off <= least) {
                best = edge;
                least = off;
            }
        }
        return Optional.ofNullable(best);
    }

    /** A run's piece and the edge on which it lies. */
    record Sewn(Piece piece, Edge edge) {
        @Override
        public boolean equals(@Nullable Object other) {
            return this == other || (other instanceof Sewn that && edge.equals(that.edge) && piece.equals(that.piece));
        }

        /** By the names: all that pieces hold takes long to add up. */
        @Override
        public int hashCode() {
            return 31 * piece.name().hashCode() + edge.name().hashCode();
        }
    }

    /** The piece and edge of a run; empty if either is not known. */
    Optional<Sewn> sewn(Run run) {
        Optional<Piece> piece = piece(run.piece());
        Optional<Edge> edge = edge(run);
        return piece.isPresent() && edge.isPresent()
                ? Optional.of(new Sewn(piece.get(), edge.get()))
                : Optional.empty();
    }

    /** The edge that a seam sews to the same edge of another copy; empty if it joins different ones. */
    Optional<Sewn> selfSewn(Walk walk) {
        boolean self = walk.first().size() == 1
                && walk.second().size() == 1
                && !walk.first().get(0).piece().isEmpty()
                && walk.first().get(0).piece().equals(walk.second().get(0).piece())
                && walk.first().get(0).path().equals(walk.second().get(0).path());
        return self ? sewn(walk.first().get(0)) : Optional.empty();
    }

    /** The allowance that all edges of a side have; empty if they differ or one is not known. */
    Optional<Double> allowance(List<Run> runs) {
        Optional<Double> common = Optional.empty();
        for (Run run : runs) {
            Optional<Double> own = edge(run).map(e -> e.allowance().width());
            if (own.isEmpty() || (common.isPresent() && !common.equals(own))) {
                return Optional.empty();
            }
            common = own;
        }
        return common;
    }

    /**
     * The edge next to a leg's edge at one of its ends; empty if the leg does not end at a corner.
     *
     * @param atStart the end at which the leg begins
     */
    Optional<Edge> neighbour(WalkedSide.Leg leg, boolean atStart) {
        Optional<Piece> piece = piece(leg.run().piece());
        Optional<Edge> own = edge(leg.run());
        if (piece.isEmpty() || own.isEmpty()) {
            return Optional.empty();
        }
        Point corner = atStart ? leg.start() : leg.end();
        List<Edge> edges = piece.get().edges();
        int index = edges.indexOf(own.get());
        int n = edges.size();
        boolean startsThere = own.get().path().start().distance(corner) <= ONE;
        boolean endsThere = own.get().path().end().distance(corner) <= ONE;
        if (startsThere && endsThere) {
            return Optional.empty();
        } else if (startsThere) {
            return Optional.of(edges.get((index + n - 1) % n));
        } else if (endsThere) {
            return Optional.of(edges.get((index + 1) % n));
        }
        return Optional.empty();
    }
}
