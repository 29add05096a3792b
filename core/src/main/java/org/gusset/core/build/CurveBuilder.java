package org.gusset.core.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.construct.CurveConstruction;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.Heading;
import org.jspecify.annotations.Nullable;

/** A smooth curve while its points are told; {@link #to} ends it. */
public final class CurveBuilder {
    private final PieceBuilder piece;
    private final String name;
    private final List<Spot> points = new ArrayList<>();
    private final List<Optional<Way>> ways = new ArrayList<>();
    private @Nullable Num tension;
    private boolean ended;

    CurveBuilder(PieceBuilder piece, String name) {
        this.piece = piece;
        this.name = name;
    }

    /** The first point; the curve leaves it as is smoothest. */
    public CurveBuilder from(Spot point) {
        return first(point, Optional.empty());
    }

    /** The first point, and the way in which the curve leaves it. */
    public CurveBuilder from(Spot point, Way heading) {
        return first(point, Optional.of(heading));
    }

    private CurveBuilder first(Spot point, Optional<Way> heading) {
        if (!points.isEmpty()) {
            throw new IllegalStateException("the curve `" + name + "` begins twice");
        }
        return knot(point, heading);
    }

    /** A point that the curve runs through. */
    public CurveBuilder through(Spot point) {
        return knot(point, Optional.empty());
    }

    /** A point that the curve runs through, and the way in which it does so. */
    public CurveBuilder through(Spot point, Way heading) {
        return knot(point, Optional.of(heading));
    }

    /** How tight the curve is drawn: 1 unless told, more is straighter, 0.75 the least. */
    public CurveBuilder tension(double amount) {
        return tension(new Num(Sums.number(amount)));
    }

    /** How tight the curve is drawn: 1 unless told, more is straighter, 0.75 the least. */
    public CurveBuilder tension(Num amount) {
        this.tension = piece.draft().own(amount);
        return this;
    }

    /** The last point. */
    public Line to(Spot point) {
        return end(point, Optional.empty());
    }

    /** The last point, and the way in which the curve comes in there. */
    public Line to(Spot point, Way heading) {
        return end(point, Optional.of(heading));
    }

    private CurveBuilder knot(Spot point, Optional<Way> heading) {
        points.add(piece.own(point));
        ways.add(heading);
        return this;
    }

    private Line end(Spot point, Optional<Way> heading) {
        if (points.isEmpty() || ended) {
            throw new IllegalStateException(
                    "the curve `" + name + "` " + (ended ? "ends twice" : "ends before it begins with from(...)"));
        }
        knot(point, heading);
        ended = true;
        Inputs in = new Inputs();
        points.forEach(p -> in.add(p.term()));
        List<Optional<Heading>> headings = new ArrayList<>();
        for (Optional<Way> way : ways) {
            headings.add(way.map(w -> w.heading(in)));
        }
        Optional<Formula> tight = tension == null ? Optional.empty() : Optional.of(in.formula(tension.term()));
        Term term = Term.Made.of(
                new CurveConstruction.Spline(headings, tight), in.terms(), Kind.PATH, 0, p -> "the curve " + name);
        return piece.drawn(name, "a curve", new Line(term));
    }

    boolean ended() {
        return ended;
    }

    @Override
    public String toString() {
        return piece.name() + "." + name;
    }
}
