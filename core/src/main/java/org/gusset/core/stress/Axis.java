package org.gusset.core.stress;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.check.Finding;
import org.gusset.core.check.InRange;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.graph.Graph;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Values;

/**
 * A variable with its nodes.
 *
 * @param variable what is varied
 * @param value its node
 * @param range the check of its range; none for words and answers
 */
record Axis(Variable variable, Handle<?> value, Optional<Handle<Finding>> range) {
    /** The least and the most that one body may have. */
    record Ends(double low, double high) {}

    /** What the ends of the range are worked out from. */
    List<Handle<?>> needs(Graph graph) {
        if (range.isEmpty()) {
            return List.of();
        }
        List<Handle<?>> inputs = graph.definition(range.get()).inputs();
        // Input 0 is the value itself.
        return inputs.subList(1, inputs.size());
    }

    /**
     * The ends for what is given so far.
     *
     * @throws org.gusset.core.diagnostic.Fault if they have no value
     */
    Ends ends(Graph graph, Map<Handle<?>, Object> given) {
        Handle<Finding> node = range.orElseThrow();
        InRange check = (InRange) graph.definition(node).operation();
        Values in = Evaluation.of(graph, given, needs(graph)).inputsOf(node);
        double low = check.low().orElseThrow().number(in);
        double high = check.high().orElseThrow().number(in);
        if (!variable.whole()) {
            return new Ends(low, high);
        }
        return new Ends(Math.ceil(low - 1e-9), Math.floor(high + 1e-9));
    }
}
