package org.gusset.dsl.syntax;

import org.gusset.core.diagnostic.Span;

/** A way that a curve heads. */
public sealed interface Way {
    Span span();

    /** {@code up}, {@code down}, {@code left}, {@code right}. */
    record To(Direction direction, Span span) implements Way {}

    /** {@code toward P}. */
    record Toward(Expr point, Span span) implements Way {}

    /** {@code along path}. */
    record Along(Expr path, Span span) implements Way {}

    /** {@code square to path}. */
    record SquareTo(Expr path, Span span) implements Way {}

    /** Anything else: an angle, or a choice in brackets, whose branches may be {@link Expr.WayExpr}. */
    record Computed(Expr expr, Span span) implements Way {}
}
