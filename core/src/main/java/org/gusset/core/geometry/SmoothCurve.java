package org.gusset.core.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;

/**
 * Smooth curves through knots by the spline rule of John D. Hobby (Smooth, easy to compute interpolating splines, 1986). The
 * path has one cubic for each stretch between knots. Neighbouring knots that coincide (within {@link Path#COINCIDE}) count as
 * one knot, with the heading of the first of them that has one; if all coincide, the curve is one cubic without length.
 */
public final class SmoothCurve {
    /** The smallest tension. */
    public static final double LEAST_TENSION = 0.75;

    private SmoothCurve() {}

    /**
     * The open curve through two or more knots with one tension (1 unless told; at least 3/4) for every stretch.
     *
     * @throws Fault if the tension is less than 3/4
     * @throws IllegalArgumentException if there are fewer than two knots
     */
    public static Path through(List<Knot> knots, double tension) {
        return curve(knots, tension, false);
    }

    /**
     * The closed curve through two or more knots; the last stretch leads back to the first knot.
     *
     * @throws Fault if the tension is less than 3/4
     * @throws IllegalArgumentException if there are fewer than two knots
     */
    public static Path closedThrough(List<Knot> knots, double tension) {
        return curve(knots, tension, true);
    }

    private static Path curve(List<Knot> knots, double tension, boolean closed) {
        if (!(tension >= LEAST_TENSION)) {
            throw Fault.of(GeometryCode.TENSION, "tension", Fact.number(tension), "least", Fact.number(LEAST_TENSION));
        }
        if (knots.size() < 2) {
            throw new IllegalArgumentException("a smooth curve needs two knots");
        }
        List<Knot> apart = apart(knots, closed);
        if (apart.size() < 2) {
            Point p = apart.get(0).point();
            return Path.of(new CubicSegment(p, p, p, p));
        }
        List<HobbySpline.Node> nodes = new ArrayList<>();
        for (Knot knot : apart) {
            HobbySpline.Side side = knot.heading().isPresent()
                    ? HobbySpline.Side.heading(knot.heading().getAsDouble(), tension)
                    : HobbySpline.Side.open(tension);
            nodes.add(new HobbySpline.Node(knot.point(), side, side));
        }
        if (!closed) {
            int last = nodes.size() - 1;
            nodes.set(0, ended(apart.get(0), nodes.get(0), tension));
            nodes.set(last, ended(apart.get(last), nodes.get(last), tension));
        }
        return Path.of(HobbySpline.through(nodes, closed));
    }

    private static HobbySpline.Node ended(Knot knot, HobbySpline.Node node, double tension) {
        if (knot.heading().isPresent()) {
            return node;
        }
        HobbySpline.Side curl = HobbySpline.Side.curl(knot.curl(), tension);
        return new HobbySpline.Node(node.point(), curl, curl);
    }

    /** The knots with neighbours that coincide made one. */
    private static List<Knot> apart(List<Knot> knots, boolean closed) {
        List<Knot> out = new ArrayList<>();
        for (Knot knot : knots) {
            int last = out.size() - 1;
            if (last >= 0 && out.get(last).point().distance(knot.point()) <= Path.COINCIDE) {
                out.set(last, merged(out.get(last), knot));
            } else {
                out.add(knot);
            }
        }
        int last = out.size() - 1;
        if (closed && last > 0 && out.get(last).point().distance(out.get(0).point()) <= Path.COINCIDE) {
            out.set(0, merged(out.get(0), out.remove(last)));
        }
        return out;
    }

    private static Knot merged(Knot first, Knot second) {
        OptionalDouble heading = first.heading().isPresent() ? first.heading() : second.heading();
        return new Knot(first.point(), heading, first.curl());
    }
}
