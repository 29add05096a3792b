package org.gusset.core.graph;

import org.jspecify.annotations.Nullable;

/**
 * A typed name for one node of a graph.
 *
 * @param index the node's number; a node's inputs have smaller ones
 * @param name what it is called, with the piece in front ({@code Back.tip}); empty for what stands inside an expression
 * @param type the Java type of its value
 */
public record Handle<T>(int index, String name, Class<T> type) {
    /** True if the draft names it. */
    public boolean named() {
        return !name.isEmpty();
    }

    @Override
    public String toString() {
        return named() ? name : "#" + index;
    }

    /** Written out for the start of short runs, see docs/decisions/0034. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof Handle<?> that
                        && index == that.index
                        && name.equals(that.name)
                        && type.equals(that.type));
    }

    @Override
    public int hashCode() {
        return index;
    }
}
