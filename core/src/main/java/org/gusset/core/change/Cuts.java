package org.gusset.core.change;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.geometry.Meeting;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Dart;

/** Where cuts meet an outline. */
final class Cuts {
    private Cuts() {}

    /** Refuses a cut that meets the outline elsewhere than at the given points. */
    static void checkInside(Blank blank, Path cut, List<Point> ends) {
        for (Meeting meeting : cut.meetings(blank.loop())) {
            if (ends.stream().noneMatch(e -> e.distance(meeting.point()) <= Blank.ON)) {
                throw ChangeCode.LEAVES_PIECE.fault(
                        "right",
                        Fact.length(meeting.point().x()),
                        "down",
                        Fact.length(meeting.point().y()));
            }
        }
    }

    /** Refuses a cut through a dart that opens an edge; one that only meets its point is none. */
    static void checkDarts(Blank blank, Path cut, String... except) {
        for (Blank.Side side : blank.sides()) {
            for (Dart dart : side.darts()) {
                if (dart.isNone() || List.of(except).contains(dart.name())) {
                    continue;
                }
                for (Path line : List.of(dart.legA(), dart.legB(), dart.foldLine())) {
                    if (cut.meetings(line).stream().anyMatch(m -> m.point().distance(dart.tip()) > Blank.ON)) {
                        throw ChangeCode.CUTS_DART.fault("dart", dart.name());
                    }
                }
            }
        }
    }

    /** The two places along the loop at which a line crosses it. */
    static List<Double> across(Blank blank, Path line, String name) {
        List<Double> at = new ArrayList<>();
        List<Point> points = new ArrayList<>();
        for (Meeting meeting : blank.loop().meetings(line)) {
            // A loop that begins on the line meets it at its start and at its end.
            if (points.stream().noneMatch(p -> p.distance(meeting.point()) <= Blank.ON)) {
                points.add(meeting.point());
                at.add(meeting.s());
            }
        }
        if (at.size() != 2) {
            throw ChangeCode.NOT_ACROSS.fault("path", name, "count", at.size());
        }
        return at;
    }

    /** The break at a place of the loop; at a corner that of the edge that runs more nearly along a way. */
    static Break along(Blank blank, double at, Vector way) {
        Break found = blank.at(at);
        if (found.from() > Path.COINCIDE) {
            return found;
        }
        int before = (found.edge() + blank.sides().size() - 1) % blank.sides().size();
        Path ending = blank.sides().get(before).path();
        Path beginning = blank.sides().get(found.edge()).path();
        double length = ending.length();
        return Math.abs(ending.tangentBefore(length).dot(way))
                        > Math.abs(beginning.tangent(0).dot(way))
                ? blank.open(before, length)
                : found;
    }

    /**
     * The break from one place of the loop to another, which must lie on one edge.
     *
     * @param onto the shift that closes it; if a step would be left, the break reaches further by the shift's length on each side
     * @param back true if the shift is that of the part before the break
     */
    static Break leftOut(Blank blank, double from, double to, String name, Vector onto, boolean back) {
        Break begin = blank.at(from);
        Break end = blank.at(to);
        int edge = begin.edge();
        double length = blank.sides().get(edge).path().length();
        double first = begin.from();
        double last = end.from();
        if (end.edge() == blank.after(edge) && last < Path.COINCIDE) {
            last = length;
        } else if (end.edge() != edge || last < first) {
            throw ChangeCode.CORNER_IN_STRIP.fault(
                    "path",
                    name,
                    "first",
                    blank.sides().get(edge).name(),
                    "second",
                    blank.sides().get(blank.after(edge)).name());
        }
        Path path = blank.sides().get(edge).path();
        Point before = path.at(first);
        Point after = path.at(last);
        double step =
                back ? before.plus(onto).distance(after) : after.plus(onto).distance(before);
        if (step > Path.COINCIDE) {
            first = blank.open(edge, Math.max(0, first - onto.length())).from();
            last = blank.open(edge, Math.min(length, last + onto.length())).from();
        }
        return new Break(edge, first, last);
    }
}
