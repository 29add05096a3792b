package org.gusset.core.draft;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.graph.Handle;

/**
 * The measures that a body lacks and nobody misses: nothing asks for them, or only ranges do, or the rules of measures that were taken or are
 * themselves idle.
 */
final class IdleMeasures {
    private final List<Draft.Measure> measures;
    private final Evaluation evaluation;
    private final Predicate<Draft.Measure> taken;

    IdleMeasures(List<Draft.Measure> measures, Evaluation evaluation, Predicate<Draft.Measure> taken) {
        this.measures = measures;
        this.evaluation = evaluation;
        this.taken = taken;
    }

    List<Draft.Measure> of() {
        Set<Handle<?>> quiet = new HashSet<>();
        for (Draft.Measure measure : measures) {
            measure.range().ifPresent(quiet::add);
            if (taken.test(measure)) {
                rules(measure.value(), quiet);
            }
        }
        Set<Draft.Measure> idle = new HashSet<>();
        int before = -1;
        while (before != idle.size()) {
            before = idle.size();
            for (Draft.Measure measure : measures) {
                boolean missed = evaluation.missedBy(measure.value(), asker -> !quiet.contains(asker));
                if (!taken.test(measure) && !missed && idle.add(measure)) {
                    quiet.add(measure.value());
                    rules(measure.value(), quiet);
                }
            }
        }
        return measures.stream().filter(idle::contains).toList();
    }

    /** The rule of a measure, with all in it that has no name and so belongs to it alone. */
    private void rules(Handle<?> node, Set<Handle<?>> quiet) {
        for (Handle<?> input : evaluation.graph().definition(node).inputs()) {
            if (!input.named() && quiet.add(input)) {
                rules(input, quiet);
            }
        }
    }
}
