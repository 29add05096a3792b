package org.gusset.dsl.syntax;

import java.util.Optional;
import org.gusset.core.diagnostic.Span;

/** A place on an edge. */
public sealed interface PlaceOn {
    Span span();

    /** {@code halfway}. */
    record Halfway(Span span) implements PlaceOn {}

    /**
     * {@code at 1/3}, {@code at 40%}, {@code at 3 cm [from start, from end, from A]}. Whether the amount is a share or a length is
     * for the checker.
     */
    record At(Expr amount, Optional<From> from, Span span) implements PlaceOn {}

    /** {@code nearest A}. */
    record Nearest(Expr point, Span span) implements PlaceOn {}

    /** Where a length is counted from. */
    sealed interface From {
        /** {@code from start}. */
        record Start(Span span) implements From {}

        /** {@code from end}. */
        record End(Span span) implements From {}

        /** {@code from A}. */
        record Point(Expr point) implements From {}
    }
}
