package org.gusset.core.geometry;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;

/**
 * Takes the loops out of a raw parallel copy. Each spurious run (a link across the inside of a corner, a stretch that travels
 * backwards) lies in a loop between two visits of a place where the copy crosses itself; the shortest such loop goes. Where
 * the loops of two runs overlap, the runs are cut out together. A run at an end of an open copy without a loop is cut off.
 * Then loops go that come nearer to the original than the distance, which is where parts of it far apart along the path
 * lie close together.
 */
final class Loops {
    /** How much nearer to the original than the distance a true place of the copy may seem, in mm. */
    private static final double SLACK = 0.002;

    /**
     * Runs with ends as close as this may be cut out without a crossing, in mm: where a curve is hardly tighter than the distance, the
     * loop is so slim that copies that are fitted to 1e-4 mm need not cross.
     */
    private static final double TINY = 5e-3;

    private static final double EPS = 1e-7;
    private static final int ROUNDS = 50;

    private final Path original;
    private final double distance;
    private final Path raw;
    private final List<Boolean> spurious;

    Loops(Path original, double distance, Path raw, List<Boolean> spurious) {
        this.original = original;
        this.distance = distance;
        this.raw = raw;
        this.spurious = spurious;
    }

    /** A stretch by arc lengths. */
    private record Range(double from, double to) {
        boolean holds(Range other) {
            return from <= other.from + EPS && to >= other.to - EPS;
        }

        boolean overlaps(Range other) {
            return from < other.to - EPS && other.from < to - EPS;
        }

        boolean inside(double s) {
            return s > from + EPS && s < to - EPS;
        }

        Range with(Range other) {
            return new Range(Math.min(from, other.from), Math.max(to, other.to));
        }
    }

    Path removed() {
        if (!original.closed()) {
            return withoutNear(cut(raw, runs(raw, spurious)).path());
        }
        if (!spurious.contains(true)
                && PathMeetings.withItself(raw, Path.COINCIDE).isEmpty()) {
            return raw;
        }
        // A closed copy is opened at a place that is certainly good, and closed again where it began.
        double opening = goodPlace();
        List<Segment> turned = new ArrayList<>();
        List<Boolean> flags = new ArrayList<>();
        turn(opening, turned, flags);
        Path opened = Path.of(turned);
        Cut cut = cut(opened, runs(opened, flags));
        Path out = withoutNear(cut.path());
        double start =
                out.nearest(cut.path().at(cut.place(raw.length() - opening))).s();
        if (start <= EPS || start >= out.length() - EPS) {
            return out;
        }
        return healed(Path.joined(List.of(out.part(start, out.length()), out.part(0, start))), opening);
    }

    /** With the two halves of the segment that was opened made one again. */
    private Path healed(Path path, double opening) {
        Point cut = raw.at(opening);
        List<Segment> out = new ArrayList<>(path.segments());
        for (int i = 1; i < out.size(); i++) {
            if (out.get(i).start().distance(cut) <= EPS) {
                Stations.Place place = raw.stations().after(opening);
                Segment whole = raw.segments().get(place.index());
                double from = Nearest.on(whole, out.get(i - 1).start());
                double to = Nearest.on(whole, out.get(i).end());
                if (!(to > from)) {
                    break;
                }
                Segment one = whole instanceof LineSegment
                        ? new LineSegment(out.get(i - 1).start(), out.get(i).end())
                        : from == 0 && to == 1 ? whole : whole.part(from, to);
                out.set(i - 1, one);
                out.remove(i);
                break;
            }
        }
        return Path.of(out);
    }

    /** The raw segments from the opening round to the opening. */
    private void turn(double opening, List<Segment> segments, List<Boolean> flags) {
        Stations.Place place = raw.stations().after(opening);
        int n = raw.segments().size();
        Segment split = raw.segments().get(place.index());
        segments.add(split.part(place.t(), 1));
        flags.add(spurious.get(place.index()));
        for (int k = 1; k < n; k++) {
            segments.add(raw.segments().get((place.index() + k) % n));
            flags.add(spurious.get((place.index() + k) % n));
        }
        segments.add(split.part(0, place.t()));
        flags.add(spurious.get(place.index()));
    }

    /** Inside a good segment of the raw copy, at full distance from the original: the leftmost when the copy grows, else on the longest. */
    private double goodPlace() {
        boolean grows = original.signedArea() * distance < 0;
        double best = Double.NEGATIVE_INFINITY;
        double at = Double.NaN;
        for (int i = 0; i < raw.segments().size(); i++) {
            if (spurious.get(i)) {
                continue;
            }
            Segment segment = raw.segments().get(i);
            for (double share : new double[] {0.5, 0.25, 0.75, 0.1, 0.9}) {
                Point p = segment.at(share);
                double rank = grows ? -p.x() : segment.length() * (share == 0.5 ? 1 : 0.9);
                if (rank > best && !near(p)) {
                    best = rank;
                    at = raw.stations().at(i, share);
                }
            }
        }
        if (Double.isNaN(at)) {
            throw none();
        }
        return at;
    }

    private boolean near(Point p) {
        return original.nearest(p).distance() < Math.abs(distance) - SLACK;
    }

    private Fault none() {
        return Fault.of(GeometryCode.NO_PARALLEL, "distance", Fact.length(Math.abs(distance)));
    }

    /** Neighbouring spurious segments as one run. */
    private static List<Range> runs(Path path, List<Boolean> flags) {
        List<Range> out = new ArrayList<>();
        for (int i = 0; i < flags.size(); i++) {
            if (flags.get(i)) {
                Range own = new Range(path.stations().start(i), path.stations().start(i + 1));
                int last = out.size() - 1;
                if (last >= 0 && own.from() - out.get(last).to() <= EPS) {
                    out.set(last, out.get(last).with(own));
                } else {
                    out.add(own);
                }
            }
        }
        return out;
    }

    private Cut cut(Path path, List<Range> runs) {
        if (runs.isEmpty()) {
            return new Cut(path, List.of());
        }
        List<Range> loops = new ArrayList<>();
        for (Meeting m : PathMeetings.withItself(path, Path.COINCIDE)) {
            boolean onRun = false;
            for (Range run : runs) {
                onRun |= run.inside(m.s()) || run.inside(m.otherS());
            }
            if (!onRun) {
                loops.add(new Range(m.s(), m.otherS()));
            }
        }
        List<Range> wanted = new ArrayList<>(runs);
        List<Range> taken = new ArrayList<>();
        while (taken.size() < wanted.size()) {
            Range loop = shortest(path, loops, wanted.get(taken.size()));
            int clash = -1;
            for (int i = 0; i < taken.size() && clash < 0; i++) {
                boolean nested = taken.get(i).holds(loop) || loop.holds(taken.get(i));
                clash = taken.get(i).overlaps(loop) && !nested ? i : -1;
            }
            if (clash < 0) {
                taken.add(loop);
            } else {
                // Both runs need one loop round them; those in between are looked at anew.
                Range both = wanted.get(clash).with(wanted.get(taken.size()));
                wanted.subList(clash, taken.size() + 1).clear();
                wanted.add(clash, both);
                taken.subList(clash, taken.size()).clear();
            }
        }
        return new Cut(path, taken);
    }

    private Range shortest(Path path, List<Range> loops, Range run) {
        Range best = null;
        for (Range loop : loops) {
            if (loop.holds(run) && (best == null || loop.to() - loop.from() < best.to() - best.from())) {
                best = loop;
            }
        }
        if (best == null && !original.closed()) {
            if (run.from() <= EPS) {
                return new Range(0, run.to());
            } else if (run.to() >= path.length() - EPS) {
                return new Range(run.from(), path.length());
            }
        }
        if (best == null && path.at(run.from()).distance(path.at(run.to())) <= TINY) {
            return run;
        }
        if (best == null) {
            throw none();
        }
        return best;
    }

    /** A path and what is cut out of it. */
    private record Cut(Path whole, List<Range> out) {
        /** The stretches that stay, in order. */
        private List<Range> kept() {
            List<Range> sorted = new ArrayList<>(out);
            sorted.sort((a, b) -> Double.compare(a.from(), b.from()));
            List<Range> kept = new ArrayList<>();
            double at = 0;
            for (Range range : sorted) {
                if (range.from() - at > EPS) {
                    kept.add(new Range(at, range.from()));
                }
                at = Math.max(at, range.to());
            }
            if (whole.length() - at > EPS) {
                kept.add(new Range(at, whole.length()));
            }
            return kept;
        }

        Path path() {
            if (out.isEmpty()) {
                return whole;
            }
            List<Segment> segments = new ArrayList<>();
            for (Range range : kept()) {
                List<Segment> part = whole.part(range.from(), range.to()).segments();
                if (!segments.isEmpty()) {
                    Point end = segments.get(segments.size() - 1).end();
                    if (end.distance(part.get(0).start()) > Path.COINCIDE) {
                        segments.add(new LineSegment(end, part.get(0).start()));
                    }
                }
                segments.addAll(part);
            }
            return segments.isEmpty() ? Path.line(whole.start(), whole.start()) : Path.of(segments);
        }

        /** Where an arc length of the whole comes to lie; inside a loop, where the loop was. */
        double place(double s) {
            double before = 0;
            for (Range range : kept()) {
                if (s <= range.to()) {
                    return before + Math.max(0, s - range.from());
                }
                before += range.to() - range.from();
            }
            return before;
        }
    }

    /** Without the loops that come too near to the original, unless the original crosses itself. */
    private Path withoutNear(Path copy) {
        Path out = copy;
        for (int round = 0; round < ROUNDS; round++) {
            Range worst = null;
            List<Meeting> meetings = PathMeetings.withItself(out, Path.COINCIDE);
            if (meetings.isEmpty() || (round == 0 && !original.selfMeetings().isEmpty())) {
                break;
            }
            for (Meeting m : meetings) {
                Range loop = new Range(m.s(), m.otherS());
                boolean shorter = worst == null || loop.to() - loop.from() < worst.to() - worst.from();
                if (shorter && comesNear(out, loop)) {
                    worst = loop;
                }
            }
            if (worst == null) {
                break;
            }
            boolean shrinks = original.closed() && original.signedArea() * distance > 0;
            if (shrinks && staysFar(out, worst)) {
                throw none();
            }
            out = new Cut(out, List.of(worst)).path();
        }
        return out;
    }

    private boolean comesNear(Path path, Range loop) {
        for (int i = 1; i < 64; i++) {
            if (near(path.at(loop.from() + (loop.to() - loop.from()) * i / 64))) {
                return true;
            }
        }
        return false;
    }

    private boolean staysFar(Path path, Range loop) {
        for (int i = 1; i < 64; i++) {
            if (!near(path.at(loop.from() + (loop.to() - loop.from()) * i / 64))) {
                return true;
            }
        }
        return false;
    }
}
