package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.construct.Compute;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.CurveConstruction;
import org.gusset.core.construct.PathConstruction;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.construct.PointConstruction;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Definition;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;
import org.gusset.core.pattern.Dart;
import org.gusset.core.pattern.DartConstruction;

/** Which stretches one goes with tape and square to find what a node stands for, read off its operation and those it rests on. */
final class WaysTaken {
    private final Evaluation evaluation;

    WaysTaken(Evaluation evaluation) {
        this.evaluation = evaluation;
    }

    /** The stretches in the order in which one goes; those of the points in between, which have no names, come first. */
    List<Lesson.Way> to(Handle<?> node) {
        List<Lesson.Way> ways = new ArrayList<>();
        try {
            walk(evaluation.graph().definition(node), ways);
        } catch (Fault fault) {
            // A branch that was not taken has no value; what was found until there is all that can be shown.
            return ways;
        }
        return ways;
    }

    private void walk(Definition<?> definition, List<Lesson.Way> ways) {
        Operation<?> operation = definition.operation();
        Values in = evaluation.inputsOf(definition.handle());
        if (operation instanceof Compute.OneOf one) {
            unnamed(definition.inputs().get(one.condition().holds(in) ? one.then() : one.otherwise()), ways);
            return;
        }
        boolean shape = operation instanceof PointConstruction
                || operation instanceof PathConstruction
                || operation instanceof CurveConstruction
                || operation instanceof DartConstruction;
        if (!shape) {
            return;
        }
        definition.inputs().forEach(input -> unnamed(input, ways));
        Object value = evaluation.value(definition.handle()).orElse(null);
        if (operation instanceof PointConstruction construction && value instanceof Point point) {
            point(construction, in, point, ways);
        } else if (operation instanceof PathConstruction.Parallel && value instanceof Path path) {
            parallel(in, path, ways);
        } else if (operation instanceof CurveConstruction.Hollowed hollowed) {
            Point foot = in.point(0).toward(in.point(1), in.number(3));
            Point hollow = foot.plus(hollowed.side()
                    .square(in, foot, in.point(1).minus(in.point(0)))
                    .times(in.number(2)));
            straight(foot, hollow, true, ways);
        } else if (value instanceof Dart dart && operation instanceof DartConstruction.OnEdge) {
            along(in.path(0), dart.from(), dart.to(), ways);
        } else if (value instanceof Dart dart && operation instanceof DartConstruction.Inside) {
            straight(
                    dart.legA().segments().get(0).end(),
                    dart.legB().segments().get(0).end(),
                    true,
                    ways);
        }
    }

    private void unnamed(Handle<?> input, List<Lesson.Way> ways) {
        if (!input.named() && evaluation.state(input) == Evaluation.State.PRESENT) {
            walk(evaluation.graph().definition(input), ways);
        }
    }

    private static void point(PointConstruction point, Values in, Point found, List<Lesson.Way> ways) {
        if (point instanceof PointConstruction.At) {
            Point corner = new Point(found.x(), 0);
            straight(Point.ORIGIN, corner, true, ways);
            straight(corner, found, true, ways);
        } else if (point instanceof PointConstruction.Squared
                || point instanceof PointConstruction.Toward
                || point instanceof PointConstruction.Angled
                || point instanceof PointConstruction.SquareTo
                || point instanceof PointConstruction.Swept) {
            straight(in.point(0), found, true, ways);
        } else if (point instanceof PointConstruction.Past) {
            straight(in.point(1), found, true, ways);
        } else if (point instanceof PointConstruction.TwoSweeps) {
            straight(in.point(1), found, true, ways);
            straight(in.point(3), found, true, ways);
        } else if (point instanceof PointConstruction.SquaredToPoint
                || point instanceof PointConstruction.SquaredToPath
                || point instanceof PointConstruction.TowardPath
                || point instanceof PointConstruction.AngledToPath) {
            straight(in.point(0), found, false, ways);
        } else if (point instanceof PointConstruction.On on) {
            on(on.place(), in, ways);
        }
    }

    private static void on(PlaceOnPath place, Values in, List<Lesson.Way> ways) {
        Path path = in.path(0);
        if (path.endless() || place instanceof PlaceOnPath.Nearest || place instanceof PlaceOnPath.AtPoint) {
            return;
        }
        double s = place.along(in, path);
        double from = 0;
        if (place instanceof PlaceOnPath.FromEnd end && !end.fromStart()) {
            from = path.length();
        } else if (place instanceof PlaceOnPath.FromPoint point) {
            from = path.nearest(in.point(point.point())).s();
        }
        along(path, from, s, ways);
    }

    /** From the middle of a path square to its parallel copy. */
    private static void parallel(Values in, Path copy, List<Lesson.Way> ways) {
        Path path = in.path(0);
        Point foot = path.endless() ? path.start() : path.at(path.length() / 2);
        Point met = copy.nearest(foot).point();
        if (Math.abs(foot.distance(met) - Math.abs(in.number(1))) < Condition.LENGTH_TOLERANCE) {
            straight(foot, met, true, ways);
        }
    }

    private static void straight(Point from, Point to, boolean measured, List<Lesson.Way> ways) {
        if (from.distance(to) > Condition.LENGTH_TOLERANCE) {
            ways.add(new Lesson.Way(Path.line(from, to), measured));
        }
    }

    private static void along(Path path, double from, double to, List<Lesson.Way> ways) {
        if (Math.abs(from - to) > Condition.LENGTH_TOLERANCE) {
            Path part = path.part(from, to);
            ways.add(new Lesson.Way(part.straight() ? Path.line(part.start(), part.end()) : part, true));
        }
    }
}
