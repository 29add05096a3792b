package org.gusset.dsl.syntax;

import java.util.Optional;
import org.gusset.core.diagnostic.Span;

/** One move of a shape. */
public sealed interface Move {
    Span span();

    /** {@code right 3 cm}. */
    record Squared(Direction direction, Expr amount, Span span) implements Move {}

    /** {@code down to B}, {@code right to path}: until level with a point, or until a path is met. */
    record SquaredTo(Direction direction, Expr target, Span span) implements Move {}

    /** {@code toward B by 3 cm}. */
    record Toward(Expr point, Expr amount, Span span) implements Move {}

    /** {@code toward B to path}. */
    record TowardTo(Expr point, Expr path, Span span) implements Move {}

    /** {@code past B by 2 cm}. */
    record Past(Expr point, Expr amount, Span span) implements Move {}

    /** {@code swept by 13 cm to path [nearest P]}. */
    record Swept(Expr amount, Expr path, Optional<Expr> nearest, Span span) implements Move {}

    /** {@code angled 20 deg by 3 cm}. */
    record Angled(Expr angle, Expr amount, Span span) implements Move {}

    /** {@code angled 20 deg to path}. */
    record AngledTo(Expr angle, Expr path, Span span) implements Move {}

    /** {@code square to path SIDE by 2 cm}. */
    record SquareTo(Expr path, Side side, Expr amount, Span span) implements Move {}

    /** {@code mirrored over path}. */
    record Mirrored(Expr path, Span span) implements Move {}

    /** {@code turned 30 deg about P}. */
    record Turned(Expr angle, Expr about, Span span) implements Move {}

    /** {@code parallel SIDE by 2 cm}. */
    record Parallel(Side side, Expr amount, Span span) implements Move {}

    /** Which side of a path. */
    sealed interface Side {
        Span span();

        /** A side of the page. */
        record Page(Direction direction, Span span) implements Side {}

        /** {@code toward P}. */
        record Toward(Expr point, Span span) implements Side {}
    }
}
