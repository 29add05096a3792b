package org.gusset.core.geometry;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;

/**
 * The parallel copy of a path: each segment's own parallel, joined at the corners. On the outside of a corner the neighbours run
 * on straight until they meet, at most 4 times the distance, then a straight bevel joins them. On the inside the raw copy
 * has a link across, and where a curve is too tight it travels backwards; {@link Loops} cuts those out.
 */
final class ParallelPath {
    /** How far a corner may be prolonged, in distances. */
    private static final double LONGEST = 4;

    /** Speeds of a cubic below this share of its size make a cusp. */
    private static final double CUSP = 1e-7;

    private final double distance;
    private final List<Segment> raw = new ArrayList<>();

    /** Which raw segments are links or travel backwards. */
    private final List<Boolean> spurious = new ArrayList<>();

    private ParallelPath(double distance) {
        this.distance = distance;
    }

    /**
     * The parallel at a distance in mm, positive to the left.
     *
     * @throws Fault if nothing is left of it, or it is too far away
     */
    static Path of(Path path, double distance) {
        if (!(Math.abs(distance) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("the distance must be a finite number: " + distance);
        }
        Extent.checkDistance(distance);
        if (path.endless()) {
            return path.transformed(Transform.shift(path.tangent(0).left().times(distance)));
        }
        List<Segment> sources = sources(path);
        if (distance == 0 || sources.isEmpty()) {
            return path;
        }
        ParallelPath parallel = new ParallelPath(distance);
        parallel.build(sources, path.closed());
        if (!parallel.spurious.contains(false)) {
            // Also when an arc shrinks to its centre and nothing at all remains.
            throw tooTight(sources, distance);
        }
        return new Loops(path, distance, Path.of(parallel.raw), parallel.spurious).removed();
    }

    private static Fault tooTight(List<Segment> sources, double distance) {
        double radius = Double.POSITIVE_INFINITY;
        for (Segment segment : sources) {
            radius = Math.min(radius, ParallelCurve.tightest(segment, distance));
        }
        return Fault.of(
                GeometryCode.TOO_TIGHT, "distance", Fact.length(Math.abs(distance)), "radius", Fact.length(radius));
    }

    /** The segments that have length, cubics cut at their cusps. */
    private static List<Segment> sources(Path path) {
        List<Segment> out = new ArrayList<>();
        for (Segment segment : path.segments()) {
            if (!(segment.start().distance(segment.end()) > Path.JOINT) && segment.length() <= Path.JOINT) {
                continue;
            }
            if (segment instanceof CubicSegment cubic) {
                out.addAll(withoutCusps(cubic));
            } else {
                out.add(segment);
            }
        }
        return out;
    }

    private static List<Segment> withoutCusps(CubicSegment cubic) {
        List<Segment> out = new ArrayList<>();
        CubicSegment rest = cubic;
        double from = 0;
        for (double t : slowest(cubic)) {
            if (t > 1e-6 && t < 1 - 1e-6 && cubic.derivative(t).length() <= CUSP * cubic.polygonLength()) {
                double cut = (t - from) / (1 - from);
                CubicSegment head = rest.part(0, cut);
                CubicSegment tail = rest.part(cut, 1);
                out.add(new CubicSegment(head.start(), head.control1(), head.end(), head.end()));
                rest = new CubicSegment(tail.start(), tail.start(), tail.control2(), tail.end());
                from = t;
            }
        }
        out.add(rest);
        return out;
    }

    /** Where the square of the speed is least or greatest: roots of B' . B''. */
    private static List<Double> slowest(CubicSegment c) {
        Vector a = c.control1().minus(c.start());
        Vector b = c.control2().minus(c.control1());
        Vector e = c.end().minus(c.control2());
        double[] x = {a.dx(), b.dx(), e.dx()};
        double[] y = {a.dy(), b.dy(), e.dy()};
        double[] sum = BernsteinRoots.product(x, BernsteinRoots.derivative(x));
        double[] ys = BernsteinRoots.product(y, BernsteinRoots.derivative(y));
        for (int i = 0; i < sum.length; i++) {
            sum[i] += ys[i];
        }
        return BernsteinRoots.of(sum);
    }

    /**
     * A corner of the copy: where the neighbour before it is prolonged to, where the one after it is prolonged from, and whether
     * a line between the two is a link across the inside (no part of the result) or a bevel.
     */
    private record Joint(Point exit, Point entry, boolean inside) {}

    private void build(List<Segment> sources, boolean closed) {
        List<List<ParallelCurve.Piece>> own = new ArrayList<>();
        for (Segment source : sources) {
            own.add(pieces(source));
        }
        int n = sources.size();
        List<Joint> joints = new ArrayList<>();
        for (int i = 0; i <= n; i++) {
            Segment before = sources.get((i + n - 1) % n);
            Segment after = sources.get(i % n);
            if ((i > 0 && i < n) || closed) {
                joints.add(joint(before, after));
            } else {
                Point end = i == 0 ? moved(after, 0) : moved(before, 1);
                joints.add(new Joint(end, end, false));
            }
        }
        for (int i = 0; i < n; i++) {
            Joint next = joints.get(i + 1);
            prolonged(sources.get(i), own.get(i), joints.get(i).entry(), next.exit());
            if (next.exit().distance(next.entry()) > Path.COINCIDE) {
                add(new LineSegment(next.exit(), next.entry()), next.inside());
            }
        }
    }

    /** A segment's own parallel with straight prolongations to the corners. */
    private void prolonged(Segment source, List<ParallelCurve.Piece> pieces, Point entry, Point exit) {
        if (source instanceof LineSegment) {
            add(new LineSegment(entry, exit), false);
            return;
        }
        if (entry.distance(moved(source, 0)) > Path.COINCIDE) {
            add(new LineSegment(entry, moved(source, 0)), false);
        }
        for (ParallelCurve.Piece piece : pieces) {
            add(piece.segment(), piece.backward());
        }
        if (exit.distance(moved(source, 1)) > Path.COINCIDE) {
            add(new LineSegment(moved(source, 1), exit), false);
        }
    }

    private Joint joint(Segment before, Segment after) {
        Vector arrive = before.tangent(1);
        Vector leave = after.tangent(0);
        Point end = moved(before, 1);
        Point start = moved(after, 0);
        double sine = arrive.cross(leave);
        double cosine = arrive.dot(leave);
        double size = Math.abs(distance);
        boolean back = cosine < 0 && Math.abs(sine) < 1e-9;
        if (end.distance(start) <= Path.COINCIDE || (sine * distance > 0 && !back)) {
            return new Joint(end, start, true);
        }
        // The tangent of half the turn; infinite where the path turns straight back.
        double run = size * Math.abs(sine) / (1 + cosine);
        if (!back && run <= LONGEST * size) {
            Point corner = end.plus(arrive.times(run));
            return new Joint(corner, corner, false);
        }
        Point exit = end.plus(arrive.times(LONGEST * size));
        return new Joint(exit, start.plus(leave.times(-LONGEST * size)), false);
    }

    private Point moved(Segment source, double t) {
        return source.at(t).plus(source.tangent(t).left().times(distance));
    }

    private List<ParallelCurve.Piece> pieces(Segment source) {
        if (source instanceof ArcSegment arc) {
            double radius = arc.sweepDegrees() < 0 ? arc.radius() + distance : arc.radius() - distance;
            if (Math.abs(radius) <= Path.COINCIDE) {
                return List.of();
            }
            // Beyond the centre the copy lies opposite and travels backwards.
            double from = radius < 0 ? arc.fromDegrees() + 180 : arc.fromDegrees();
            Segment copy = new ArcSegment(arc.centre(), Math.abs(radius), from, arc.sweepDegrees());
            return List.of(new ParallelCurve.Piece(copy, radius < 0));
        } else if (source instanceof CubicSegment cubic) {
            return ParallelCurve.of(cubic, distance);
        }
        return List.of();
    }

    private void add(Segment segment, boolean bad) {
        raw.add(segment);
        spurious.add(bad);
    }
}
