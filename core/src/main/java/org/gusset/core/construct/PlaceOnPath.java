package org.gusset.core.construct;

import static org.gusset.core.diagnostic.Fact.length;

import org.gusset.core.diagnostic.Fault;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Position;
import org.gusset.core.graph.Values;

/** A place on a path, as an arc length from its start. Indexes are those of the node's inputs. */
public sealed interface PlaceOnPath {
    /** The arc length from the start in mm. */
    double along(Values in, Path path);

    /** A share of the length. */
    record Share(Formula share) implements PlaceOnPath {
        @Override
        public double along(Values in, Path path) {
            double s = share.number(in) * path.length();
            return Bounds.within(s, path, "");
        }
    }

    /** A length from the start, or from the end. */
    record FromEnd(Formula amount, boolean fromStart, String name) implements PlaceOnPath {
        @Override
        public double along(Values in, Path path) {
            double s = amount.number(in);
            return Bounds.within(fromStart ? s : path.length() - s, path, name);
        }
    }

    /** A length from a point on the path: onward, or back where the point is the path's end. */
    record FromPoint(Formula amount, int point, String pointName, String name) implements PlaceOnPath {
        @Override
        public double along(Values in, Path path) {
            double from = Bounds.on(path, in, point, pointName, name);
            boolean atEnd = Math.abs(from - path.length()) <= Condition.LENGTH_TOLERANCE && !path.closed();
            double s = amount.number(in);
            return Bounds.within(atEnd ? path.length() - s : from + s, path, name);
        }
    }

    /** Nearest to a point. */
    record Nearest(int point) implements PlaceOnPath {
        @Override
        public double along(Values in, Path path) {
            return path.nearest(in.point(point)).s();
        }
    }

    /** Where a point lies that must be on the path. */
    record AtPoint(int point, String pointName, String name) implements PlaceOnPath {
        @Override
        public double along(Values in, Path path) {
            return Bounds.on(path, in, point, pointName, name);
        }
    }

    /** Checks of places. */
    final class Bounds {
        private Bounds() {}

        private static double within(double s, Path path, String name) {
            double length = path.length();
            if (s < -Condition.LENGTH_TOLERANCE || s > length + Condition.LENGTH_TOLERANCE) {
                throw Fault.of(
                        ConstructCode.BEYOND_PATH,
                        "path",
                        name.isEmpty() ? "the path" : name,
                        "length",
                        length(length),
                        "amount",
                        length(s));
            }
            return Math.max(0, Math.min(length, s));
        }

        private static double on(Path path, Values in, int point, String pointName, String name) {
            Position nearest = path.nearest(in.point(point));
            if (nearest.distance() > Condition.LENGTH_TOLERANCE) {
                throw Fault.of(
                        ConstructCode.OFF_PATH,
                        "what",
                        "`" + pointName + "`",
                        "distance",
                        length(nearest.distance()),
                        "path",
                        name);
            }
            return nearest.s();
        }
    }
}
