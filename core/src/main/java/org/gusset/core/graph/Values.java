package org.gusset.core.graph;

import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.jspecify.annotations.Nullable;

/** The values of a node's inputs, in the order in which its definition lists them. */
public interface Values {
    /**
     * The value of an input. If it has none, the node that asks gets none either; an operation that does not ask for an input
     * is not hurt by it.
     */
    Object get(int input);

    /** True if an input is left out by choice; asking for its value would leave the node out too. */
    boolean leftOut(int input);

    /** What the host gives for the node itself: a measure or a choice; null if it gives nothing. */
    @Nullable
    Object given();

    /** What the evaluation may still spend; operations whose work grows faster than their inputs tell it of that work. */
    default Effort effort() {
        return Effort.within(Bounds.defaults());
    }

    default double number(int input) {
        return (Double) get(input);
    }

    default boolean truth(int input) {
        return (Boolean) get(input);
    }

    default String word(int input) {
        return (String) get(input);
    }

    default Point point(int input) {
        return (Point) get(input);
    }

    default Path path(int input) {
        return (Path) get(input);
    }
}
