package org.gusset.benchmarks.formula;

import java.util.List;

/** Formulas that were parsed once and are computed often, their variables set before. */
public interface Interpreter {
    /** The formulas in the interpreter's own form. */
    List<Parsed> formulas();

    /** One formula. */
    interface Parsed {
        double value();
    }
}
