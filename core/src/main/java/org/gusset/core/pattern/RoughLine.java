package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Meeting;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Effort;
import org.gusset.core.pattern.PieceSpec.NamedPath;

/**
 * A cutting line as first laid, which may cross itself where allowances are wider than a hollow or the room between two edges.
 *
 * @param line the closed line
 * @param edges the stretches of it that belong to the edges
 * @param tight which edges have a hollow that was already told to be too tight
 * @param outline the outline it goes round
 */
record RoughLine(Path line, List<Range> edges, List<Boolean> tight, Outline outline) {
    private static final int ROUNDS = 100;

    /** A stretch by arc lengths in mm. */
    record Range(double from, double to) {
        double length() {
            return to - from;
        }

        boolean overlaps(Range other) {
            return from < other.to && other.from < to;
        }
    }

    RoughLine {
        edges = List.copyOf(edges);
        tight = List.copyOf(tight);
    }

    /**
     * The line without its loops. A crossing divides the line in two; the part that encloses less, counting area against the
     * outline's sense of travel as negative, is the loop. The shortest loop goes first.
     */
    Optional<CuttingLine.Laid> withoutLoops(Telling telling, Effort effort) {
        RoughLine rest = this;
        for (int round = 0; round < ROUNDS; round++) {
            effort.compare(rest.line, rest.line);
            List<Meeting> meetings = rest.line.selfMeetings();
            effort.spend((long) meetings.size() * rest.line.segments().size());
            if (meetings.isEmpty()) {
                return Optional.of(rest.laid());
            }
            Loop shortest = null;
            for (Meeting meeting : meetings) {
                Loop loop = rest.loop(meeting);
                if (shortest == null || loop.length() < shortest.length()) {
                    shortest = loop;
                }
            }
            if (shortest == null) {
                break;
            }
            rest.tell(shortest, telling);
            rest = rest.without(shortest);
        }
        Point at = rest.line.selfMeetings().stream()
                .map(Meeting::point)
                .findFirst()
                .orElse(rest.line.start());
        telling.tell(PieceCode.NO_CUTTING_LINE, outline.edges().get(0).place(), "", at);
        return Optional.empty();
    }

    /** A crossing and the loop at it: the stretch between its two places, or all but that. */
    private record Loop(Meeting at, boolean between, double length) {}

    private Loop loop(Meeting meeting) {
        int sense = outline.side() == Side.RIGHT ? 1 : -1;
        double inner = sense * line.part(meeting.s(), meeting.otherS()).signedArea();
        double outer = sense * line.signedArea() - inner;
        double length = meeting.otherS() - meeting.s();
        return inner <= outer ? new Loop(meeting, true, length) : new Loop(meeting, false, line.length() - length);
    }

    private RoughLine without(Loop loop) {
        double from = loop.at().s();
        double to = loop.at().otherS();
        Chain chain = new Chain();
        if (loop.between()) {
            if (from > 0) {
                chain.add(line.part(0, from).segments());
            }
            if (to < line.length()) {
                chain.add(line.part(to, line.length()).segments());
            }
        } else {
            chain.add(line.part(from, to).segments());
        }
        chain.lineTo(chain.start());
        List<Range> moved = new ArrayList<>();
        for (Range edge : edges) {
            moved.add(new Range(moved(edge.from(), loop), moved(edge.to(), loop)));
        }
        return new RoughLine(chain.path(), moved, tight, outline);
    }

    /** Where a place of the line comes to lie; in the loop, where the loop was. */
    private static double moved(double s, Loop loop) {
        double from = loop.at().s();
        double to = loop.at().otherS();
        if (!loop.between()) {
            return Math.max(0, Math.min(to - from, s - from));
        }
        return s <= from ? s : s < to ? from : s - (to - from);
    }

    private void tell(Loop loop, Telling telling) {
        List<Range> gone = loop.between()
                ? List.of(new Range(loop.at().s(), loop.at().otherS()))
                : List.of(new Range(0, loop.at().s()), new Range(loop.at().otherS(), line.length()));
        for (int i = 0; i < edges.size(); i++) {
            for (Range range : gone) {
                if (tight.get(i) && range.overlaps(edges.get(i))) {
                    return;
                }
            }
        }
        NamedPath first = edgeNear(loop.at().s());
        NamedPath second = edgeNear(loop.at().otherS());
        if (first.name().equals(second.name())) {
            telling.tell(
                    PieceCode.ALLOWANCE_CROSSES_ITSELF,
                    first.place(),
                    "edge",
                    first.name(),
                    "",
                    loop.at().point());
        } else {
            telling.tellOfTwo(
                    PieceCode.ALLOWANCES_OVERLAP, first, second, "", loop.at().point());
        }
    }

    private NamedPath edgeNear(double s) {
        int best = 0;
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < edges.size(); i++) {
            Range edge = edges.get(i);
            double off = Math.max(0, Math.max(edge.from() - s, s - edge.to()));
            if (edge.length() > 0 && off < nearest) {
                nearest = off;
                best = i;
            }
        }
        return outline.edges().get(best);
    }

    private CuttingLine.Laid laid() {
        List<Path> cuts = new ArrayList<>();
        for (Range edge : edges) {
            cuts.add(line.part(edge.from(), edge.to()));
        }
        return new CuttingLine.Laid(line, cuts);
    }
}
