package org.gusset.core.evaluate;

import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.graph.Handle;

/** How often the equations of a solve have been tried. */
final class Trials {
    private final int most;
    private int tried;

    Trials(int most) {
        this.most = most;
    }

    /**
     * Counts one more.
     *
     * @throws Fault if it is one too many
     */
    void count(List<Handle<Double>> unknowns) {
        if (tried >= most) {
            throw new Fault(
                    Diagnostic.of(
                                    SolveCode.TOO_MANY_TRIALS,
                                    Place.nowhere(),
                                    "names",
                                    String.join(
                                            ", ",
                                            unknowns.stream().map(Handle::name).toList()),
                                    "most",
                                    Fact.number(most))
                            .with(
                                    Hint.of(
                                            "solve.fewer",
                                            "Solve for fewer unknowns at once, or for each alone where its equation rests on no other.")));
        }
        tried++;
    }
}
