package org.gusset.core.graph;

/**
 * What a node does: makes a value of the values of its inputs. Implementations are immutable, usually records, and depend on
 * nothing but their inputs: the same inputs give the same bits.
 */
@FunctionalInterface
public interface Operation<T> {
    /**
     * The value.
     *
     * @throws org.gusset.core.diagnostic.Fault if there is none, with the diagnostic to show; its place is filled in by the evaluator
     */
    T apply(Values in);
}
