package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.construct.CurveConstruction;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.Heading;
import org.gusset.core.construct.PathConstruction;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.construct.RowConstruction;
import org.gusset.core.construct.Side;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.PlaceOn;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.Way;

/** Checks lines, guides, curves, arcs and joins. */
final class Curves {
    private final Expressions expressions;
    private final Messages messages;
    private final int mostInRow;

    /** @param mostInRow the most points of a row */
    Curves(Expressions expressions, Messages messages, int mostInRow) {
        this.mostInRow = mostInRow;
        this.expressions = expressions;
        this.messages = messages;
    }

    Term line(List<Expr> points, Span span, Context at) {
        if (points.size() == 1) {
            Term only = expressions.term(points.get(0), at);
            if (only.type().equals(Type.POINT)) {
                messages.tell(
                        ResolveCode.ONE_POINT,
                        span,
                        Hint.of("line.two", "Write `A to B`, or `A to A down 3 cm` for a line squared from A."));
                return new Term.Broken(span);
            }
            return expressions.path(points.get(0), at, "A line");
        }
        Inputs in = new Inputs();
        for (Expr point : points) {
            in.add(expressions.point(point, at, "A line's end"));
        }
        return expressions.made(new PathConstruction.Line(points.size()), in, Type.PATH, span);
    }

    Term guide(Statement.Guide guide, Context at) {
        if (guide.kind() == Statement.GuideKind.PATH) {
            Inputs in = new Inputs(expressions.path(guide.from(), at, "A guide"));
            return expressions.made(
                    new PathConstruction.GuideAlongPath(
                            messages.text(guide.from().span())),
                    in,
                    Type.PATH,
                    guide.span());
        }
        Inputs in = new Inputs(expressions.point(guide.from(), at, "The start of a guide"));
        if (guide.kind() == Statement.GuideKind.BETWEEN && guide.to().isPresent()) {
            in.add(expressions.point(guide.to().get(), at, "The end of a guide"));
            return expressions.made(new PathConstruction.GuideBetween(), in, Type.PATH, guide.span());
        }
        Heading.Compass compass = switch (guide.kind()) {
            case UP -> Heading.Compass.UP;
            case DOWN -> Heading.Compass.DOWN;
            default -> Heading.Compass.RIGHT;
        };
        return expressions.made(new PathConstruction.GuideAlong(compass), in, Type.ENDLESS, guide.span());
    }

    Term curve(Statement.CurveBody body, Span span, Context at) {
        if (body instanceof Statement.PathBody path) {
            return expressions.path(path.path(), at, "A curve");
        } else if (body instanceof Statement.Hollowed hollowed) {
            return hollowed(hollowed, span, at);
        }
        Statement.Spline spline = (Statement.Spline) body;
        Inputs in = new Inputs();
        for (Statement.Knot knot : spline.knots()) {
            in.add(expressions.point(knot.point(), at, "A point of a curve"));
        }
        List<Optional<Heading>> headings = new ArrayList<>();
        for (Statement.Knot knot : spline.knots()) {
            headings.add(knot.heading().flatMap(way -> heading(way, in, at)));
        }
        Optional<Formula> tension =
                spline.tension().map(t -> in.formula(expressions.wanted(t, Type.NUMBER, at, "A tension")));
        return expressions.made(new CurveConstruction.Spline(headings, tension), in, Type.PATH, span);
    }

    private Optional<Heading> heading(Way way, Inputs in, Context at) {
        Heading heading = expressions.shapes().heading(way, in, at);
        if (heading == null) {
            in.spoil();
        }
        return Optional.ofNullable(heading);
    }

    private Term hollowed(Statement.Hollowed hollowed, Span span, Context at) {
        Inputs in = new Inputs(
                expressions.point(hollowed.from(), at, "The start of a curve"),
                expressions.point(hollowed.to(), at, "The end of a curve"),
                expressions.length(hollowed.amount(), at, "What stands after `by`"));
        if (hollowed.place().isPresent() && hollowed.place().get() instanceof PlaceOn.At where) {
            in.add(expressions.wanted(where.amount(), Type.NUMBER, at, "The place of the hollow"));
        } else {
            in.add(Expressions.constant(0.5, span));
            if (hollowed.place().isPresent() && hollowed.place().get() instanceof PlaceOn.Nearest) {
                messages.tell(
                        ResolveCode.WRONG_KIND,
                        hollowed.place().get().span(),
                        "what",
                        "The place of the hollow",
                        "wanted",
                        "a share such as `at 1/3`",
                        "given",
                        "a point");
                in.spoil();
            }
        }
        Side side = expressions.shapes().side(hollowed.side(), in, at);
        return expressions.made(new CurveConstruction.Hollowed(side), in, Type.PATH, span);
    }

    Term arc(Statement.ArcBody body, Span span, Context at) {
        if (body instanceof Statement.ArcBetween between) {
            Inputs in = new Inputs(
                    expressions.point(between.from(), at, "The start of an arc"),
                    expressions.point(between.to(), at, "The end of an arc"),
                    expressions.point(between.centre(), at, "The centre of an arc"));
            return expressions.made(new PathConstruction.ArcBetween(), in, Type.PATH, span);
        }
        Statement.ArcSwung swung = (Statement.ArcSwung) body;
        Inputs in = new Inputs(
                expressions.point(swung.from(), at, "The start of an arc"),
                expressions.point(swung.centre(), at, "The centre of an arc"),
                expressions.wanted(swung.angle(), Type.ANGLE, at, "What stands after `swung`"));
        return expressions.made(new PathConstruction.ArcSwung(), in, Type.PATH, span);
    }

    Term row(Statement.Points points, Context at) {
        Inputs in = new Inputs(
                expressions.wanted(points.count(), Type.NUMBER, at, "How many points"),
                expressions.path(points.path(), at, "What stands after `on`"));
        String path = messages.text(points.path().span());
        Optional<PlaceOnPath> from = points.from().map(p -> place(p, path, in, at));
        Optional<PlaceOnPath> to = points.to().map(p -> place(p, path, in, at));
        return expressions.made(new RowConstruction.Even(from, to, mostInRow), in, Type.ROW, points.span());
    }

    private PlaceOnPath place(Expr point, String path, Inputs in, Context at) {
        int input = in.add(expressions.point(point, at, "An end of a row"));
        return new PlaceOnPath.AtPoint(input, messages.text(point.span()), path);
    }

    Term join(List<Expr> parts, Span span, Context at) {
        Inputs in = new Inputs();
        List<String> names = new ArrayList<>();
        for (Expr part : parts) {
            Term term = expressions.path(part, at, "A part of a join");
            in.add(term);
            names.add(messages.text(part.span()));
            if (term.type().equals(Type.ENDLESS)) {
                messages.tell(
                        ResolveCode.NO_ENDS,
                        part.span(),
                        "name",
                        messages.text(part.span()),
                        "cannot",
                        "cannot be joined");
                in.spoil();
            }
        }
        return expressions.made(new PathConstruction.Join(names), in, Type.PATH, span);
    }
}
