package org.gusset.core.construct;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.graph.Values;

/** A side of a line: one of the page's, or that on which a point lies. */
public sealed interface Side {
    /** The unit vector square to {@code along} on this side, at a point of the line. */
    Vector square(Values in, Point at, Vector along);

    /** A side of the page. */
    record Page(Heading.Compass compass) implements Side {
        @Override
        public Vector square(Values in, Point at, Vector along) {
            Vector left = squared(along);
            double share = left.dot(compass.vector());
            if (Math.abs(share) < 1e-9) {
                List<String> has = new ArrayList<>();
                for (Heading.Compass other : Heading.Compass.values()) {
                    if (Math.abs(left.dot(other.vector())) >= 1e-9) {
                        has.add(other.word());
                    }
                }
                throw Fault.of(
                        ConstructCode.SIDE_UNKNOWN,
                        "side",
                        compass.word(),
                        "first",
                        has.get(0),
                        "second",
                        has.get(has.size() - 1));
            }
            return share > 0 ? left : left.opposite();
        }
    }

    /** The side on which the point of an input lies. */
    record Toward(int point) implements Side {
        @Override
        public Vector square(Values in, Point at, Vector along) {
            Vector left = squared(along);
            double share = left.dot(in.point(point).minus(at));
            if (Math.abs(share) < 1e-9) {
                throw Fault.of(ConstructCode.SAME_POINT);
            }
            return share > 0 ? left : left.opposite();
        }
    }

    /** At right angles to a way; a line without length has none. */
    private static Vector squared(Vector along) {
        if (!(along.length() > 0)) {
            throw Fault.of(ConstructCode.SAME_POINT);
        }
        return along.unit().left();
    }
}
