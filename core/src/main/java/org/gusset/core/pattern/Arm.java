package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.LineSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.geometry.Vector;

/**
 * The cutting line of one band as seen from one of its corners: it runs away from the corner, and is prolonged straight
 * beyond it. Places count in mm from the foot, which lies square off the corner; on the prolongation they are negative.
 *
 * @param corner the corner of the stitching line
 * @param away the unit way of the stitching line away from the corner
 * @param out the unit way outside there
 * @param width the allowance in mm
 * @param line the cutting line of the band, running away from the corner
 */
record Arm(Point corner, Vector away, Vector out, double width, Path line) {
    /** The arm at the start of a band. */
    static Arm atStart(Band band, Side side) {
        return new Arm(band.seam().start(), band.startWay(), side.out(band.startWay()), band.width(), band.cut());
    }

    /** The arm at the end of a band. */
    static Arm atEnd(Band band, Side side) {
        Vector way = band.endWay();
        return new Arm(
                band.seam().end(),
                way.opposite(),
                side.out(way),
                band.width(),
                band.cut().reversed());
    }

    /** A point with its place on an arm and its place on the other path. */
    record Crossing(Point point, double s, double otherS) {}

    Point foot() {
        return corner.plus(out.times(width));
    }

    Point at(double s) {
        return s < 0 ? foot().plus(away.times(s)) : line.at(s);
    }

    /** The arm with {@code beyond} mm of its prolongation; s is then counted from the prolongation's end. */
    private Path reaching(double beyond) {
        List<Segment> segments = new ArrayList<>();
        segments.add(new LineSegment(foot().plus(away.times(-beyond)), line.start()));
        segments.addAll(line.segments());
        return Path.of(segments);
    }

    /** Where this arm meets another of the same corner: the pair of places nearest to the two feet. */
    Optional<Crossing> meeting(Arm other, double beyond) {
        return reaching(beyond).meetings(other.reaching(beyond)).stream()
                .map(m -> new Crossing(m.point(), m.s() - beyond, m.otherS() - beyond))
                .min((a, b) ->
                        Double.compare(Math.abs(a.s()) + Math.abs(a.otherS()), Math.abs(b.s()) + Math.abs(b.otherS())));
    }

    /** Where this arm meets the endless line through the corner along a way, nearest to the foot. */
    Optional<Crossing> meetingLine(Vector way, double beyond) {
        return reaching(beyond).meetings(Path.guide(corner, corner.plus(way.times(beyond)))).stream()
                .map(m -> new Crossing(m.point(), m.s() - beyond, m.otherS()))
                .min((a, b) -> Double.compare(Math.abs(a.s()), Math.abs(b.s())));
    }

    /** Where a path that begins near the corner first meets this arm. */
    Optional<Crossing> firstMeeting(Path path, double beyond) {
        return path.meetings(reaching(beyond)).stream()
                .min((a, b) -> Double.compare(a.s(), b.s()))
                .map(m -> new Crossing(m.point(), m.otherS() - beyond, m.s()));
    }

    /** The arm from a place on, prolonged straight at its far end by {@code further} mm. */
    Path from(double s, double further) {
        List<Segment> segments = new ArrayList<>();
        if (s < 0) {
            segments.add(new LineSegment(at(s), line.start()));
            segments.addAll(line.segments());
        } else {
            segments.addAll(line.part(s, line.length()).segments());
        }
        Segment last = segments.get(segments.size() - 1);
        segments.add(new LineSegment(last.end(), last.end().plus(last.tangent(1).times(further))));
        return Path.of(segments);
    }
}
