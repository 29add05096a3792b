package org.gusset.core.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.geometry.Knot;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.SmoothCurve;
import org.gusset.core.geometry.Vector;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;

/** The ways to draw a smooth curve. */
public sealed interface CurveConstruction extends Operation<Path> {
    /**
     * Through points with headings. Inputs: the points, then what headings and tension need.
     *
     * @param headings one for each point, empty where the curve is free
     * @param tension 1 if empty
     */
    record Spline(List<Optional<Heading>> headings, Optional<Formula> tension) implements CurveConstruction {
        /** The least tension for which the rule of the spline holds. */
        private static final double LEAST_TENSION = 0.75;

        public Spline {
            headings = List.copyOf(headings);
        }

        @Override
        public Path apply(Values in) {
            int last = headings.size() - 1;
            double tight = tension.isPresent() ? tension.get().number(in) : 1;
            if (tight < LEAST_TENSION) {
                throw Fault.of(ConstructCode.BAD_TENSION, "tension", Fact.number(tight));
            }
            List<Knot> knots = new ArrayList<>();
            for (int i = 0; i <= last; i++) {
                Point at = in.point(i);
                if (i > 0 && at.distance(in.point(i - 1)) < Path.COINCIDE) {
                    throw Fault.of(ConstructCode.SAME_POINT);
                }
                Vector onward =
                        i == 0 ? new Vector(0, 0) : at.minus(in.point(i - 1)).unit();
                if (i < last) {
                    onward = onward.plus(in.point(i + 1).minus(at).unit());
                }
                OptionalDouble heading = headings.get(i).isPresent()
                        ? OptionalDouble.of(headings.get(i).get().degrees(in, at, onward))
                        : OptionalDouble.empty();
                knots.add(new Knot(at, heading, 1));
            }
            return SmoothCurve.through(knots, tight);
        }
    }

    /**
     * A line bent to one side by an amount, at a share of the way (the half unless told): the smooth curve through the two ends
     * and the hollow, where it runs level with the line. Inputs: from, to, amount, share, then what the side needs.
     */
    record Hollowed(Side side) implements CurveConstruction {
        @Override
        public Path apply(Values in) {
            Point from = in.point(0);
            Point to = in.point(1);
            Vector along = to.minus(from);
            if (along.length() < Path.COINCIDE) {
                throw Fault.of(ConstructCode.SAME_POINT);
            }
            double amount = in.number(2);
            double share = in.number(3);
            if (!(share > 0 && share < 1)) {
                throw Fault.of(
                        ConstructCode.BEYOND_PATH,
                        "path",
                        "the line",
                        "length",
                        Fact.length(along.length()),
                        "amount",
                        Fact.length(share * along.length()));
            }
            Point foot = from.toward(to, share);
            Point hollow = foot.plus(side.square(in, foot, along).times(amount));
            return SmoothCurve.through(List.of(Knot.at(from), Knot.at(hollow, along.degrees()), Knot.at(to)), 1);
        }
    }
}
