package org.gusset.core.construct;

import static org.gusset.core.diagnostic.Fact.length;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;

/** The ways to draw a path from points and other paths. Lengths are in mm and angles in degrees. */
public sealed interface PathConstruction extends Operation<Path> {
    /** Straight from point to point. Inputs: two or more points. */
    record Line(int points) implements PathConstruction {
        @Override
        public Path apply(Values in) {
            Point[] through = new Point[points];
            for (int i = 0; i < points; i++) {
                through[i] = in.point(i);
            }
            return Path.line(through);
        }
    }

    /** A construction line without ends along a side of the page. Inputs: a point. */
    record GuideAlong(Heading.Compass compass) implements PathConstruction {
        @Override
        public Path apply(Values in) {
            return Path.guide(in.point(0), in.point(0).plus(compass.vector()));
        }
    }

    /** A construction line through two points. Inputs: the points. */
    record GuideBetween() implements PathConstruction {
        @Override
        public Path apply(Values in) {
            if (in.point(0).distance(in.point(1)) < Path.COINCIDE) {
                throw Fault.of(ConstructCode.SAME_POINT);
            }
            return Path.guide(in.point(0), in.point(1));
        }
    }

    /** A straight path without its ends. Inputs: the path. */
    record GuideAlongPath(String name) implements PathConstruction {
        @Override
        public Path apply(Values in) {
            Path path = in.path(0);
            Mirror.over(path, name);
            return Path.guide(path.start(), path.end());
        }
    }

    /** A circular arc, the shorter way round. Inputs: from, to, centre. */
    record ArcBetween() implements PathConstruction {
        @Override
        public Path apply(Values in) {
            Point centre = in.point(2);
            Vector from = in.point(0).minus(centre);
            Vector to = in.point(1).minus(centre);
            if (Math.abs(from.length() - to.length()) > Condition.LENGTH_TOLERANCE) {
                throw Fault.of(ConstructCode.ARC_RADII, "first", length(from.length()), "second", length(to.length()));
            }
            if (from.length() < Path.COINCIDE || in.point(0).distance(in.point(1)) < Path.COINCIDE) {
                throw Fault.of(ConstructCode.SAME_POINT);
            }
            double sweep = StrictMath.toDegrees(StrictMath.atan2(from.cross(to), from.dot(to)));
            if (Math.abs(Math.abs(sweep) - 180) < 1e-9) {
                throw Fault.of(ConstructCode.FULL_CIRCLE);
            }
            return Path.arc(centre, from.length(), from.degrees(), sweep);
        }
    }

    /** A circular arc by its angle, positive anticlockwise as seen. Inputs: from, centre, angle. */
    record ArcSwung() implements PathConstruction {
        @Override
        public Path apply(Values in) {
            Vector from = in.point(0).minus(in.point(1));
            double sweep = in.number(2);
            if (from.length() < Path.COINCIDE || sweep == 0) {
                throw Fault.of(ConstructCode.NO_LENGTH);
            }
            return Path.arc(in.point(1), from.length(), from.degrees(), Math.max(-360, Math.min(360, sweep)));
        }
    }

    /** One path of several, each turned round if needed. Inputs: the paths. */
    record Join(List<String> names) implements PathConstruction {
        public Join {
            names = List.copyOf(names);
        }

        @Override
        public Path apply(Values in) {
            long segments = 0;
            for (int i = 0; i < names.size(); i++) {
                segments += in.path(i).segments().size();
            }
            in.effort().checkSegments(segments);
            List<Path> parts = new ArrayList<>();
            parts.add(in.path(0));
            for (int i = 1; i < names.size(); i++) {
                Path next = in.path(i);
                Path last = parts.get(i - 1);
                if (i == 1 && Math.min(gap(last.end(), next.start()), gap(last.end(), next.end())) > Path.COINCIDE) {
                    last = last.reversed();
                    parts.set(0, last);
                }
                if (gap(last.end(), next.start()) > Path.COINCIDE) {
                    next = next.reversed();
                }
                double gap = gap(last.end(), next.start());
                if (gap > Path.COINCIDE) {
                    throw Fault.of(
                            ConstructCode.JOIN_GAP,
                            "first",
                            names.get(i - 1),
                            "second",
                            names.get(i),
                            "gap",
                            length(Math.min(gap, gap(last.end(), in.path(i).start()))));
                }
                parts.add(next);
            }
            return Path.joined(parts);
        }

        private static double gap(Point a, Point b) {
            return a.distance(b);
        }
    }

    /** A stretch of a path. Inputs: path, from, to. */
    record Part(PlaceOnPath from, PlaceOnPath to) implements PathConstruction {
        @Override
        public Path apply(Values in) {
            double a = from.along(in, in.path(0));
            double b = to.along(in, in.path(0));
            if (Math.abs(a - b) < Path.COINCIDE) {
                throw Fault.of(ConstructCode.NO_LENGTH);
            }
            return in.path(0).part(a, b);
        }
    }

    /** The mirror image over a straight path. Inputs: path, mirror. */
    record Mirrored(String mirror) implements PathConstruction {
        @Override
        public Path apply(Values in) {
            return in.path(0).transformed(Mirror.over(in.path(1), mirror));
        }
    }

    /** Turned about a point. Inputs: path, angle, centre. */
    record Turned() implements PathConstruction {
        @Override
        public Path apply(Values in) {
            return in.path(0).transformed(Transform.turn(in.point(2), in.number(1)));
        }
    }

    /** The parallel copy on one side. Inputs: path, amount, then what the side needs. */
    record Parallel(Side side) implements PathConstruction {
        @Override
        public Path apply(Values in) {
            Path path = in.path(0);
            in.effort().copy(path);
            double middle = path.endless() ? 0 : path.length() / 2;
            if (side instanceof Side.Toward toward) {
                middle = path.nearest(in.point(toward.point())).s();
            }
            Vector along = path.tangent(middle);
            boolean left = side.square(in, path.at(middle), along).dot(along.left()) > 0;
            Path copy = path.parallel(left ? in.number(1) : -in.number(1));
            in.effort().copy(copy);
            return copy;
        }
    }
}
