package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.LineSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;

/** Segments put end to end; a gap wider than half {@link Path#COINCIDE} is bridged straight. */
final class Chain {
    private final List<Segment> segments = new ArrayList<>();
    private double length;

    void add(List<? extends Segment> more) {
        for (Segment segment : more) {
            if (!segments.isEmpty()) {
                lineTo(segment.start());
            }
            put(segment);
        }
    }

    /** A straight stretch from the end so far, unless that is the place already. */
    void lineTo(Point to) {
        Point end = segments.get(segments.size() - 1).end();
        if (end.distance(to) > Path.COINCIDE / 2) {
            put(new LineSegment(end, to));
        }
    }

    private void put(Segment segment) {
        segments.add(segment);
        length += segment.length();
    }

    /** The length so far, in mm. */
    double length() {
        return length;
    }

    boolean isEmpty() {
        return segments.isEmpty();
    }

    Point start() {
        return segments.get(0).start();
    }

    Path path() {
        return Path.of(segments);
    }
}
