package org.gusset.core.build;

/** An area of a draft. */
public final class Area extends Value implements Shown {
    Area(Term term) {
        super(term);
    }

    public Area plus(Area other) {
        return new Area(Sums.plus(this, other));
    }

    public Area minus(Area other) {
        return new Area(Sums.minus(this, other));
    }

    public Area times(double factor) {
        return new Area(Sums.times(this, Sums.number(factor), Kind.AREA));
    }

    public Area times(Num factor) {
        return new Area(Sums.times(this, factor.term(), Kind.AREA));
    }

    public Area over(double divisor) {
        return new Area(Sums.over(this, Sums.number(divisor), Kind.AREA));
    }

    public Area over(Num divisor) {
        return new Area(Sums.over(this, divisor.term(), Kind.AREA));
    }

    public Len over(Len length) {
        return new Len(Sums.over(this, length.term(), Kind.LENGTH));
    }

    /** How many times the other goes into this one. */
    public Num over(Area other) {
        return new Num(Sums.over(this, other.term(), Kind.NUMBER));
    }

    public Area negative() {
        return new Area(new Term.Minus(term()));
    }

    /** True where it is less than the other by more than the tolerance. */
    public Truth lessThan(Area other) {
        return Sums.less(this, other);
    }

    /** True where it is more than the other by more than the tolerance. */
    public Truth moreThan(Area other) {
        return Sums.more(this, other);
    }

    /** True where it is less than the other, or alike. */
    public Truth atMost(Area other) {
        return Sums.atMost(this, other);
    }

    /** True where it is more than the other, or alike. */
    public Truth atLeast(Area other) {
        return Sums.atLeast(this, other);
    }

    /** True where the two are the same within the tolerance. */
    public Truth alike(Area other) {
        return Sums.alike(this, other);
    }

    /** That this is as much as the other, for an unknown to be found. */
    public Equation equalTo(Area other) {
        return new Equation(this, other);
    }
}
