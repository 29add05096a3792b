package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.graph.Effort;

/**
 * Finds room for the grain arrow: of lines along the warp laid evenly across the piece, each of their stretches inside is a
 * candidate, and the one is taken whose arrow is long, far from the stitching line and near the middle.
 */
final class GrainArrow {
    /** The share of the stretch inside that the arrow takes. */
    private static final double SHARE = 2.0 / 3;

    /** Lines tried across the piece; odd, so that one lies in the middle. */
    private static final int LINES = 41;

    /** Where the arrow is best if the piece has no line of its own for it: a third of the way in, so that words find room beside it. */
    private static final double WANTED_OFF_MIDDLE = 1.0 / 3;

    /** How much less a line counts the farther it lies from the wanted place, as a share. */
    private static final double OFF_WANTED = 0.4;

    /** Room beyond this on both sides makes no arrow better, in mm. */
    private static final double ENOUGH = 30;

    /** Places of an arrow whose distance from the stitching line is looked at. */
    private static final int LOOKS = 9;

    /** Nearer than this to a marked line that it follows, the arrow would be taken for that line, in mm. */
    private static final double BESIDE = 5;

    /** How far the stitching line may be taken to stray while looking for room, in mm. */
    private static final double ROUGH = 0.05;

    private final Vector way;

    /** How far the corners of the stitching line lie along the warp and across it. */
    private final double[] along;

    private final double[] aside;

    private final RingDistances distances;
    private final Effort effort;
    private final List<List<Point>> obstacles;
    private final List<Path> marked;

    /**
     * Looks for room.
     *
     * @param way the unit way along the warp
     * @param placed the outlines of what is placed on the piece, which the arrow leaves free if it can
     * @param marked lines that are marked on the piece, along which the arrow does not run if it can
     */
    GrainArrow(Path stitching, Vector way, List<Path> placed, List<Path> marked, Effort effort) {
        this.way = way;
        List<Point> ring = stitching.flatten(ROUGH);
        this.effort = effort;
        effort.spend((long) LINES * ring.size());
        this.distances = new RingDistances(ring);
        this.along = new double[ring.size()];
        this.aside = new double[ring.size()];
        for (int i = 0; i < along.length; i++) {
            Vector place = ring.get(i).minus(Point.ORIGIN);
            along[i] = way.dot(place);
            aside[i] = way.left().dot(place);
        }
        this.marked = List.copyOf(marked);
        this.obstacles = placed.stream().map(p -> p.flatten(ROUGH)).toList();
    }

    /** An arrow with the distance that it keeps from the stitching line, and how far off the wanted place across it lies: 0 there, 1 at most. */
    private record Candidate(Point from, Point to, double clear, double off) {
        double length() {
            return from.distance(to);
        }
    }

    /**
     * The arrow's start and end; empty if the piece has no room at all.
     *
     * @param line a point of the piece's own grain line; the arrow is laid on that line if it runs well inside
     */
    Optional<Grain> placed(boolean bias, Optional<Point> line) {
        Vector across = way.left();
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double place : aside) {
            least = Math.min(least, place);
            most = Math.max(most, place);
        }
        List<Candidate> candidates = new ArrayList<>();
        if (line.isPresent()) {
            addInside(across.dot(line.get().minus(Point.ORIGIN)), across, 0, candidates);
            candidates.removeIf(c -> c.clear() < ENOUGH);
            if (!candidates.isEmpty()) {
                Candidate own = candidates.get(0);
                return Optional.of(new Grain(own.from(), own.to(), bias));
            }
        }
        for (int i = 1; i <= LINES; i++) {
            double offset = least + (most - least) * i / (LINES + 1);
            double offMiddle = Math.abs(2.0 * i / (LINES + 1) - 1);
            addInside(offset, across, Math.abs(offMiddle - WANTED_OFF_MIDDLE), candidates);
        }
        double longest =
                candidates.stream().mapToDouble(Candidate::length).max().orElse(0);
        double clearest =
                candidates.stream().mapToDouble(Candidate::clear).max().orElse(0);
        double enough = Math.min(ENOUGH, clearest);
        Candidate best = null;
        double rank = 0;
        for (Candidate candidate : candidates) {
            double own = candidate.length() / longest * Math.min(1, candidate.clear() / enough);
            own *= 1 - OFF_WANTED * candidate.off();
            if (crossesPlaced(candidate) || followsMarked(candidate)) {
                own /= 10;
            }
            if (own > rank) {
                rank = own;
                best = candidate;
            }
        }
        return best == null ? Optional.empty() : Optional.of(new Grain(best.from(), best.to(), bias));
    }

    private void addInside(double offset, Vector across, double off, List<Candidate> candidates) {
        List<Double> crossings = new ArrayList<>();
        for (int i = 1; i < along.length; i++) {
            double u = aside[i - 1] - offset;
            double v = aside[i] - offset;
            if (u < 0 != v < 0) {
                crossings.add(along[i - 1] + (along[i] - along[i - 1]) * u / (u - v));
            }
        }
        crossings.sort(null);
        for (int i = 1; i < crossings.size(); i += 2) {
            double from = crossings.get(i - 1);
            double room = crossings.get(i) - from;
            Point start = place(from + room * (1 - SHARE) / 2, offset, across);
            Point end = place(from + room * (1 + SHARE) / 2, offset, across);
            effort.spend(along.length);
            double clear = clear(start, end);
            if (clear > 2 * ROUGH || clear > room * 0.1) {
                candidates.add(new Candidate(start, end, clear, off));
            }
        }
    }

    /** True if an arrow runs over something that is placed on the piece. */
    private boolean crossesPlaced(Candidate candidate) {
        for (List<Point> outline : obstacles) {
            for (int k = 1; k < outline.size(); k++) {
                if (crosses(candidate.from(), candidate.to(), outline.get(k - 1), outline.get(k))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** True if an arrow lies on a marked line, or so near beside it that the two are taken for one. */
    private boolean followsMarked(Candidate candidate) {
        for (Path line : marked) {
            Vector start = line.start().minus(candidate.from());
            Vector end = line.end().minus(candidate.from());
            boolean beside = Math.abs(way.left().dot(start)) < BESIDE
                    && Math.abs(way.left().dot(end)) < BESIDE;
            double low = Math.min(way.dot(start), way.dot(end));
            double high = Math.max(way.dot(start), way.dot(end));
            if (beside && low < candidate.length() && high > 0) {
                return true;
            }
        }
        return false;
    }

    private static boolean crosses(Point a, Point b, Point c, Point d) {
        Vector ab = b.minus(a);
        Vector cd = d.minus(c);
        return ab.cross(c.minus(a)) * ab.cross(d.minus(a)) < 0 && cd.cross(a.minus(c)) * cd.cross(b.minus(c)) < 0;
    }

    private Point place(double along, double offset, Vector across) {
        return Point.ORIGIN.plus(way.times(along)).plus(across.times(offset));
    }

    private double clear(Point start, Point end) {
        double square = Double.POSITIVE_INFINITY;
        for (int i = 0; i < LOOKS; i++) {
            square = distances.least(start.toward(end, (double) i / (LOOKS - 1)), square);
        }
        return Math.sqrt(square);
    }
}
