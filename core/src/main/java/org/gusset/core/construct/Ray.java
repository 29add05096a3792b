package org.gusset.core.construct;

import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Meeting;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;

/** Straight on from a point until a path is met. */
final class Ray {
    private static final double BEHIND = 1e-6;

    private Ray() {}

    /** The first place on {@code target} straight on from a point; the point itself counts if it lies on it. */
    static Point meet(Point from, Vector way, Path target, String name, String wayWords) {
        List<Meeting> meetings = Path.guide(from, from.plus(way.unit())).meetings(target);
        for (Meeting meeting : meetings) {
            if (meeting.s() >= -BEHIND) {
                return meeting.point();
            }
        }
        if (meetings.isEmpty()) {
            throw Fault.of(ConstructCode.NOT_MET, "way", wayWords, "target", name);
        }
        double behind = meetings.get(meetings.size() - 1).s();
        throw wrongWay(name, wayWords, -behind);
    }

    /** What is asked for lies behind, by an amount in mm. */
    static Fault wrongWay(String target, String wayWords, double amount) {
        return new Fault(
                Diagnostic.of(
                                ConstructCode.WRONG_WAY,
                                Place.nowhere(),
                                "target",
                                target,
                                "way",
                                wayWords,
                                "amount",
                                Fact.length(amount))
                        .with(
                                Hint.of(
                                        "way.other",
                                        "If it belongs there, go the other way; if not, look which measure or sum came out too small or too large.")));
    }
}
