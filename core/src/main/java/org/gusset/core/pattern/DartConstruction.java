package org.gusset.core.pattern;

import static org.gusset.core.diagnostic.Fact.length;

import java.util.List;
import java.util.Optional;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.construct.Side;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.geometry.Knot;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.SmoothCurve;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;

/** Darts and what is taken off them. */
public sealed interface DartConstruction {
    /**
     * A dart that opens an edge: half of its intake on each side of a place, measured along the edge. The shorter leg is lengthened
     * to match the longer one. Its peak lies where the edge beside the leg toward which it is pressed, turned over that leg, meets the
     * fold line, so that the edge is straight when the dart is pressed.
     *
     * <p>Inputs: the edge, the intake, the tip, and then what place, side and pressing need.
     *
     * @param name the dart's name
     * @param place its middle on the edge
     * @param curved the side to which leg A is hollowed, leg B being its mirror image, and by how much
     * @param pressedToward the input with the point toward which it is pressed; toward the edge's start if empty
     */
    record OnEdge(String name, PlaceOnPath place, Optional<Hollow> curved, Optional<Integer> pressedToward)
            implements DartConstruction, Operation<Dart> {
        @Override
        public Dart apply(Values in) {
            Path edge = in.path(0);
            double intake = in.number(1);
            Point tip = in.point(2);
            if (intake < 0) {
                throw Fault.of(DartCode.NEGATIVE, "dart", name, "intake", length(intake));
            }
            double middle = place.along(in, edge);
            double from = middle - intake / 2;
            double to = middle + intake / 2;
            if (from < -Path.COINCIDE || to > edge.length() + Path.COINCIDE) {
                throw Fault.of(
                        DartCode.TOO_WIDE,
                        "dart",
                        name,
                        "intake",
                        length(intake),
                        "at",
                        length(middle),
                        "length",
                        length(edge.length()));
            }
            from = Math.max(0, from);
            to = Math.min(edge.length(), to);
            Point a = edge.at(from);
            Point b = edge.at(to);
            if (a.distance(tip) < Path.COINCIDE || b.distance(tip) < Path.COINCIDE) {
                throw Fault.of(DartCode.TIP_ON_EDGE, "dart", name);
            }
            double leg = Math.max(a.distance(tip), b.distance(tip));
            Point legA = tip.plus(a.minus(tip).unit().times(leg));
            Point legB = tip.plus(b.minus(tip).unit().times(leg));
            Path straightA = Path.line(legA, tip);
            Path legAPath = curved.isPresent() ? curved.get().bend(in, straightA) : straightA;
            Vector fold = legA.minus(tip).unit().plus(legB.minus(tip).unit());
            Path legBPath =
                    curved.isPresent() ? legAPath.transformed(Transform.mirror(tip, fold)) : Path.line(legB, tip);
            boolean towardEnd = pressedToward.isPresent()
                    && edge.nearest(in.point(pressedToward.get())).s() > (from + to) / 2;
            return Dart.of(name, edge, from, to, legAPath, legBPath, towardEnd);
        }
    }

    /** A leg bent to a side by an amount, at its middle. */
    record Hollow(Side side, Formula amount) {
        Path bend(Values in, Path leg) {
            Vector along = leg.end().minus(leg.start());
            Point foot = leg.start().toward(leg.end(), 0.5);
            Point hollow = foot.plus(side.square(in, foot, along).times(amount.number(in)));
            return SmoothCurve.through(
                    List.of(Knot.at(leg.start()), Knot.at(hollow, along.degrees()), Knot.at(leg.end())), 1);
        }
    }

    /**
     * A double-ended dart inside a piece: from one point to another, open by its intake at a third. Its legs are drawn as one path each.
     * Inputs: from, to, intake, at.
     */
    record Inside(String name) implements DartConstruction, Operation<Dart> {
        @Override
        public Dart apply(Values in) {
            Point from = in.point(0);
            Point to = in.point(1);
            double intake = in.number(2);
            if (intake < 0) {
                throw Fault.of(DartCode.NEGATIVE, "dart", name, "intake", length(intake));
            }
            Vector along = to.minus(from);
            if (along.length() < Path.COINCIDE) {
                throw Fault.of(DartCode.TIP_ON_EDGE, "dart", name);
            }
            Vector half = along.unit().left().times(intake / 2);
            Point a = in.point(3).plus(half);
            Point b = in.point(3).plus(half.opposite());
            Path legA = Path.line(from, a, to);
            Path legB = Path.line(from, b, to);
            return new Dart(name, 0, intake, legA, legB, Path.line(to, from), 0, false);
        }
    }

    /** What an edge is less when a dart is sewn or its fullness brought in, in mm. Inputs: the dart or fullness. */
    record Intake() implements DartConstruction, Operation<Double> {
        @Override
        public Double apply(Values in) {
            return ((TakenUp) in.get(0)).intake();
        }
    }

    /** The angle at the tip in degrees. Inputs: the dart. */
    record Angle() implements DartConstruction, Operation<Double> {
        @Override
        public Double apply(Values in) {
            return ((Dart) in.get(0)).angle();
        }
    }

    /** The tip. Inputs: the dart. */
    record Tip() implements DartConstruction, Operation<Point> {
        @Override
        public Point apply(Values in) {
            return ((Dart) in.get(0)).tip();
        }
    }

    /** A leg or the fold line. Inputs: the dart. */
    record Line(Part part) implements DartConstruction, Operation<Path> {
        @Override
        public Path apply(Values in) {
            Dart dart = (Dart) in.get(0);
            return switch (part) {
                case LEG_A -> dart.legA();
                case LEG_B -> dart.legB();
                case FOLD_LINE -> dart.foldLine();
            };
        }
    }

    /** The lines of a dart. */
    enum Part {
        LEG_A,
        LEG_B,
        FOLD_LINE
    }
}
