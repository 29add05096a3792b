package org.gusset.core.build;

import java.util.List;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.Measuring;

/** Amounts taken off shapes; meant to be imported statically. Shapes that are measured together must lie in one piece. */
public final class Measured {
    private Measured() {}

    /** The straight distance of two points. */
    public static Len distance(Spot first, Spot second) {
        return first.distance(second);
    }

    /** How much higher or lower one point is, never negative. */
    public static Len height(Spot first, Spot second) {
        return first.height(second);
    }

    /** How far apart two points are across, never negative. */
    public static Len width(Spot first, Spot second) {
        return first.width(second);
    }

    /** The angle at the second of three points, from 0 to 180 degrees. */
    public static Ang angle(Spot first, Spot at, Spot second) {
        List<Term> terms = List.of(first.term(), at.term(), second.term());
        return new Ang(Term.Made.of(
                new Measuring.AngleAt(), terms, Kind.ANGLE, 3, p -> "angle(" + Term.joined(terms, p) + ")"));
    }

    /** The lengths of lines added up; they may lie in several pieces. */
    public static Len length(Sewable first, Sewable... others) {
        return sum(first, others, false);
    }

    /** The lengths of lines added up, less what darts, gathers and pleats take up. */
    public static Len sewn(Sewable first, Sewable... others) {
        return sum(first, others, true);
    }

    private static Len sum(Sewable first, Sewable[] others, boolean sewn) {
        Term sum = length(first, sewn);
        for (Sewable other : others) {
            sum = Term.Arithmetic.of(Formula.Sign.PLUS, sum, length(other, sewn), Kind.LENGTH);
        }
        return new Len(sum);
    }

    private static Term length(Sewable line, boolean sewn) {
        if (line instanceof AllCopies all) {
            return Term.EdgeLength.of(all.edge().term(), sewn, true);
        }
        Line one = (Line) line;
        one.withEnds("has no length");
        return Term.EdgeLength.of(one.term(), sewn, false);
    }

    static Len points(Measuring measuring, String function, Spot first, Spot second) {
        List<Term> terms = List.of(first.term(), second.term());
        return new Len(
                Term.Made.of(measuring, terms, Kind.LENGTH, 3, p -> function + "(" + Term.joined(terms, p) + ")"));
    }
}
