package org.gusset.core.graph;

import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Place;

/**
 * One node of a graph.
 *
 * @param handle its name and type
 * @param operation what it does
 * @param inputs what it needs, all with smaller indexes
 * @param condition a truth without which it is left out, with all that depends on it
 * @param place where the draft says so
 */
public record Definition<T>(
        Handle<T> handle,
        Operation<? extends T> operation,
        List<Handle<?>> inputs,
        Optional<Handle<Boolean>> condition,
        Place place) {
    public Definition {
        inputs = List.copyOf(inputs);
    }
}
