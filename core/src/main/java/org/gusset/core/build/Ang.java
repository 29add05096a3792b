package org.gusset.core.build;

/** An angle of a draft; angles turn anticlockwise as seen. */
public final class Ang extends Value implements Shown {
    Ang(Term term) {
        super(term);
    }

    public Ang plus(Ang other) {
        return new Ang(Sums.plus(this, other));
    }

    public Ang minus(Ang other) {
        return new Ang(Sums.minus(this, other));
    }

    public Ang times(double factor) {
        return new Ang(Sums.times(this, Sums.number(factor), Kind.ANGLE));
    }

    public Ang times(Num factor) {
        return new Ang(Sums.times(this, factor.term(), Kind.ANGLE));
    }

    public Ang over(double divisor) {
        return new Ang(Sums.over(this, Sums.number(divisor), Kind.ANGLE));
    }

    public Ang over(Num divisor) {
        return new Ang(Sums.over(this, divisor.term(), Kind.ANGLE));
    }

    /** How many times the other goes into this one. */
    public Num over(Ang other) {
        return new Num(Sums.over(this, other.term(), Kind.NUMBER));
    }

    public Ang negative() {
        return new Ang(new Term.Minus(term()));
    }

    /** True where it is less than the other by more than the tolerance. */
    public Truth lessThan(Ang other) {
        return Sums.less(this, other);
    }

    /** True where it is more than the other by more than the tolerance. */
    public Truth moreThan(Ang other) {
        return Sums.more(this, other);
    }

    /** True where it is less than the other, or alike. */
    public Truth atMost(Ang other) {
        return Sums.atMost(this, other);
    }

    /** True where it is more than the other, or alike. */
    public Truth atLeast(Ang other) {
        return Sums.atLeast(this, other);
    }

    /** True where the two are the same within the tolerance. */
    public Truth alike(Ang other) {
        return Sums.alike(this, other);
    }

    /** That this is as much as the other, for an unknown to be found. */
    public Equation equalTo(Ang other) {
        return new Equation(this, other);
    }
}
