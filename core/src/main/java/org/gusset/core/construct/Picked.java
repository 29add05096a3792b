package org.gusset.core.construct;

import java.util.List;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Meeting;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.jspecify.annotations.Nullable;

/** One meeting out of those found. */
final class Picked {
    private Picked() {}

    /** The only one, or the one nearest to a point; several without a point to pick by are a fault that lists them. */
    static Point one(List<Meeting> meetings, @Nullable Point near, String first, String second) {
        if (near != null) {
            Point best = meetings.get(0).point();
            for (Meeting meeting : meetings) {
                if (meeting.point().distance(near) < best.distance(near)) {
                    best = meeting.point();
                }
            }
            return best;
        }
        if (meetings.size() > 1) {
            Phrase places = Phrase.joined(
                    "places",
                    ", ",
                    meetings.stream()
                            .limit(5)
                            .map(m -> Phrase.of(
                                    "place",
                                    "({right} right, {down} down)",
                                    "right",
                                    Fact.length(m.point().x()),
                                    "down",
                                    Fact.length(m.point().y())))
                            .toList());
            throw Fault.of(
                    ConstructCode.MANY_MEETINGS,
                    "first",
                    first,
                    "second",
                    second,
                    "count",
                    meetings.size(),
                    "places",
                    places);
        }
        return meetings.get(0).point();
    }

    /** About how near two paths come that do not meet, in mm: for messages. */
    static double nearness(Path first, Path second) {
        double least = Double.POSITIVE_INFINITY;
        for (Point p : points(first)) {
            least = Math.min(least, second.nearest(p).distance());
        }
        for (Point p : points(second)) {
            least = Math.min(least, first.nearest(p).distance());
        }
        return least;
    }

    /** Points along a path to a tenth of a millimetre, coarser on paths of several metres and of many segments. */
    static List<Point> points(Path path) {
        Box box = path.bounds();
        double extent = Math.max(box.width(), box.height());
        return path.flatten(Math.max(0.1, extent * path.segments().size() / 1e5));
    }
}
