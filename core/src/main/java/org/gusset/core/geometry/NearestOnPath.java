package org.gusset.core.geometry;

import java.util.ArrayList;
import java.util.List;

/** The nearest place on a path: the least of the feet and ends of all its segments, far segments left out by their boxes. */
final class NearestOnPath {
    /** Distances that differ by less are equal, in mm. */
    private static final double EQUAL = 1e-9;

    /** Candidates closer along the path than this belong to one minimum, in mm. */
    private static final double ONE_MINIMUM = 0.01;

    private NearestOnPath() {}

    static Position of(Path path, Point to) {
        if (path.endless()) {
            LineSegment line = (LineSegment) path.segments().get(0);
            double s = Nearest.foot(line, to) * line.length();
            Point foot = path.at(s);
            return new Position(s, foot, foot.distance(to));
        }
        Stations stations = path.stations();
        List<Position> found = new ArrayList<>();
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < path.segments().size(); i++) {
            if (off(path.boxes().box(i), to) > nearest + EQUAL) {
                continue;
            }
            Segment segment = path.segments().get(i);
            for (double t : Nearest.candidates(segment, to)) {
                Point at = segment.at(t);
                double distance = at.distance(to);
                if (distance <= nearest + EQUAL) {
                    found.add(new Position(stations.at(i, t), at, distance));
                    nearest = Math.min(nearest, distance);
                }
            }
        }
        return first(found, nearest);
    }

    /** The first of the equal minima, each represented by its nearest candidate. */
    private static Position first(List<Position> found, double nearest) {
        Position best = null;
        for (Position p : found) {
            if (p.distance() <= nearest + EQUAL) {
                if (best == null) {
                    best = p;
                } else if (p.s() - best.s() > ONE_MINIMUM) {
                    return best;
                } else if (p.distance() < best.distance()) {
                    best = p;
                }
            }
        }
        if (best == null) {
            throw new IllegalArgumentException("the path or the point has coordinates that are not numbers");
        }
        return best;
    }

    /** How far a point lies outside a box; 0 inside. */
    private static double off(Box box, Point p) {
        double dx = Math.max(0, Math.max(box.left() - p.x(), p.x() - box.right()));
        double dy = Math.max(0, Math.max(box.top() - p.y(), p.y() - box.bottom()));
        return Math.sqrt(dx * dx + dy * dy);
    }
}
