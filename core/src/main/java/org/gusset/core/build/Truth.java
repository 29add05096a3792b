package org.gusset.core.build;

/** A yes or no of a draft: a choice, a comparison, or several of them together. */
public final class Truth extends Value implements Shown {
    Truth(Term term) {
        super(term);
    }

    /** True where both hold. */
    public Truth and(Truth other) {
        return new Truth(Term.Logic.of(true, term(), other.term()));
    }

    /** True where one of the two holds, or both. */
    public Truth or(Truth other) {
        return new Truth(Term.Logic.of(false, term(), other.term()));
    }

    /** True where this does not hold. */
    public Truth not() {
        return new Truth(new Term.Not(term()));
    }
}
