package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.gusset.core.geometry.ArcSegment;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.LineSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.geometry.Vector;

/**
 * Parts the lines of several sizes into what each has for itself and what some share, so that no two rows of dashes are drawn on
 * one another. Straight segments are shared where they overlap on one line; curves if they are the same from end to end.
 */
final class Together {
    /** Lines are one if they lie as close as this, in mm. */
    private static final double ONE = 1e-6;

    /** Shorter stretches are not parted, in mm. */
    private static final double SHORTEST = 0.05;

    private final List<List<Path>> lines;

    /** What the sizes draw. */
    Together(List<List<Path>> lines) {
        this.lines = lines;
    }

    /** The lines of each size that are its own, in the order of the sizes, and the lines that several share. */
    record Parted(List<List<Path>> own, List<Path> shared) {}

    Parted parted() {
        List<List<Path>> own = new ArrayList<>();
        List<Path> shared = new ArrayList<>();
        for (int size = 0; size < lines.size(); size++) {
            List<Path> runs = new ArrayList<>();
            for (Path line : lines.get(size)) {
                Runs mine = new Runs(runs);
                Runs common = new Runs(shared);
                for (Segment segment : line.segments()) {
                    part(size, segment, mine, common);
                }
                mine.end();
                common.end();
            }
            own.add(runs);
        }
        return new Parted(own, shared);
    }

    /** Neighbouring stretches become one path. */
    private static final class Runs {
        private final List<Path> out;
        private final List<Segment> run = new ArrayList<>();

        Runs(List<Path> out) {
            this.out = out;
        }

        void add(Segment stretch) {
            run.add(stretch);
        }

        void end() {
            if (!run.isEmpty()) {
                out.add(Path.of(run));
                run.clear();
            }
        }
    }

    private void part(int size, Segment segment, Runs mine, Runs common) {
        List<Double> from = new ArrayList<>();
        List<Double> to = new ArrayList<>();
        List<Integer> whose = new ArrayList<>();
        TreeSet<Double> breaks = new TreeSet<>(List.of(0.0, 1.0));
        for (int other = 0; other < lines.size(); other++) {
            if (other == size) {
                continue;
            }
            for (Path line : lines.get(other)) {
                for (Segment its : line.segments()) {
                    double[] overlap = overlap(segment, its);
                    if ((overlap[1] - overlap[0]) * segment.length() > SHORTEST) {
                        from.add(overlap[0]);
                        to.add(overlap[1]);
                        whose.add(other);
                        breaks.add(overlap[0]);
                        breaks.add(overlap[1]);
                    }
                }
            }
        }
        double start = 0;
        for (double end : breaks) {
            if (end * segment.length() - start * segment.length() <= ONE) {
                continue;
            }
            double middle = (start + end) / 2;
            boolean shared = false;
            boolean drawn = false;
            for (int i = 0; i < whose.size(); i++) {
                boolean here = from.get(i) < middle && middle < to.get(i);
                shared |= here;
                drawn |= here && whose.get(i) < size;
            }
            Segment stretch = start == 0 && end == 1 ? segment : segment.part(start, end);
            if (shared) {
                mine.end();
                if (drawn) {
                    common.end();
                } else {
                    common.add(stretch);
                }
            } else {
                common.end();
                mine.add(stretch);
            }
            start = end;
        }
    }

    /** The shares of one segment between which another lies on it; nothing is told by a second share that is not larger. */
    private static double[] overlap(Segment segment, Segment other) {
        if (segment instanceof LineSegment line && other instanceof LineSegment its) {
            return along(line, its);
        }
        boolean alike = (segment instanceof ArcSegment && other instanceof ArcSegment)
                || (segment instanceof CubicSegment && other instanceof CubicSegment);
        return alike && (same(segment, other) || same(segment, other.reversed()))
                ? new double[] {0, 1}
                : new double[] {0, 0};
    }

    private static boolean same(Segment a, Segment b) {
        for (double t : new double[] {0, 0.25, 0.5, 0.75, 1}) {
            if (a.at(t).distance(b.at(t)) > ONE) {
                return false;
            }
        }
        return true;
    }

    private static double[] along(LineSegment line, LineSegment other) {
        double length = line.length();
        if (length <= ONE) {
            return new double[] {0, 0};
        }
        Vector way = line.end().minus(line.start()).unit();
        double[] shares = new double[2];
        int i = 0;
        for (Point end : List.of(other.start(), other.end())) {
            Vector off = end.minus(line.start());
            if (Math.abs(way.cross(off)) > ONE) {
                return new double[] {0, 0};
            }
            shares[i++] = way.dot(off) / length;
        }
        double first = Math.max(0, Math.min(shares[0], shares[1]));
        double last = Math.min(1, Math.max(shares[0], shares[1]));
        // Ends that are all but the segment's own are taken for them, so that no sliver is left.
        return new double[] {first * length <= ONE ? 0 : first, (1 - last) * length <= ONE ? 1 : last};
    }
}
