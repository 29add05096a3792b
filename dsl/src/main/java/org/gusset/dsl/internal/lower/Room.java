package org.gusset.dsl.internal.lower;

import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.dsl.internal.resolve.ResolveCode;

/** How many nodes a draft may still have, those of its solves among them. */
final class Room {
    private final int most;
    private int taken;

    Room(int most) {
        this.most = most;
    }

    /**
     * Takes room for a node.
     *
     * @throws Fault if there is none left
     */
    void take(Place place) {
        if (taken == most) {
            throw new Fault(
                    Diagnostic.of(ResolveCode.GRAPH_TOO_LARGE, place, "most", Fact.number(most))
                            .with(
                                    Hint.of(
                                            "graph.fewer",
                                            "Name with `let` what a rule gives and use the name again, or make several drafts of it.")));
        }
        taken++;
    }
}
