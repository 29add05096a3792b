package org.gusset.core.build;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.construct.Formula;

/** The inputs of an operation while it is put together. */
final class Inputs {
    private final List<Term> terms = new ArrayList<>();

    Inputs(Term... first) {
        terms.addAll(List.of(first));
    }

    /** Adds an input and gives its index. */
    int add(Term term) {
        terms.add(term);
        return terms.size() - 1;
    }

    /** Adds an amount and gives the formula that reads it. */
    Formula formula(Term term) {
        return new Formula.Input(add(term), "", term.kind().dimension());
    }

    List<Term> terms() {
        return terms;
    }
}
