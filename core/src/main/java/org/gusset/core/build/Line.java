package org.gusset.core.build;

import java.util.List;
import org.gusset.core.construct.Heading.Compass;
import org.gusset.core.construct.PathConstruction;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.construct.PointConstruction;
import org.gusset.core.construct.Side;
import org.jspecify.annotations.Nullable;

/** A line, curve, arc or guide of a piece. {@link PieceBuilder} draws and names them. */
public final class Line extends Value implements Sewable {
    private final boolean endless;
    private final @Nullable Line whole;

    Line(Term term) {
        this(term, false, null);
    }

    private Line(Term term, boolean endless, @Nullable Line whole) {
        super(term);
        this.endless = endless;
        this.whole = whole;
    }

    static Line endless(Term term) {
        return new Line(term, true, null);
    }

    boolean hasEnds() {
        return !endless;
    }

    /** The edge of which this is a part; null if it is none. */
    @Nullable
    Line whole() {
        return whole;
    }

    /** Refuses a guide where ends are needed. */
    void withEnds(String cannot) {
        if (endless) {
            throw new IllegalArgumentException("`" + this + "` is a guide without ends and " + cannot);
        }
    }

    // ---- places

    /** At a share of the length, from the start: 0.5 is halfway. */
    public OnLine at(double share) {
        return OnLine.share(this, new Num(Sums.number(share)));
    }

    /** At a share of the length, from the start. */
    public OnLine at(Num share) {
        return OnLine.share(this, share);
    }

    /** At a length from the start. */
    public OnLine at(Len fromStart) {
        return OnLine.fromEnd(this, fromStart, true);
    }

    /** At a length from the end. */
    public OnLine fromEnd(Len amount) {
        return OnLine.fromEnd(this, amount, false);
    }

    /** At a length from a point that lies on the line: onward, or back where the point is the line's end. */
    public OnLine at(Len amount, Spot from) {
        return OnLine.fromPoint(this, amount, from);
    }

    /** In the middle. */
    public OnLine halfway() {
        return at(0.5);
    }

    /** At the place nearest to a point. */
    public OnLine nearest(Spot point) {
        return OnLine.nearest(this, point);
    }

    public Spot start() {
        return end(true);
    }

    public Spot end() {
        return end(false);
    }

    private Spot end(boolean start) {
        withEnds("has neither start nor end");
        return new Spot(Term.Made.of(
                new PointConstruction.EndOf(start),
                List.of(term()),
                Kind.POINT,
                3,
                p -> term().words(p) + (start ? ".start" : ".end")));
    }

    /** Where it meets another line, which it must do once. */
    public Spot meets(Line other) {
        return new Spot(Term.Made.of(
                new PointConstruction.Meets(Spot.inner(this), Spot.inner(other), false),
                List.of(term(), other.term()),
                Kind.POINT,
                0,
                p -> term().words(p, 1) + " meets " + other.term().words(p, 1)));
    }

    /** Where it meets another line, at the meeting nearest to a point. */
    public Spot meets(Line other, Spot nearest) {
        return new Spot(Term.Made.of(
                new PointConstruction.Meets(Spot.inner(this), Spot.inner(other), true),
                List.of(term(), other.term(), nearest.term()),
                Kind.POINT,
                0,
                p -> term().words(p, 1) + " meets " + other.term().words(p, 1) + " nearest "
                        + nearest.term().words(p, 1)));
    }

    // ---- other lines

    /** The stretch between two points that lie on it. */
    public Line part(Spot from, Spot to) {
        Inputs in = new Inputs(term());
        String name = Spot.inner(this);
        PathConstruction.Part part = new PathConstruction.Part(
                new PlaceOnPath.AtPoint(in.add(from.term()), Spot.inner(from), name),
                new PlaceOnPath.AtPoint(in.add(to.term()), Spot.inner(to), name));
        Term term = Term.Made.of(
                part,
                in.terms(),
                Kind.PATH,
                0,
                p -> "part of " + term().words(p, 1) + " between " + from.term().words(p, 1) + " and "
                        + to.term().words(p, 1));
        return new Line(term, false, this);
    }

    /** The parallel copy at a distance, on a side of the page. */
    public Line parallel(Len distance, Compass side) {
        return new Line(
                Term.Made.of(
                        new PathConstruction.Parallel(new Side.Page(side)),
                        List.of(term(), distance.term()),
                        Kind.PATH,
                        0,
                        p -> term().words(p) + " parallel " + side.word() + " by "
                                + distance.term().words(p)),
                endless,
                null);
    }

    /** The parallel copy at a distance, on the side on which a point lies. */
    public Line parallel(Len distance, Spot side) {
        return new Line(
                Term.Made.of(
                        new PathConstruction.Parallel(new Side.Toward(2)),
                        List.of(term(), distance.term(), side.term()),
                        Kind.PATH,
                        0,
                        p -> term().words(p) + " parallel toward " + side.term().words(p, 1) + " by "
                                + distance.term().words(p)),
                endless,
                null);
    }

    /** The mirror image over a straight line. */
    public Line mirroredOver(Line mirror) {
        return new Line(
                Term.Made.of(
                        new PathConstruction.Mirrored(Spot.inner(mirror)),
                        List.of(term(), mirror.term()),
                        Kind.PATH,
                        0,
                        p -> term().words(p) + " mirrored over " + mirror.term().words(p, 1)),
                endless,
                null);
    }

    /** Turned about a point, anticlockwise as seen. */
    public Line turned(Ang angle, Spot about) {
        return new Line(
                Term.Made.of(
                        new PathConstruction.Turned(),
                        List.of(term(), angle.term(), about.term()),
                        Kind.PATH,
                        0,
                        p -> term().words(p) + " turned " + angle.term().words(p) + " about "
                                + about.term().words(p, 1)),
                endless,
                null);
    }

    // ---- lengths

    /** Its length. */
    public Len length() {
        return Measured.length(this);
    }

    /** Its length less what darts, gathers and pleats take up. */
    public Len sewn() {
        return Measured.sewn(this);
    }

    /** This edge in all the copies of its piece that are worn. */
    public AllCopies all() {
        if (!(term() instanceof Term.Ref)) {
            throw new IllegalArgumentException("`" + this + "` has no name; only an edge has copies that are worn");
        }
        return new AllCopies(this);
    }
}
