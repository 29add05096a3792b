package org.gusset.core.evaluate;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.graph.Effort;
import org.gusset.core.graph.Graph;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Values;

/**
 * The part of a draft that depends on unknowns, as a graph of its own: only this is evaluated while they are sought.
 *
 * @param graph the part
 * @param unknowns the nodes that take the unknowns' values
 * @param outer the nodes that take the values of the first inputs of the solving node
 * @param misses the left side less the right of each equation
 */
public record SolvedPart(
        Graph graph, List<Handle<Double>> unknowns, List<Handle<?>> outer, List<Handle<Double>> misses) {
    public SolvedPart {
        unknowns = List.copyOf(unknowns);
        outer = List.copyOf(outer);
        misses = List.copyOf(misses);
    }

    /**
     * What comes into the part from outside.
     *
     * @param values the values of the outer nodes
     * @param trials how often the part was tried
     * @param effort what trying it may still take
     */
    record Outside(Map<Handle<?>, Object> values, Trials trials, Effort effort) {}

    /** The values from outside, read once. */
    Outside outside(Values in, int most) {
        Map<Handle<?>, Object> given = new HashMap<>();
        for (int i = 0; i < outer.size(); i++) {
            given.put(outer.get(i), in.get(i));
        }
        return new Outside(given, new Trials(most), in.effort());
    }

    /**
     * The part for some values of the unknowns.
     *
     * @throws org.gusset.core.diagnostic.Fault if that is one trial too many, or takes more steps than there are
     */
    Evaluation at(Outside outside, List<Double> values) {
        outside.trials().count(unknowns);
        Map<Handle<?>, Object> given = new HashMap<>(outside.values());
        for (int i = 0; i < unknowns.size(); i++) {
            given.put(unknowns.get(i), values.get(i));
        }
        return Evaluation.within(outside.effort(), graph, given);
    }

    /** How much an equation misses by; NaN where it has no value. */
    double miss(Evaluation at, int equation) {
        return at.value(misses.get(equation)).orElse(Double.NaN);
    }

    /** Why nothing can be drawn for these values. */
    Phrase why(Outside outside, List<Double> values) {
        Evaluation at = at(outside, values);
        return misses.stream()
                .flatMap(m -> at.causes(m).stream())
                .findFirst()
                .map(Diagnostic::phrase)
                .orElse(Phrase.of("solve.no-value", "something in it has no value."));
    }
}
