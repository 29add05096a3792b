package org.gusset.core.construct;

import static org.gusset.core.diagnostic.Fact.length;

import java.util.List;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.geometry.Meeting;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;

/**
 * The ways to find a point from others. Where nothing else is said, input 0 is the point that the move starts from; lengths are in
 * mm and angles in degrees.
 */
public sealed interface PointConstruction extends Operation<Point> {
    /** The origin of the piece's frame. No inputs. */
    record Origin() implements PointConstruction {
        @Override
        public Point apply(Values in) {
            return Point.ORIGIN;
        }
    }

    /** Inputs: right, down. */
    record At() implements PointConstruction {
        @Override
        public Point apply(Values in) {
            return new Point(in.number(0), in.number(1));
        }
    }

    /** Squared by an amount. Inputs: point, amount. */
    record Squared(Heading.Compass compass) implements PointConstruction {
        @Override
        public Point apply(Values in) {
            return in.point(0).plus(compass.vector().times(in.number(1)));
        }
    }

    /** Squared until level with a point. Inputs: point, target. */
    record SquaredToPoint(Heading.Compass compass, String target) implements PointConstruction {
        @Override
        public Point apply(Values in) {
            Point from = in.point(0);
            double way = in.point(1).minus(from).dot(compass.vector());
            if (way < -Condition.LENGTH_TOLERANCE) {
                throw Ray.wrongWay(target, compass.word(), -way);
            }
            // Taken over and not added up, so that points made level are level to the last bit.
            return compass.vector().dx() == 0
                    ? new Point(from.x(), in.point(1).y())
                    : new Point(in.point(1).x(), from.y());
        }
    }

    /** Squared until a path is met. Inputs: point, path. */
    record SquaredToPath(Heading.Compass compass, String target) implements PointConstruction {
        @Override
        public Point apply(Values in) {
            return Ray.meet(in.point(0), compass.vector(), in.path(1), target, compass.word());
        }
    }

    /** Along the line to a point by an amount. Inputs: point, target, amount. */
    record Toward() implements PointConstruction {
        @Override
        public Point apply(Values in) {
            return in.point(0).plus(way(in.point(0), in.point(1)).times(in.number(2)));
        }
    }

    /** Along the line to a point until a path is met. Inputs: point, target, path. */
    record TowardPath(String point, String target) implements PointConstruction {
        @Override
        public Point apply(Values in) {
            return Ray.meet(in.point(0), way(in.point(0), in.point(1)), in.path(2), target, "toward `" + point + "`");
        }
    }

    /** Along the line to a point and beyond it by an amount. Inputs: point, target, amount. */
    record Past() implements PointConstruction {
        @Override
        public Point apply(Values in) {
            return in.point(1).plus(way(in.point(0), in.point(1)).times(in.number(2)));
        }
    }

    /** Along an angle by an amount. Inputs: point, angle, amount. */
    record Angled() implements PointConstruction {
        @Override
        public Point apply(Values in) {
            return in.point(0).plus(Vector.atAngle(in.number(1)).times(in.number(2)));
        }
    }

    /** Along an angle until a path is met. Inputs: point, angle, path. */
    record AngledToPath(String target) implements PointConstruction {
        @Override
        public Point apply(Values in) {
            return Ray.meet(in.point(0), Vector.atAngle(in.number(1)), in.path(2), target, "at that angle");
        }
    }

    /** Square to a path at the point, on one side, by an amount. Inputs: point, path, amount, then what the side needs. */
    record SquareTo(Side side) implements PointConstruction {
        @Override
        public Point apply(Values in) {
            Point from = in.point(0);
            Vector along = in.path(1).tangent(in.path(1).nearest(from).s());
            return from.plus(side.square(in, from, along).times(in.number(2)));
        }
    }

    /** With a compass from the point to a path. Inputs: point, radius, path, and the point that is nearest if {@code picks}. */
    record Swept(String target, boolean picks) implements PointConstruction {
        @Override
        public Point apply(Values in) {
            Point from = in.point(0);
            double radius = in.number(1);
            Path path = in.path(2);
            List<Meeting> meetings = radius <= 0 ? List.of() : path.meetings(Path.arc(from, radius, 0, 360));
            if (meetings.isEmpty()) {
                double nearest = path.nearest(from).distance();
                if (nearest > radius) {
                    throw Fault.of(
                            ConstructCode.OUT_OF_REACH,
                            "radius",
                            length(radius),
                            "target",
                            target,
                            "nearest",
                            length(nearest),
                            "short",
                            length(nearest - radius));
                }
                double farthest = Picked.points(path).stream()
                        .mapToDouble(from::distance)
                        .max()
                        .orElse(nearest);
                throw Fault.of(
                        ConstructCode.TOO_FAR_INSIDE,
                        "radius",
                        length(radius),
                        "target",
                        target,
                        "farthest",
                        length(farthest));
            }
            return Picked.one(meetings, picks ? in.point(3) : null, "the sweep", target);
        }
    }

    /** Where two sweeps meet. Inputs: radius, centre, radius, centre, the point that is nearest. */
    record TwoSweeps() implements PointConstruction {
        @Override
        public Point apply(Values in) {
            double r = in.number(0);
            Point a = in.point(1);
            double s = in.number(2);
            Point b = in.point(3);
            double d = a.distance(b);
            if (d > r + s) {
                throw Fault.of(
                        ConstructCode.SWEEPS_SHORT,
                        "radius",
                        length(r),
                        "second",
                        length(s),
                        "distance",
                        length(d),
                        "short",
                        length(d - r - s));
            }
            if (d < Math.abs(r - s) || d == 0) {
                throw Fault.of(ConstructCode.SWEEPS_INSIDE, "short", length(Math.abs(r - s) - d));
            }
            double along = (r * r - s * s + d * d) / (2 * d);
            double off = Math.sqrt(Math.max(0, r * r - along * along));
            Vector way = way(a, b);
            Point foot = a.plus(way.times(along));
            Point left = foot.plus(way.left().times(off));
            Point right = foot.plus(way.right().times(off));
            return in.point(4).distance(left) <= in.point(4).distance(right) ? left : right;
        }
    }

    /** On the line between two points at a share of the way. Inputs: first, second, share. */
    record Between() implements PointConstruction {
        @Override
        public Point apply(Values in) {
            return in.point(0).toward(in.point(1), in.number(2));
        }
    }

    /** At a place on a path. Inputs: path, then what the place needs. */
    record On(PlaceOnPath place) implements PointConstruction {
        @Override
        public Point apply(Values in) {
            return in.path(0).at(place.along(in, in.path(0)));
        }
    }

    /** Where two paths meet. Inputs: first, second, and the point that is nearest if {@code picks}. */
    record Meets(String first, String second, boolean picks) implements PointConstruction {
        @Override
        public Point apply(Values in) {
            in.effort().compare(in.path(0), in.path(1));
            List<Meeting> meetings = in.path(0).meetings(in.path(1));
            if (meetings.isEmpty()) {
                throw Fault.of(
                        ConstructCode.NO_MEETING,
                        "first",
                        first,
                        "second",
                        second,
                        "distance",
                        length(Picked.nearness(in.path(0), in.path(1))));
            }
            return Picked.one(meetings, picks ? in.point(2) : null, first, second);
        }
    }

    /** The mirror image over a straight path. Inputs: point, path. */
    record Mirrored(String mirror) implements PointConstruction {
        @Override
        public Point apply(Values in) {
            return Mirror.over(in.path(1), mirror).apply(in.point(0));
        }
    }

    /** Turned about a point. Inputs: point, angle, centre. */
    record Turned() implements PointConstruction {
        @Override
        public Point apply(Values in) {
            return Transform.turn(in.point(2), in.number(1)).apply(in.point(0));
        }
    }

    /** The start or end of a path. Inputs: path. */
    record EndOf(boolean start) implements PointConstruction {
        @Override
        public Point apply(Values in) {
            return start ? in.path(0).start() : in.path(0).end();
        }
    }

    private static Vector way(Point from, Point to) {
        Vector way = to.minus(from);
        if (way.length() < Path.COINCIDE) {
            throw Fault.of(ConstructCode.SAME_POINT);
        }
        return way.unit();
    }
}
