package org.gusset.core.change;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.gusset.core.geometry.LineSegment;
import org.gusset.core.geometry.Meeting;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.geometry.Transform;
import org.gusset.core.pattern.Dart;
import org.jspecify.annotations.Nullable;

/**
 * Each part of a parted blank moved by its motion.
 *
 * @param fore the motion of the fore part
 * @param hind that of the hind part; one of the two is {@link Transform#NONE}
 */
record Moved(Parting parting, Transform fore, Transform hind) implements Changed.Motion {
    @Override
    public Point point(Point before) {
        return of(before).apply(before);
    }

    /** The motion of the part that holds a point; what lies on the cut stays. */
    private Transform of(Point point) {
        return moves(point) ? moving() : Transform.NONE;
    }

    private boolean foreMoves() {
        return !fore.equals(Transform.NONE);
    }

    private Transform moving() {
        return foreMoves() ? fore : hind;
    }

    private boolean moves(Point point) {
        Region mine = foreMoves() ? parting.fore() : parting.hind();
        Region other = foreMoves() ? parting.hind() : parting.fore();
        return mine.distance(point) < other.distance(point) - Blank.ON;
    }

    @Override
    public Path path(Path before) {
        if (before.endless()) {
            return before.transformed(of(before.start()));
        }
        TreeSet<Double> crossings = new TreeSet<>();
        for (Path cut : parting.cuts()) {
            for (Meeting meeting : before.meetings(cut)) {
                crossings.add(meeting.s());
            }
        }
        crossings.add(before.length());
        List<Segment> out = new ArrayList<>();
        double from = 0;
        double at = 0;
        @Nullable Transform last = null;
        for (double to : crossings) {
            if (to - at < Blank.ON && to < before.length()) {
                continue;
            }
            Transform mine = of(before.at((at + to) / 2));
            if (last != null && !mine.equals(last)) {
                add(before.part(from, at).transformed(last), out);
                from = at;
            }
            last = mine;
            at = to;
        }
        if (last == null || from == 0) {
            return before.transformed(last == null ? of(before.start()) : last);
        }
        add(before.part(from, before.length()).transformed(last), out);
        return Path.of(out);
    }

    /** Adds a path, with a straight stretch from the end so far. */
    static void add(Path path, List<Segment> out) {
        if (!out.isEmpty()) {
            Point end = out.get(out.size() - 1).end();
            if (end.distance(path.start()) > Path.COINCIDE) {
                out.add(new LineSegment(end, path.start()));
            }
        }
        out.addAll(path.segments());
    }

    @Override
    public Dart dart(Dart before) {
        boolean tip = moves(before.tip());
        boolean split = false;
        for (Path line : List.of(before.legA(), before.legB(), before.foldLine())) {
            split |= moves(line.at(line.length() / 2)) != tip;
        }
        if (split) {
            throw ChangeCode.DART_CROSSED.fault("dart", before.name());
        }
        return before.transformed(tip ? moving() : Transform.NONE);
    }
}
