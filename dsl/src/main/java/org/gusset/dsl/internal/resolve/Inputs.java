package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.construct.Formula;

/** The inputs of an operation while it is put together. */
final class Inputs {
    private final List<Term> terms = new ArrayList<>();
    private boolean broken;

    Inputs(Term... first) {
        for (Term term : first) {
            add(term);
        }
    }

    /** Adds an input and gives its index. */
    int add(Term term) {
        broken |= term.broken();
        terms.add(term);
        return terms.size() - 1;
    }

    /** Adds a number as an input and gives the formula that reads it. */
    Formula formula(Term term) {
        return new Formula.Input(add(term), "", term.type().dimension());
    }

    /** Something went wrong that makes the whole unusable. */
    void spoil() {
        broken = true;
    }

    boolean broken() {
        return broken;
    }

    List<Term> terms() {
        return terms;
    }
}
