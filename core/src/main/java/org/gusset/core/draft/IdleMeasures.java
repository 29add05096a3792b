package org.gusset.core.draft;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.graph.Definition;
import org.gusset.core.graph.Handle;

/**
 * The measures that a body lacks and nobody misses: nothing asks for them, or only ranges do, or the rules of measures that were taken or are
 * themselves idle. Every node is looked at once, however long the chains are in which measures estimate one another.
 */
final class IdleMeasures {
    private final List<Draft.Measure> measures;
    private final Evaluation evaluation;
    private final Predicate<Draft.Measure> taken;

    /** Nodes whose asking does not count. */
    private final Set<Handle<?>> quiet = new HashSet<>();

    /** How many nodes lack a value because of each, the quiet ones left out. */
    private final int[] askers;

    /** Measures that lost the last node that asked for them. */
    private final Deque<Handle<?>> unasked = new ArrayDeque<>();

    IdleMeasures(List<Draft.Measure> measures, Evaluation evaluation, Predicate<Draft.Measure> taken) {
        this.measures = measures;
        this.evaluation = evaluation;
        this.taken = taken;
        this.askers = new int[evaluation.graph().size()];
    }

    List<Draft.Measure> of() {
        for (Definition<?> definition : evaluation.graph().definitions()) {
            evaluation.cause(definition.handle()).ifPresent(cause -> askers[cause.index()]++);
        }
        Set<Handle<?>> lacking = new HashSet<>();
        for (Draft.Measure measure : measures) {
            measure.range().ifPresent(this::quieten);
            if (taken.test(measure)) {
                quietenRule(measure.value());
            } else {
                lacking.add(measure.value());
            }
        }
        unasked.clear();
        lacking.stream().filter(m -> askers[m.index()] == 0).forEach(unasked::add);
        Set<Handle<?>> idle = new HashSet<>();
        while (!unasked.isEmpty()) {
            Handle<?> measure = unasked.remove();
            if (lacking.contains(measure) && idle.add(measure)) {
                quieten(measure);
                quietenRule(measure);
            }
        }
        return measures.stream().filter(m -> idle.contains(m.value())).toList();
    }

    private boolean quieten(Handle<?> node) {
        if (!quiet.add(node)) {
            return false;
        }
        evaluation.cause(node).ifPresent(cause -> {
            if (--askers[cause.index()] == 0) {
                unasked.add(cause);
            }
        });
        return true;
    }

    /** The rule of a measure, with all in it that has no name and so belongs to it alone. */
    private void quietenRule(Handle<?> node) {
        for (Handle<?> input : evaluation.graph().definition(node).inputs()) {
            if (!input.named() && quieten(input)) {
                quietenRule(input);
            }
        }
    }
}
