package org.gusset.dsl.internal.parse;

import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.internal.parse.GussetParser.BaseContext;
import org.gusset.dsl.internal.parse.GussetParser.DirectionContext;
import org.gusset.dsl.internal.parse.GussetParser.MoveContext;
import org.gusset.dsl.internal.parse.GussetParser.PartOfContext;
import org.gusset.dsl.internal.parse.GussetParser.PlaceContext;
import org.gusset.dsl.internal.parse.GussetParser.ShapeContext;
import org.gusset.dsl.internal.parse.GussetParser.SideContext;
import org.gusset.dsl.internal.parse.GussetParser.WayContext;
import org.gusset.dsl.internal.parse.GussetParser.WayWordContext;
import org.gusset.dsl.syntax.Direction;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Move;
import org.gusset.dsl.syntax.PlaceOn;
import org.gusset.dsl.syntax.Way;

/** Parse trees of shapes, moves, places and ways to syntax trees. */
final class ShapeBuilder {
    private final ExprBuilder exprs;
    private final Spans spans;

    ShapeBuilder(ExprBuilder exprs, Spans spans) {
        this.exprs = exprs;
        this.spans = spans;
    }

    Expr shape(ShapeContext context) {
        Expr base = context.base() != null ? base(context.base()) : exprs.sum(context.sum());
        return moved(base, context.move());
    }

    Expr moved(Expr base, List<MoveContext> moves) {
        Expr shape = base;
        if (!moves.isEmpty() && exprs.tooMany(moves.size() + 1, moves.get(0))) {
            return new Expr.Broken(base.span());
        }
        for (MoveContext move : moves) {
            shape = new Expr.Moved(shape, move(move), shape.span().to(spans.of(move)));
        }
        return shape;
    }

    Expr base(BaseContext context) {
        Span span = spans.of(context);
        if (context.partOf() != null) {
            return partOf(context.partOf());
        } else if (context.BETWEEN() != null) {
            return new Expr.Between(
                    exprs.operand(context.operand(0)), exprs.operand(context.operand(1)), between(context), span);
        } else if (context.SWEPT() != null) {
            return new Expr.TwoSweeps(
                    exprs.sum(context.sum(0)),
                    exprs.operand(context.operand(0)),
                    exprs.sum(context.sum(1)),
                    exprs.operand(context.operand(1)),
                    exprs.operand(context.operand(2)),
                    span);
        } else if (context.WHERE() != null) {
            Optional<Expr> nearest =
                    context.NEAREST() == null ? Optional.empty() : Optional.of(exprs.operand(context.operand(2)));
            return new Expr.Meets(exprs.operand(context.operand(0)), exprs.operand(context.operand(1)), nearest, span);
        } else if (context.ON() != null) {
            return new Expr.OnPath(exprs.operand(context.operand(0)), place(context.place()), span);
        }
        return new Expr.At(exprs.expr(context.expr(0)), exprs.expr(context.expr(1)), span);
    }

    private Optional<PlaceOn> between(BaseContext context) {
        if (context.HALFWAY() != null) {
            return Optional.of(new PlaceOn.Halfway(spans.of(context.HALFWAY().getSymbol())));
        } else if (context.AT() == null) {
            return Optional.empty();
        }
        Optional<PlaceOn.From> from = Optional.empty();
        if (context.START() != null) {
            from = Optional.of(new PlaceOn.From.Start(spans.of(context.START().getSymbol())));
        } else if (context.END() != null) {
            from = Optional.of(new PlaceOn.From.End(spans.of(context.END().getSymbol())));
        } else if (context.FROM().size() == 1) {
            from = Optional.of(new PlaceOn.From.Point(exprs.operand(context.operand(2))));
        }
        return Optional.of(new PlaceOn.At(
                exprs.sum(context.sum(0)), from, spans.of(context.AT().getSymbol(), context.getStop())));
    }

    Expr partOf(PartOfContext context) {
        return new Expr.PartOf(
                exprs.operand(context.operand(0)),
                exprs.operand(context.operand(1)),
                exprs.operand(context.operand(2)),
                spans.of(context));
    }

    PlaceOn place(PlaceContext context) {
        Span span = spans.of(context);
        if (context.HALFWAY() != null) {
            return new PlaceOn.Halfway(span);
        } else if (context.NEAREST() != null) {
            return new PlaceOn.Nearest(exprs.operand(context.operand()), span);
        }
        Optional<PlaceOn.From> from = Optional.empty();
        if (context.START() != null) {
            from = Optional.of(new PlaceOn.From.Start(spans.of(context.START().getSymbol())));
        } else if (context.END() != null) {
            from = Optional.of(new PlaceOn.From.End(spans.of(context.END().getSymbol())));
        } else if (context.FROM() != null) {
            from = Optional.of(new PlaceOn.From.Point(exprs.operand(context.operand())));
        }
        return new PlaceOn.At(exprs.sum(context.sum()), from, span);
    }

    Move.Side side(SideContext context) {
        return context.direction() != null
                ? new Move.Side.Page(direction(context.direction()), spans.of(context))
                : new Move.Side.Toward(exprs.operand(context.operand()), spans.of(context));
    }

    static Direction direction(DirectionContext context) {
        if (context.UP() != null) {
            return Direction.UP;
        } else if (context.DOWN() != null) {
            return Direction.DOWN;
        }
        return context.LEFT() != null ? Direction.LEFT : Direction.RIGHT;
    }

    Way way(WayContext context) {
        return context.wayWord() != null
                ? wayWord(context.wayWord())
                : new Way.Computed(exprs.sum(context.sum()), spans.of(context));
    }

    Way wayWord(WayWordContext context) {
        Span span = spans.of(context);
        if (context.direction() != null) {
            return new Way.To(direction(context.direction()), span);
        } else if (context.TOWARD() != null) {
            return new Way.Toward(exprs.operand(context.operand()), span);
        } else if (context.ALONG() != null) {
            return new Way.Along(exprs.operand(context.operand()), span);
        }
        return new Way.SquareTo(exprs.operand(context.operand()), span);
    }

    private Move move(MoveContext context) {
        Span span = spans.of(context);
        boolean to = context.TO() != null;
        if (context.direction() != null) {
            Direction direction = direction(context.direction());
            return to
                    ? new Move.SquaredTo(direction, exprs.operand(context.operand(0)), span)
                    : new Move.Squared(direction, exprs.sum(context.sum(0)), span);
        } else if (context.TOWARD() != null) {
            Expr point = exprs.operand(context.operand(0));
            return to
                    ? new Move.TowardTo(point, exprs.operand(context.operand(1)), span)
                    : new Move.Toward(point, exprs.sum(context.sum(0)), span);
        } else if (context.PAST() != null) {
            return new Move.Past(exprs.operand(context.operand(0)), exprs.sum(context.sum(0)), span);
        } else if (context.SWEPT() != null) {
            Optional<Expr> nearest =
                    context.NEAREST() == null ? Optional.empty() : Optional.of(exprs.operand(context.operand(1)));
            return new Move.Swept(exprs.sum(context.sum(0)), exprs.operand(context.operand(0)), nearest, span);
        } else if (context.MIRRORED() != null) {
            return new Move.Mirrored(exprs.operand(context.operand(0)), span);
        } else if (context.TURNED() != null) {
            return new Move.Turned(exprs.sum(context.sum(0)), exprs.operand(context.operand(0)), span);
        } else if (context.PARALLEL() != null) {
            return new Move.Parallel(side(context.side()), exprs.sum(context.sum(0)), span);
        } else if (context.SQUARE() != null) {
            return new Move.SquareTo(
                    exprs.operand(context.operand(0)), side(context.side()), exprs.sum(context.sum(0)), span);
        }
        Expr angle = exprs.sum(context.sum(0));
        return to
                ? new Move.AngledTo(angle, exprs.operand(context.operand(0)), span)
                : new Move.Angled(angle, exprs.sum(context.sum(1)), span);
    }
}
