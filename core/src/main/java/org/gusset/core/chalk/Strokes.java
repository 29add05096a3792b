package org.gusset.core.chalk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Meeting;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.geometry.Vector;

/**
 * Makes strokes of a line: straight ones, and curves with as many offsets as it takes to hold them. A curve that does not is parted in
 * the middle.
 */
final class Strokes {
    /** A line that bends no more than this is straight for chalk, in mm. */
    private static final double STRAIGHT = 0.2;

    /** How far a curve may stray when its rounded offsets are joined by straight strokes, in mm; more for a coarse tape. */
    private static final double HOLD = 1.5;

    /** What straight strokes between offsets may stray beyond a corner rounded both ways, in mm. */
    private static final double CHORDS = 0.75;

    /** Directions that differ by less than this many degrees make no corner. */
    private static final double CORNER = 2;

    /** How often a curve is parted, and its step halved. */
    private static final int PARTED = 5;

    private static final int HALVED = 2;
    private static final double FLAT = 0.05;

    private final ChalkFrame frame;
    private final Tape tape;
    private final double hold;

    Strokes(ChalkFrame frame, Tape tape) {
        this.frame = frame;
        this.tape = tape;
        this.hold = Math.max(HOLD, Math.sqrt(2) * tape.error() + CHORDS);
    }

    /**
     * The strokes of a line from one mark to another.
     *
     * @param side 1 if offsets count to the left, -1 if they count to the right
     */
    List<ChalkStroke> of(String name, Path path, ChalkMark from, ChalkMark to, int side) {
        List<Double> corners = corners(path);
        corners.add(path.length());
        List<ChalkStroke> strokes = new ArrayList<>();
        double at = 0;
        ChalkMark mark = from;
        for (int i = 0; i < corners.size(); i++) {
            double end = corners.get(i);
            boolean last = i == corners.size() - 1;
            ChalkMark next = last ? to : mark(OutlineRun.spoken(name) + ", corner " + (i + 1), path.at(end));
            part(name, path.part(at, end), mark, next, side, PARTED, strokes);
            at = end;
            mark = next;
        }
        return strokes;
    }

    private ChalkMark mark(String name, Point point) {
        return ChalkMark.of(name, point, frame, tape);
    }

    private static List<Double> corners(Path path) {
        List<Double> corners = new ArrayList<>();
        double at = 0;
        for (Segment segment : path.segments()) {
            at += segment.length();
            if (at > FLAT && at < path.length() - FLAT) {
                Vector before = path.tangentBefore(at);
                Vector after = path.tangent(at);
                double turn = Math.abs(StrictMath.toDegrees(StrictMath.atan2(before.cross(after), before.dot(after))));
                boolean apart = corners.isEmpty() || at - corners.get(corners.size() - 1) > FLAT;
                if (turn > CORNER && apart) {
                    corners.add(at);
                }
            }
        }
        return corners;
    }

    private void part(
            String name, Path path, ChalkMark from, ChalkMark to, int side, int parts, List<ChalkStroke> strokes) {
        if (bend(path) <= STRAIGHT) {
            strokes.add(new ChalkStroke.Straight(name, from, to));
            return;
        }
        Optional<ChalkStroke.Curved> best = Optional.empty();
        double step = tape.step();
        for (int i = 0; i <= HALVED && onTape(step); i++) {
            Optional<ChalkStroke.Curved> tried = curved(name, path, from, to, side, step);
            if (tried.isPresent()
                    && (best.isEmpty() || tried.get().off() < best.get().off())) {
                best = tried;
            }
            if (best.isPresent() && best.get().off() <= hold) {
                strokes.add(best.get());
                return;
            }
            step /= 2;
        }
        if (parts == 0 || path.length() < tape.step()) {
            strokes.add(best.isPresent() ? best.get() : new ChalkStroke.Straight(name, from, to));
            return;
        }
        double half = path.length() / 2;
        ChalkMark middle = mark("on " + OutlineRun.spoken(name), path.at(half));
        part(name, path.part(0, half), from, middle, side, parts - 1, strokes);
        part(name, path.part(half, path.length()), middle, to, side, parts - 1, strokes);
    }

    private boolean onTape(double step) {
        double parts = step / tape.part().doubleValue();
        return parts >= 1 && Math.abs(parts - Math.rint(parts)) < 1e-9;
    }

    /** How far a path strays from the line between its ends; from its start if it is closed. */
    private static double bend(Path path) {
        Vector way = path.end().minus(path.start());
        boolean closed = way.length() < STRAIGHT;
        double most = 0;
        for (Point p : path.flatten(FLAT)) {
            Vector off = p.minus(path.start());
            most = Math.max(most, closed ? off.length() : Math.abs(way.unit().cross(off)));
        }
        return most;
    }

    /** The curve with offsets at a step; empty if a line square off has not just one place on it. */
    private Optional<ChalkStroke.Curved> curved(
            String name, Path path, ChalkMark from, ChalkMark to, int side, double step) {
        Point start = frame.at(from.across(), from.down());
        Point end = frame.at(to.across(), to.down());
        Vector way = end.minus(start).unit();
        double length = end.distance(start);
        List<ChalkStroke.Offset> offsets = new ArrayList<>();
        List<Point> drawn = new ArrayList<>();
        drawn.add(start);
        for (int k = 1; k * step < length - step / 5; k++) {
            Point foot = start.plus(way.times(k * step));
            List<Meeting> meetings = path.meetings(Path.guide(foot, foot.plus(way.left())));
            if (meetings.size() != 1) {
                return Optional.empty();
            }
            double by = side * way.left().dot(meetings.get(0).point().minus(foot));
            double rounded = tape.rounded(by) + 0.0;
            offsets.add(new ChalkStroke.Offset(k * step, rounded, Math.abs(rounded - by)));
            drawn.add(foot.plus(way.left().times(side * rounded)));
        }
        drawn.add(end);
        return length < tape.part().doubleValue()
                ? Optional.empty()
                : Optional.of(new ChalkStroke.Curved(name, from, to, length, offsets, stray(path, drawn)));
    }

    /** How far a line through points strays from a path, whichever way one looks. */
    private static double stray(Path path, List<Point> drawn) {
        Path line = Path.line(drawn.toArray(new Point[0]));
        double most = 0;
        for (Point p : path.flatten(FLAT)) {
            most = Math.max(most, line.nearest(p).distance());
        }
        for (double s = 0; s <= line.length(); s += 2) {
            most = Math.max(most, path.nearest(line.at(s)).distance());
        }
        for (Point p : drawn) {
            most = Math.max(most, path.nearest(p).distance());
        }
        return most;
    }
}
