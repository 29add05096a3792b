package org.gusset.core.build;

import org.gusset.core.construct.Formula;

/** Two amounts that must come out the same; {@link DraftBuilder#solve} finds the unknown for which they do. */
public final class Equation {
    private final Value left;
    private final Value right;

    Equation(Value left, Value right) {
        this.left = left;
        this.right = right;
    }

    Value left() {
        return left;
    }

    /** The left side less the right. */
    Term miss() {
        return Term.Arithmetic.of(
                Formula.Sign.MINUS, left.term(), right.term(), left.term().kind());
    }

    @Override
    public String toString() {
        return left + " = " + right;
    }
}
