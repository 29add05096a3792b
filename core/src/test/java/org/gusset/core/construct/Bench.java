package org.gusset.core.construct;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Graph;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Operation;

/** Runs one operation on values at hand. */
final class Bench {
    private Bench() {}

    /** The value that an operation makes of its inputs. */
    static <T> T make(Class<T> type, Operation<? extends T> operation, Object... inputs) {
        Graph.Builder graph = Graph.builder();
        Handle<T> made = define(graph, type, operation, inputs);
        Evaluation evaluation = Evaluation.of(graph.build(), Map.of());
        return evaluation
                .value(made)
                .orElseThrow(() -> new AssertionError(evaluation.faults().toString()));
    }

    static Point point(Operation<? extends Point> operation, Object... inputs) {
        return make(Point.class, operation, inputs);
    }

    static Path path(Operation<? extends Path> operation, Object... inputs) {
        return make(Path.class, operation, inputs);
    }

    /** The code of the fault that an operation finds with its inputs. */
    static Code fault(Operation<?> operation, Object... inputs) {
        Graph.Builder graph = Graph.builder();
        Handle<Object> made = define(graph, Object.class, operation, inputs);
        Evaluation evaluation = Evaluation.of(graph.build(), Map.of());
        return evaluation
                .fault(made)
                .orElseThrow(() -> new AssertionError("no fault but " + evaluation.value(made)))
                .code();
    }

    private static <T> Handle<T> define(
            Graph.Builder graph, Class<T> type, Operation<? extends T> operation, Object... inputs) {
        List<Handle<?>> handles = new ArrayList<>();
        for (Object input : inputs) {
            handles.add(graph.define("in" + handles.size(), Object.class, in -> input, Place.nowhere(), List.of()));
        }
        return graph.define("made", type, operation, Place.nowhere(), handles);
    }
}
