package org.gusset.dsl.internal.resolve;

import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Heading;
import org.gusset.core.construct.PathConstruction;
import org.gusset.core.construct.PointConstruction;
import org.gusset.core.construct.Side;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.syntax.Direction;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Move;
import org.gusset.dsl.syntax.Way;
import org.jspecify.annotations.Nullable;

/** Checks points and moves. */
final class Shapes {
    private final Expressions expressions;
    private final Messages messages;
    private final Places places;

    Shapes(Expressions expressions, Messages messages) {
        this.expressions = expressions;
        this.messages = messages;
        this.places = new Places(expressions, messages);
    }

    Places places() {
        return places;
    }

    boolean isBase(Expr expr) {
        return expr instanceof Expr.Origin
                || expr instanceof Expr.At
                || expr instanceof Expr.Between
                || expr instanceof Expr.OnPath
                || expr instanceof Expr.TwoSweeps
                || expr instanceof Expr.Meets
                || expr instanceof Expr.PartOf;
    }

    Term shape(Expr expr, Context at) {
        if (expr instanceof Expr.Moved moved) {
            return moved(moved, at);
        } else if (expr instanceof Expr.At place) {
            Inputs in = new Inputs(
                    expressions.length(place.right(), at, "The way to the right"),
                    expressions.length(place.down(), at, "The way down"));
            return expressions.made(new PointConstruction.At(), in, Type.POINT, expr.span());
        } else if (expr instanceof Expr.Between between) {
            return places.between(between, at);
        } else if (expr instanceof Expr.OnPath on) {
            return places.on(on, at);
        } else if (expr instanceof Expr.PartOf part) {
            return places.part(part, at);
        } else if (expr instanceof Expr.TwoSweeps sweeps) {
            Inputs in = new Inputs(
                    expressions.length(sweeps.radius(), at, "The first sweep"),
                    expressions.point(sweeps.from(), at, "The centre of the first sweep"),
                    expressions.length(sweeps.secondRadius(), at, "The second sweep"),
                    expressions.point(sweeps.secondFrom(), at, "The centre of the second sweep"),
                    expressions.point(sweeps.nearest(), at, "What stands after `nearest`"));
            return expressions.made(new PointConstruction.TwoSweeps(), in, Type.POINT, expr.span());
        } else if (expr instanceof Expr.Meets meets) {
            Inputs in = new Inputs(
                    expressions.path(meets.first(), at, "What stands before `meets`"),
                    expressions.path(meets.second(), at, "What stands after `meets`"));
            meets.nearest().ifPresent(p -> in.add(expressions.point(p, at, "What stands after `nearest`")));
            return expressions.made(
                    new PointConstruction.Meets(
                            messages.text(meets.first().span()),
                            messages.text(meets.second().span()),
                            meets.nearest().isPresent()),
                    in,
                    Type.POINT,
                    expr.span());
        }
        return Expressions.origin(expr.span());
    }

    private Term moved(Expr.Moved expr, Context at) {
        Term base = expressions.term(expr.base(), at);
        Move move = expr.move();
        Span span = expr.span();
        if (move instanceof Move.Mirrored mirrored) {
            Inputs in = new Inputs(base, expressions.path(mirrored.path(), at, "A mirror"));
            String mirror = messages.text(mirrored.path().span());
            return either(
                    base,
                    new PointConstruction.Mirrored(mirror),
                    new PathConstruction.Mirrored(mirror),
                    in,
                    span,
                    "mirrored over");
        } else if (move instanceof Move.Turned turned) {
            Inputs in = new Inputs(
                    base,
                    expressions.wanted(turned.angle(), Type.ANGLE, at, "A turn"),
                    expressions.point(turned.about(), at, "What stands after `about`"));
            return either(
                    base, new PointConstruction.Turned(), new PathConstruction.Turned(), in, span, "turned about");
        } else if (move instanceof Move.Parallel parallel) {
            Inputs in = new Inputs(
                    wanted(base, Type.PATH, "What gets a parallel"),
                    expressions.length(parallel.amount(), at, "The distance of a parallel"));
            Side side = side(parallel.side(), in, at);
            return expressions.made(new PathConstruction.Parallel(side), in, Type.PATH, span);
        }
        return pointMove(wanted(base, Type.POINT, "What is moved"), move, span, at);
    }

    private Term either(
            Term base, PointConstruction forPoint, PathConstruction forPath, Inputs in, Span span, String form) {
        if (!base.broken() && !base.type().shape()) {
            messages.tell(
                    ResolveCode.MIRROR_ALL,
                    span,
                    "form",
                    form,
                    "given",
                    base.type().words());
            return new Term.Broken(span);
        }
        return base.type().equals(Type.POINT)
                ? expressions.made(forPoint, in, Type.POINT, span)
                : expressions.made(forPath, in, base.type(), span);
    }

    private Term wanted(Term term, Type wanted, String what) {
        boolean fits = term.type().equals(wanted)
                || (wanted.equals(Type.PATH) && term.type().path());
        if (!fits && !term.broken()) {
            messages.tell(
                    ResolveCode.WRONG_KIND,
                    term.span(),
                    "what",
                    what,
                    "wanted",
                    wanted.words(),
                    "given",
                    term.type().words());
        }
        return fits ? term : new Term.Broken(term.span());
    }

    private Term pointMove(Term base, Move move, Span span, Context at) {
        Inputs in = new Inputs(base);
        if (move instanceof Move.Squared squared) {
            in.add(expressions.reach(squared.amount(), at, word(squared.direction())));
            return expressions.made(new PointConstruction.Squared(compass(squared.direction())), in, Type.POINT, span);
        } else if (move instanceof Move.SquaredTo squared) {
            return squaredTo(squared, in, span, at);
        } else if (move instanceof Move.Toward toward) {
            in.add(expressions.point(toward.point(), at, "What stands after `toward`"));
            in.add(expressions.length(toward.amount(), at, "What stands after `by`"));
            return expressions.made(new PointConstruction.Toward(), in, Type.POINT, span);
        } else if (move instanceof Move.TowardTo toward) {
            in.add(expressions.point(toward.point(), at, "What stands after `toward`"));
            in.add(expressions.path(toward.path(), at, "What stands after `to`"));
            return expressions.made(
                    new PointConstruction.TowardPath(
                            messages.text(toward.point().span()),
                            messages.text(toward.path().span())),
                    in,
                    Type.POINT,
                    span);
        } else if (move instanceof Move.Past past) {
            in.add(expressions.point(past.point(), at, "What stands after `past`"));
            in.add(expressions.length(past.amount(), at, "What stands after `by`"));
            return expressions.made(new PointConstruction.Past(), in, Type.POINT, span);
        } else if (move instanceof Move.Swept swept) {
            in.add(expressions.length(swept.amount(), at, "A sweep"));
            in.add(expressions.path(swept.path(), at, "What stands after `to`"));
            swept.nearest().ifPresent(p -> in.add(expressions.point(p, at, "What stands after `nearest`")));
            return expressions.made(
                    new PointConstruction.Swept(
                            messages.text(swept.path().span()), swept.nearest().isPresent()),
                    in,
                    Type.POINT,
                    span);
        } else if (move instanceof Move.Angled angled) {
            in.add(expressions.wanted(angled.angle(), Type.ANGLE, at, "What stands after `angled`"));
            in.add(expressions.length(angled.amount(), at, "What stands after `by`"));
            return expressions.made(new PointConstruction.Angled(), in, Type.POINT, span);
        } else if (move instanceof Move.AngledTo angled) {
            in.add(expressions.wanted(angled.angle(), Type.ANGLE, at, "What stands after `angled`"));
            in.add(expressions.path(angled.path(), at, "What stands after `to`"));
            return expressions.made(
                    new PointConstruction.AngledToPath(
                            messages.text(angled.path().span())),
                    in,
                    Type.POINT,
                    span);
        }
        Move.SquareTo square = (Move.SquareTo) move;
        in.add(expressions.path(square.path(), at, "What stands after `square to`"));
        in.add(expressions.length(square.amount(), at, "What stands after `by`"));
        Side side = side(square.side(), in, at);
        return expressions.made(new PointConstruction.SquareTo(side), in, Type.POINT, span);
    }

    private Term squaredTo(Move.SquaredTo move, Inputs in, Span span, Context at) {
        Term target = expressions.term(move.target(), at);
        in.add(target);
        String name = messages.text(move.target().span());
        Heading.Compass compass = compass(move.direction());
        if (!target.broken() && !target.type().shape()) {
            messages.tell(
                    ResolveCode.WRONG_KIND,
                    target.span(),
                    "what",
                    "What stands after `" + word(move.direction()) + " to`",
                    "wanted",
                    "a point or a path",
                    "given",
                    target.type().words());
            return new Term.Broken(span);
        }
        return target.type().path()
                ? expressions.made(new PointConstruction.SquaredToPath(compass, name), in, Type.POINT, span)
                : expressions.made(new PointConstruction.SquaredToPoint(compass, name), in, Type.POINT, span);
    }

    Side side(Move.Side side, Inputs in, Context at) {
        if (side instanceof Move.Side.Page page) {
            return new Side.Page(compass(page.direction()));
        }
        return new Side.Toward(
                in.add(expressions.point(((Move.Side.Toward) side).point(), at, "What stands after `toward`")));
    }

    /** The heading for a way; null if a mistake was told. */
    @Nullable
    Heading heading(Way way, Inputs in, Context at) {
        if (way instanceof Way.To to) {
            return new Heading.To(compass(to.direction()));
        } else if (way instanceof Way.Toward toward) {
            return new Heading.Toward(
                    in.add(expressions.point(toward.point(), at, "What stands after `heading toward`")));
        } else if (way instanceof Way.Along along) {
            return new Heading.Along(in.add(expressions.path(along.path(), at, "What stands after `heading along`")));
        } else if (way instanceof Way.SquareTo square) {
            return new Heading.SquareTo(
                    in.add(expressions.path(square.path(), at, "What stands after `heading square to`")));
        }
        return computed(((Way.Computed) way).expr(), in, at);
    }

    private @Nullable Heading computed(Expr expr, Inputs in, Context at) {
        if (expr instanceof Expr.Group group) {
            return computed(group.inner(), in, at);
        } else if (expr instanceof Expr.WayExpr way) {
            return heading(way.way(), in, at);
        } else if (expr instanceof Expr.Conditional conditional) {
            int condition = in.add(expressions.truth(conditional.condition(), at, "What stands after `if`"));
            Heading then = computed(conditional.then(), in, at);
            Heading otherwise = computed(conditional.otherwise(), in, at);
            return then == null || otherwise == null
                    ? null
                    : new Heading.Choice(new Condition.Input(condition), then, otherwise);
        }
        Term angle = expressions.wanted(expr, Type.ANGLE, at, "A heading");
        return new Heading.Angle(in.formula(angle));
    }

    static Heading.Compass compass(Direction direction) {
        return switch (direction) {
            case UP -> Heading.Compass.UP;
            case DOWN -> Heading.Compass.DOWN;
            case LEFT -> Heading.Compass.LEFT;
            case RIGHT -> Heading.Compass.RIGHT;
        };
    }

    private static String word(Direction direction) {
        return compass(direction).word();
    }
}
