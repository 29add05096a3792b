package org.gusset.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.gusset.core.draft.Draft;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.graph.Definition;
import org.gusset.core.graph.Graph;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Values;
import org.gusset.core.measure.Measurements;

/** What each node of the smock's graph costs by itself, so that it can be told which share of the work depends on a measure. */
final class NodeCosts {
    private static final int ROUNDS = 12;
    private static final long ROUND = 400_000;

    private final Draft draft;
    private final Graph graph;
    private final Measurements body;
    private final Evaluation evaluation;
    private final double[] nanoseconds;
    private Object kept = "";

    private NodeCosts(Draft draft, Measurements body) {
        this.draft = draft;
        this.graph = draft.graph();
        this.body = body;
        this.evaluation = Evaluation.of(graph, given(body));
        this.nanoseconds = new double[graph.size()];
    }

    /** Times every node: the least of some rounds, each of many runs. */
    static NodeCosts of(Draft draft, Measurements body) {
        return of(draft, body, ROUNDS);
    }

    static NodeCosts of(Draft draft, Measurements body, int rounds) {
        NodeCosts costs = new NodeCosts(draft, body);
        for (int round = 0; round < rounds; round++) {
            for (int i = 0; i < costs.nanoseconds.length; i++) {
                double took = costs.time(costs.graph.definitions().get(i));
                costs.nanoseconds[i] = round <= rounds / 2 ? took : Math.min(costs.nanoseconds[i], took);
            }
        }
        return costs;
    }

    private double time(Definition<?> definition) {
        Values in = evaluation.inputsOf(definition.handle());
        long begin = System.nanoTime();
        long end = begin;
        int runs = 0;
        while (end - begin < ROUND) {
            for (int i = 0; i < 4; i++) {
                kept = definition.operation().apply(in);
            }
            runs += 4;
            end = System.nanoTime();
        }
        return (double) (end - begin) / runs;
    }

    private Map<Handle<?>, Object> given(Measurements measurements) {
        Map<Handle<?>, Object> given = new HashMap<>();
        for (Draft.Measure measure : draft.measures()) {
            measurements.entry(measure.name()).ifPresent(entry -> {
                given.put(measure.value(), entry);
                measure.range().ifPresent(range -> given.put(range, entry));
            });
        }
        return given;
    }

    /** The cost of all nodes in nanoseconds. */
    double all() {
        double sum = 0;
        for (double one : nanoseconds) {
            sum += one;
        }
        return sum;
    }

    /** The cost of those that depend on a measure: it, and all that has an input with another value than before. */
    double dependingOn(String measure) {
        Map<Handle<?>, Object> before = given(body);
        Map<Handle<?>, Object> after = given(OneMeasureBenchmark.changed(body, measure));
        Evaluation other = Evaluation.of(graph, after);
        double sum = 0;
        for (Definition<?> definition : graph.definitions()) {
            Handle<?> handle = definition.handle();
            boolean told = !Objects.equals(before.get(handle), after.get(handle));
            List<Handle<?>> inputs = definition.inputs();
            if (told || inputs.stream().anyMatch(i -> !evaluation.value(i).equals(other.value(i)))) {
                sum += nanoseconds[handle.index()];
            }
        }
        return sum;
    }

    /** The last value that was computed, so that none is left out. */
    Object kept() {
        return kept;
    }
}
