package org.gusset.core.pattern;

import static org.gusset.core.diagnostic.Fact.length;

import java.util.List;
import java.util.Optional;
import org.gusset.core.construct.ConstructCode;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.NotWhole;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.geometry.Path;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;

/**
 * A stretch of an edge brought in to a length. Darts that lie within it count as sewn. Input 0 is the edge; the others are named by
 * what needs them.
 *
 * @param edge the edge's name
 * @param finished the length to which the stretch is brought in
 * @param between the ends of the stretch; the whole edge if empty
 * @param darts inputs: the darts of the edge
 * @param pleats how it is pleated; gathered if empty
 */
public record FullnessConstruction(
        String edge, Formula finished, Optional<Between> between, List<Integer> darts, Optional<Pleating> pleats)
        implements Operation<Fullness> {
    /** Two places on the edge, in either order. */
    public record Between(PlaceOnPath first, PlaceOnPath second) {}

    /**
     * Pleats.
     *
     * @param pressedToward the input with the point toward which knife pleats are pressed; toward the edge's start if empty
     */
    public record Pleating(Formula count, boolean box, Optional<Integer> pressedToward) {}

    /** The most pleats that an edge may have. */
    private static final int MOST = 1000;

    public FullnessConstruction {
        darts = List.copyOf(darts);
    }

    @Override
    public Fullness apply(Values in) {
        Path path = in.path(0);
        double from = 0;
        double to = path.length();
        if (between.isPresent()) {
            double a = between.get().first().along(in, path);
            double b = between.get().second().along(in, path);
            from = Math.min(a, b);
            to = Math.max(a, b);
        }
        if (to - from < Path.COINCIDE) {
            throw Fault.of(FullnessCode.NO_STRETCH, "edge", edge, "distance", length(to - from));
        }
        double sewn = to - from;
        for (int input : darts) {
            Dart dart = (Dart) in.get(input);
            if (dart.from() >= from - Path.COINCIDE && dart.to() <= to + Path.COINCIDE) {
                sewn -= dart.intake();
            }
        }
        double wanted = finished.number(in);
        if (!(wanted > 0 && wanted <= sewn + Path.COINCIDE)) {
            throw Fault.of(FullnessCode.NOT_SHORTER, "edge", edge, "length", length(sewn), "to", length(wanted));
        }
        double first = from;
        double last = to;
        Optional<Fullness.Pleats> folded = pleats.map(p -> pleats(p, in, path, (first + last) / 2));
        return new Fullness(edge, from, to, Math.max(0, sewn - wanted), folded);
    }

    private static Fullness.Pleats pleats(Pleating pleating, Values in, Path path, double middle) {
        double wanted = pleating.count().number(in);
        long count = Math.round(wanted);
        if (Math.abs(count - wanted) > 1e-9 || count < 1 || count > MOST) {
            throw Fault.of(ConstructCode.NOT_WHOLE, NotWhole.facts(1, wanted));
        }
        boolean towardEnd = pleating.pressedToward().isPresent()
                && path.nearest(in.point(pleating.pressedToward().get())).s() > middle;
        return new Fullness.Pleats((int) count, pleating.box(), towardEnd);
    }
}
