package org.gusset.core.build;

/** A handle on something of a draft. */
abstract class Value {
    private final Term term;

    Value(Term term) {
        this.term = term;
    }

    final Term term() {
        return term;
    }

    /** What messages call it. */
    @Override
    public final String toString() {
        return term.words("");
    }
}
