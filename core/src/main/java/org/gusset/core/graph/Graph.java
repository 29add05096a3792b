package org.gusset.core.graph;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/** Definitions in an order in which each stands after what it needs. Immutable; made by a {@link Builder}. */
public final class Graph {
    private final List<Definition<?>> definitions;
    private final Bounds bounds;

    /** The indexes of each node's inputs: asked for so often that two look-ups would be seen. */
    private final int[][] inputs;

    private Graph(List<Definition<?>> definitions, Bounds bounds) {
        this.definitions = List.copyOf(definitions);
        this.bounds = bounds;
        this.inputs = new int[definitions.size()][];
        for (int i = 0; i < inputs.length; i++) {
            inputs[i] =
                    definitions.get(i).inputs().stream().mapToInt(Handle::index).toArray();
        }
    }

    /** What an evaluation of it may spend. */
    public Bounds bounds() {
        return bounds;
    }

    public List<Definition<?>> definitions() {
        return definitions;
    }

    public int size() {
        return definitions.size();
    }

    public Definition<?> definition(Handle<?> handle) {
        return definitions.get(handle.index());
    }

    /** The index of the node that is an input of another. */
    public int input(int node, int input) {
        return inputs[node][input];
    }

    /** Every definition on a line of its own: the same text for the same graph, if its operations are records. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (Definition<?> definition : definitions) {
            Handle<?> handle = definition.handle();
            Operation<?> operation = definition.operation();
            text.append('#').append(handle.index()).append(' ').append(handle.name());
            text.append(' ').append(handle.type().getSimpleName()).append(' ');
            text.append(operation.getClass().isRecord() ? operation.toString() : "an operation");
            definition.inputs().forEach(i -> text.append(" #").append(i.index()));
            definition.condition().ifPresent(c -> text.append(" if #").append(c.index()));
            text.append('\n');
        }
        return text.toString();
    }

    public static Builder builder() {
        return new Builder();
    }

    /** Collects definitions. Not for use by several threads. */
    public static final class Builder {
        private final List<Definition<?>> definitions = new ArrayList<>();
        private @Nullable Handle<Boolean> condition;
        private Bounds bounds = Bounds.defaults();

        private Builder() {}

        /** What an evaluation may spend, if not {@link Bounds#defaults()}. */
        public Builder bounds(Bounds newBounds) {
            this.bounds = newBounds;
            return this;
        }

        /** Adds a node. The inputs must come from this builder, which keeps the graph free of circles. */
        public <T> Handle<T> define(
                String name,
                Class<T> type,
                Operation<? extends T> operation,
                Place place,
                List<? extends Handle<?>> inputs) {
            Handle<T> handle = new Handle<>(definitions.size(), name, type);
            for (Handle<?> input : inputs) {
                if (input.index() >= definitions.size()
                        || !definitions.get(input.index()).handle().equals(input)) {
                    throw new IllegalArgumentException(input + " is not of this graph");
                }
            }
            definitions.add(
                    new Definition<>(handle, operation, List.copyOf(inputs), Optional.ofNullable(condition), place));
            return handle;
        }

        /** All that is defined from now on is left out where the condition does not hold; null ends that. */
        public Builder onlyIf(@Nullable Handle<Boolean> holds) {
            this.condition = holds;
            return this;
        }

        public int size() {
            return definitions.size();
        }

        public Graph build() {
            return new Graph(definitions, bounds);
        }
    }
}
