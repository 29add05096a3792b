package org.gusset.core.build;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.construct.Heading.Compass;
import org.gusset.core.construct.PointConstruction;
import org.gusset.core.construct.Side;

/**
 * A point of a piece, or a way to find one. Every move gives a new spot; {@link PieceBuilder#point} names it.
 *
 * <p>A spot lies in the frame of one piece. Only the origin, and what is moved from it by amounts, fits any piece.
 */
public final class Spot extends Value {
    Spot(Term term) {
        super(term);
    }

    /** The origin of the piece's frame. */
    public static Spot origin() {
        return new Spot(Term.Made.of(new PointConstruction.Origin(), List.of(), Kind.POINT, 3, p -> "origin"));
    }

    /** So far to the right of the origin and so far down. */
    public static Spot at(Len right, Len down) {
        return new Spot(Term.Made.of(
                new PointConstruction.At(),
                List.of(right.term(), down.term()),
                Kind.POINT,
                3,
                p -> "at(" + right.term().words(p) + ", " + down.term().words(p) + ")"));
    }

    /** Halfway between two points. */
    public static Spot between(Spot first, Spot second) {
        return between(first, second, new Num(Sums.number(0.5)));
    }

    /** On the line between two points, at a share of the way from the first: 0.25 is a quarter. */
    public static Spot between(Spot first, Spot second, double share) {
        return between(first, second, new Num(Sums.number(share)));
    }

    /** On the line between two points, at a share of the way from the first. */
    public static Spot between(Spot first, Spot second, Num share) {
        return new Spot(Term.Made.of(
                new PointConstruction.Between(),
                List.of(first.term(), second.term(), share.term()),
                Kind.POINT,
                0,
                p -> "between " + first.term().words(p, 1) + " and "
                        + second.term().words(p, 1)
                        + (share.term().words(p).equals("0.5")
                                ? ""
                                : " at " + share.term().words(p))));
    }

    /** Where two sweeps of the compass meet, at the one of the two places that is nearer to a point. */
    public static Spot sweeps(Len radius, Spot centre, Len otherRadius, Spot otherCentre, Spot nearest) {
        return new Spot(Term.Made.of(
                new PointConstruction.TwoSweeps(),
                List.of(radius.term(), centre.term(), otherRadius.term(), otherCentre.term(), nearest.term()),
                Kind.POINT,
                0,
                p -> "the sweeps from " + centre.term().words(p, 1) + " and "
                        + otherCentre.term().words(p, 1)));
    }

    // ---- squared moves

    public Spot right(Len amount) {
        return squared(Compass.RIGHT, amount);
    }

    public Spot left(Len amount) {
        return squared(Compass.LEFT, amount);
    }

    public Spot up(Len amount) {
        return squared(Compass.UP, amount);
    }

    public Spot down(Len amount) {
        return squared(Compass.DOWN, amount);
    }

    private Spot squared(Compass way, Len amount) {
        return moved(
                new PointConstruction.Squared(way),
                p -> way.word() + " " + amount.term().words(p),
                amount);
    }

    /** Squared to the right until it is below or above a point. */
    public Spot rightTo(Spot target) {
        return squared(Compass.RIGHT, target);
    }

    /** Squared to the left until it is below or above a point. */
    public Spot leftTo(Spot target) {
        return squared(Compass.LEFT, target);
    }

    /** Squared up until it is level with a point. */
    public Spot upTo(Spot target) {
        return squared(Compass.UP, target);
    }

    /** Squared down until it is level with a point. */
    public Spot downTo(Spot target) {
        return squared(Compass.DOWN, target);
    }

    private Spot squared(Compass way, Spot target) {
        return moved(
                new PointConstruction.SquaredToPoint(way, inner(target)),
                p -> way.word() + " to " + target.term().words(p, 1),
                target);
    }

    /** Squared to the right until a line is met. */
    public Spot rightTo(Line target) {
        return squared(Compass.RIGHT, target);
    }

    /** Squared to the left until a line is met. */
    public Spot leftTo(Line target) {
        return squared(Compass.LEFT, target);
    }

    /** Squared up until a line is met. */
    public Spot upTo(Line target) {
        return squared(Compass.UP, target);
    }

    /** Squared down until a line is met. */
    public Spot downTo(Line target) {
        return squared(Compass.DOWN, target);
    }

    private Spot squared(Compass way, Line target) {
        return moved(
                new PointConstruction.SquaredToPath(way, inner(target)),
                p -> way.word() + " to " + target.term().words(p, 1),
                target);
    }

    // ---- other moves

    /** Along the straight line to a point, by an amount. */
    public Spot toward(Spot target, Len amount) {
        return moved(
                new PointConstruction.Toward(),
                p -> "toward " + target.term().words(p, 1) + " by "
                        + amount.term().words(p),
                target,
                amount);
    }

    /** Along the straight line to a point until a line is met. */
    public Spot toward(Spot target, Line until) {
        return moved(
                new PointConstruction.TowardPath(inner(target), inner(until)),
                p -> "toward " + target.term().words(p, 1) + " to "
                        + until.term().words(p, 1),
                target,
                until);
    }

    /** Along the straight line to a point and beyond it by an amount. */
    public Spot past(Spot target, Len amount) {
        return moved(
                new PointConstruction.Past(),
                p -> "past " + target.term().words(p, 1) + " by "
                        + amount.term().words(p),
                target,
                amount);
    }

    /** At an angle, by an amount: 0 degrees is to the right, 90 up. */
    public Spot angled(Ang angle, Len amount) {
        return moved(
                new PointConstruction.Angled(),
                p -> "angled " + angle.term().words(p) + " by " + amount.term().words(p),
                angle,
                amount);
    }

    /** At an angle until a line is met. */
    public Spot angled(Ang angle, Line until) {
        return moved(
                new PointConstruction.AngledToPath(inner(until)),
                p -> "angled " + angle.term().words(p) + " to " + until.term().words(p, 1),
                angle,
                until);
    }

    /** With the compass set to a radius, from here to a line that it meets once. */
    public Spot swept(Len radius, Line to) {
        return moved(
                new PointConstruction.Swept(inner(to), false),
                p -> "swept " + radius.term().words(p) + " to " + to.term().words(p, 1),
                radius,
                to);
    }

    /** With the compass set to a radius, from here to a line, at the meeting nearest to a point. */
    public Spot swept(Len radius, Line to, Spot nearest) {
        return moved(
                new PointConstruction.Swept(inner(to), true),
                p -> "swept " + radius.term().words(p) + " to " + to.term().words(p, 1) + " nearest "
                        + nearest.term().words(p, 1),
                radius,
                to,
                nearest);
    }

    /** Square to a line, to a side of the page, by an amount. */
    public Spot squareTo(Line line, Compass side, Len amount) {
        return moved(
                new PointConstruction.SquareTo(new Side.Page(side)),
                p -> "square to " + line.term().words(p, 1) + " " + side.word() + " by "
                        + amount.term().words(p),
                line,
                amount);
    }

    /** Square to a line, to the side on which a point lies, by an amount. */
    public Spot squareTo(Line line, Spot side, Len amount) {
        return moved(
                new PointConstruction.SquareTo(new Side.Toward(3)),
                p -> "square to " + line.term().words(p, 1) + " toward "
                        + side.term().words(p, 1) + " by " + amount.term().words(p),
                line,
                amount,
                side);
    }

    /** The mirror image over a straight line. */
    public Spot mirroredOver(Line mirror) {
        return moved(
                new PointConstruction.Mirrored(inner(mirror)),
                p -> "mirrored over " + mirror.term().words(p, 1),
                mirror);
    }

    /** Turned about a point, anticlockwise as seen. */
    public Spot turned(Ang angle, Spot about) {
        return moved(
                new PointConstruction.Turned(),
                p -> "turned " + angle.term().words(p) + " about "
                        + about.term().words(p, 1),
                angle,
                about);
    }

    private Spot moved(PointConstruction move, Term.Saying saying, Value... others) {
        List<Term> inputs = new ArrayList<>(List.of(term()));
        for (Value other : others) {
            inputs.add(other.term());
        }
        Term base = term();
        return new Spot(Term.Made.of(move, inputs, Kind.POINT, 0, p -> base.words(p) + " " + saying.in(p)));
    }

    /** What a message calls a thing beside others of its own piece. */
    static String inner(Value value) {
        PieceBuilder frame = value.term().home().frame();
        return value.term().words(frame == null ? "" : frame.name());
    }

    // ---- measured

    /** The straight distance to another point of the piece. */
    public Len distance(Spot other) {
        return Measured.points(new org.gusset.core.construct.Measuring.Distance(), "distance", this, other);
    }

    /** How much higher or lower another point of the piece lies, never negative. */
    public Len height(Spot other) {
        return Measured.points(new org.gusset.core.construct.Measuring.Height(), "height", this, other);
    }

    /** How far another point of the piece lies to the side, never negative. */
    public Len width(Spot other) {
        return Measured.points(new org.gusset.core.construct.Measuring.Width(), "width", this, other);
    }

    /** The angle here between two other points of the piece, from 0 to 180 degrees. */
    public Ang angle(Spot first, Spot second) {
        return Measured.angle(first, this, second);
    }
}
