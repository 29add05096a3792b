package org.gusset.core.build;

/** A length of a draft: a measure, a choice, a sum, or something taken off a shape. */
public final class Len extends Value implements Shown {
    Len(Term term) {
        super(term);
    }

    public Len plus(Len other) {
        return new Len(Sums.plus(this, other));
    }

    public Len minus(Len other) {
        return new Len(Sums.minus(this, other));
    }

    public Len times(double factor) {
        return new Len(Sums.times(this, Sums.number(factor), Kind.LENGTH));
    }

    public Len times(Num factor) {
        return new Len(Sums.times(this, factor.term(), Kind.LENGTH));
    }

    public Len over(double divisor) {
        return new Len(Sums.over(this, Sums.number(divisor), Kind.LENGTH));
    }

    public Len over(Num divisor) {
        return new Len(Sums.over(this, divisor.term(), Kind.LENGTH));
    }

    /** A length by a length is an area. */
    public Area times(Len other) {
        return new Area(Sums.times(this, other.term(), Kind.AREA));
    }

    /** How many times the other goes into this one. */
    public Num over(Len other) {
        return new Num(Sums.over(this, other.term(), Kind.NUMBER));
    }

    public Len negative() {
        return new Len(new Term.Minus(term()));
    }

    /** True where it is less than the other by more than the tolerance. */
    public Truth lessThan(Len other) {
        return Sums.less(this, other);
    }

    /** True where it is more than the other by more than the tolerance. */
    public Truth moreThan(Len other) {
        return Sums.more(this, other);
    }

    /** True where it is less than the other, or alike. */
    public Truth atMost(Len other) {
        return Sums.atMost(this, other);
    }

    /** True where it is more than the other, or alike. */
    public Truth atLeast(Len other) {
        return Sums.atLeast(this, other);
    }

    /** True where the two are the same within the tolerance. */
    public Truth alike(Len other) {
        return Sums.alike(this, other);
    }

    /** That this is as much as the other, for an unknown to be found. */
    public Equation equalTo(Len other) {
        return new Equation(this, other);
    }
}
