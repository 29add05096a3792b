package org.gusset.core.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.pattern.FullnessConstruction;
import org.jspecify.annotations.Nullable;

/** Gathers and pleats of a piece. */
final class Fullnesses {
    /** How an edge is pleated. */
    record Pleats(Num count, boolean box, @Nullable Spot pressedToward) {}

    /** One stretch of an edge that is brought in. */
    record One(Symbol symbol, String edge) {}

    private Fullnesses() {}

    /** What brings in an edge, as a term; the darts are those that are drawn by then. */
    static Term of(
            PieceBuilder piece, Line edge, Len to, @Nullable Spot from, @Nullable Spot until, @Nullable Pleats pleats) {
        String name = piece.nameOf(edge);
        Inputs in = new Inputs(edge.term());
        Formula finished = in.formula(to.term());
        Optional<FullnessConstruction.Between> between = from == null || until == null
                ? Optional.empty()
                : Optional.of(new FullnessConstruction.Between(place(from, name, in), place(until, name, in)));
        List<Integer> darts = new ArrayList<>();
        for (Symbol dart : piece.dartsOn(name)) {
            darts.add(in.add(new Term.Ref(dart)));
        }
        Optional<FullnessConstruction.Pleating> pleating = Optional.empty();
        if (pleats != null) {
            Formula count = in.formula(pleats.count().term());
            Spot pressed = pleats.pressedToward();
            pleating = Optional.of(new FullnessConstruction.Pleating(
                    count, pleats.box(), pressed == null ? Optional.empty() : Optional.of(in.add(pressed.term()))));
        }
        return Term.Made.of(
                new FullnessConstruction(name, finished, between, darts, pleating),
                in.terms(),
                Kind.FULLNESS,
                3,
                p -> "the fullness of " + edge.term().words(p));
    }

    private static PlaceOnPath place(Spot point, String edge, Inputs in) {
        return new PlaceOnPath.AtPoint(in.add(point.term()), Spot.inner(point), edge);
    }
}
