package org.gusset.core.build;

/** A plain number of a draft: how many, how many times, a share. */
public final class Num extends Value implements Shown {
    Num(Term term) {
        super(term);
    }

    public Num plus(Num other) {
        return new Num(Sums.plus(this, other));
    }

    public Num minus(Num other) {
        return new Num(Sums.minus(this, other));
    }

    public Num times(double factor) {
        return new Num(Sums.times(this, Sums.number(factor), Kind.NUMBER));
    }

    public Num times(Num factor) {
        return new Num(Sums.times(this, factor.term(), Kind.NUMBER));
    }

    public Num over(double divisor) {
        return new Num(Sums.over(this, Sums.number(divisor), Kind.NUMBER));
    }

    public Num over(Num divisor) {
        return new Num(Sums.over(this, divisor.term(), Kind.NUMBER));
    }

    public Num plus(double other) {
        return plus(new Num(Sums.number(other)));
    }

    public Num minus(double other) {
        return minus(new Num(Sums.number(other)));
    }

    public Len times(Len length) {
        return new Len(Sums.times(this, length.term(), Kind.LENGTH));
    }

    public Ang times(Ang angle) {
        return new Ang(Sums.times(this, angle.term(), Kind.ANGLE));
    }

    public Area times(Area area) {
        return new Area(Sums.times(this, area.term(), Kind.AREA));
    }

    public Num negative() {
        return new Num(new Term.Minus(term()));
    }

    /** True where it is less than the other by more than the tolerance. */
    public Truth lessThan(Num other) {
        return Sums.less(this, other);
    }

    /** True where it is more than the other by more than the tolerance. */
    public Truth moreThan(Num other) {
        return Sums.more(this, other);
    }

    /** True where it is less than the other, or alike. */
    public Truth atMost(Num other) {
        return Sums.atMost(this, other);
    }

    /** True where it is more than the other, or alike. */
    public Truth atLeast(Num other) {
        return Sums.atLeast(this, other);
    }

    /** True where the two are the same within the tolerance. */
    public Truth alike(Num other) {
        return Sums.alike(this, other);
    }

    /** That this is as much as the other, for an unknown to be found. */
    public Equation equalTo(Num other) {
        return new Equation(this, other);
    }
}
