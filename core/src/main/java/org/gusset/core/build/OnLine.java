package org.gusset.core.build;

import java.util.List;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.construct.PointConstruction;

/** A place on a line: where a notch is cut or a dart stands; {@link #spot()} is the point there. */
public final class OnLine {
    /** How a place is told. */
    private sealed interface Way {
        /** A share of the length. */
        record Share(Term share) implements Way {}

        /** A length from an end. */
        record FromEnd(Term amount, boolean start) implements Way {}

        /** A length from a point on the line. */
        record FromPoint(Term amount, Term point) implements Way {}

        /** Nearest to a point. */
        record Nearest(Term point) implements Way {}
    }

    private final Line line;
    private final Way way;

    private OnLine(Line line, Way way) {
        this.line = line;
        this.way = way;
    }

    static OnLine share(Line line, Num share) {
        return new OnLine(line, new Way.Share(share.term()));
    }

    static OnLine fromEnd(Line line, Len amount, boolean start) {
        return new OnLine(line, new Way.FromEnd(amount.term(), start));
    }

    static OnLine fromPoint(Line line, Len amount, Spot point) {
        return new OnLine(line, new Way.FromPoint(amount.term(), point.term()));
    }

    static OnLine nearest(Line line, Spot point) {
        return new OnLine(line, new Way.Nearest(point.term()));
    }

    Line line() {
        return line;
    }

    /** The point there. */
    public Spot spot() {
        Inputs in = new Inputs(line.term());
        PlaceOnPath place = place(in);
        return new Spot(Term.Made.of(new PointConstruction.On(place), in.terms(), Kind.POINT, 0, this::words));
    }

    /** The place for an operation, whose inputs it adds to. */
    PlaceOnPath place(Inputs in) {
        if (way instanceof Way.Share share) {
            return new PlaceOnPath.Share(in.formula(share.share()));
        } else if (way instanceof Way.FromEnd end) {
            return new PlaceOnPath.FromEnd(in.formula(end.amount()), end.start(), Spot.inner(line));
        } else if (way instanceof Way.FromPoint from) {
            return new PlaceOnPath.FromPoint(
                    in.formula(from.amount()),
                    in.add(from.point()),
                    from.point().words(frame()),
                    Spot.inner(line));
        }
        return new PlaceOnPath.Nearest(in.add(((Way.Nearest) way).point()));
    }

    /** What comes of the place's own inputs, for whoever must know whether they are of one draft and piece. */
    List<Term> terms() {
        Inputs in = new Inputs(line.term());
        place(in);
        return in.terms();
    }

    private String frame() {
        PieceBuilder frame = line.term().home().frame();
        return frame == null ? "" : frame.name();
    }

    private String words(String piece) {
        String on = "on " + line.term().words(piece, 1);
        if (way instanceof Way.Share share) {
            return on + " at " + share.share().words(piece, 2);
        } else if (way instanceof Way.FromEnd end) {
            return on + " at " + end.amount().words(piece) + (end.start() ? "" : " from end");
        } else if (way instanceof Way.FromPoint from) {
            return on + " at " + from.amount().words(piece) + " from "
                    + from.point().words(piece, 1);
        }
        return on + " nearest " + ((Way.Nearest) way).point().words(piece, 1);
    }

    @Override
    public String toString() {
        return words("");
    }
}
