package org.gusset.dsl.internal.resolve;

import java.util.Optional;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.PathConstruction;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.construct.PointConstruction;
import org.gusset.core.diagnostic.Hint;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.PlaceOn;
import org.jspecify.annotations.Nullable;

/** Checks places on edges. */
final class Places {
    private static final String LINE_BETWEEN = "the line between them";

    private final Expressions expressions;
    private final Messages messages;

    Places(Expressions expressions, Messages messages) {
        this.expressions = expressions;
        this.messages = messages;
    }

    /** The place for {@code place} on a path called {@code name}; null if a mistake was told. */
    @Nullable
    PlaceOnPath place(PlaceOn place, String name, Inputs in, Context at) {
        if (place instanceof PlaceOn.Halfway) {
            return new PlaceOnPath.Share(in.formula(Expressions.constant(0.5, place.span())));
        } else if (place instanceof PlaceOn.Nearest nearest) {
            return new PlaceOnPath.Nearest(
                    in.add(expressions.point(nearest.point(), at, "What stands after `nearest`")));
        }
        PlaceOn.At where = (PlaceOn.At) place;
        Term amount = shareOrLength(where, at);
        if (amount.broken()) {
            return null;
        }
        return amount.type().equals(Type.NUMBER)
                ? new PlaceOnPath.Share(in.formula(amount))
                : distance(amount, where, name, in, at);
    }

    /** A length along a path, from where it says. */
    private PlaceOnPath distance(Term amount, PlaceOn.At where, String name, Inputs in, Context at) {
        Formula formula = in.formula(amount);
        if (where.from().isEmpty() || where.from().get() instanceof PlaceOn.From.Start) {
            return new PlaceOnPath.FromEnd(formula, true, name);
        } else if (where.from().get() instanceof PlaceOn.From.End) {
            return new PlaceOnPath.FromEnd(formula, false, name);
        }
        Expr from = ((PlaceOn.From.Point) where.from().get()).point();
        int point = in.add(expressions.point(from, at, "What stands after `from`"));
        return new PlaceOnPath.FromPoint(formula, point, messages.text(from.span()), name);
    }

    private Term shareOrLength(PlaceOn.At where, Context at) {
        Term amount = expressions.term(where.amount(), at);
        if (amount.broken()) {
            return amount;
        }
        if (!amount.type().equals(Type.NUMBER) && !amount.type().equals(Type.LENGTH)) {
            messages.tell(
                    ResolveCode.WRONG_KIND,
                    amount.span(),
                    "what",
                    "What stands after `at`",
                    "wanted",
                    "a share such as 1/3 or 40%, or a length",
                    "given",
                    amount.type().words());
            return new Term.Broken(amount.span());
        }
        if (amount.type().equals(Type.NUMBER) && where.from().isPresent()) {
            messages.tell(
                    ResolveCode.SHARE_FROM,
                    where.span(),
                    Hint.of(
                            "share.length",
                            "Say a length, as in `at 3 cm from A`, or leave `from` and what follows out."),
                    "text",
                    messages.text(where.amount().span()));
            return new Term.Broken(amount.span());
        }
        return amount;
    }

    Term on(Expr.OnPath on, Context at) {
        Inputs in = new Inputs(expressions.path(on.path(), at, "What stands after `on`"));
        PlaceOnPath place = place(on.place(), messages.text(on.path().span()), in, at);
        return place == null
                ? new Term.Broken(on.span())
                : expressions.made(new PointConstruction.On(place), in, Type.POINT, on.span());
    }

    Term between(Expr.Between between, Context at) {
        Term first = expressions.point(between.first(), at, "What stands after `between`");
        Term second = expressions.point(between.second(), at, "What stands after `and`");
        Optional<PlaceOn> place = between.place();
        if (place.isEmpty() || place.get() instanceof PlaceOn.Halfway) {
            return between(first, second, Expressions.constant(0.5, between.span()), between);
        }
        Term amount = place.get() instanceof PlaceOn.At where ? shareOrLength(where, at) : null;
        if (amount != null && (amount.broken() || amount.type().equals(Type.NUMBER))) {
            return between(first, second, amount, between);
        }
        // Anything but a share is a place on the straight line between the two.
        Inputs line = new Inputs(first, second);
        Inputs in = new Inputs(expressions.made(new PathConstruction.Line(2), line, Type.PATH, between.span()));
        PlaceOnPath on = amount == null
                ? place(place.get(), LINE_BETWEEN, in, at)
                : distance(amount, (PlaceOn.At) place.get(), LINE_BETWEEN, in, at);
        return on == null
                ? new Term.Broken(between.span())
                : expressions.made(new PointConstruction.On(on), in, Type.POINT, between.span());
    }

    private Term between(Term first, Term second, Term share, Expr.Between between) {
        return expressions.made(
                new PointConstruction.Between(), new Inputs(first, second, share), Type.POINT, between.span());
    }

    Term part(Expr.PartOf part, Context at) {
        Inputs in = new Inputs(expressions.path(part.path(), at, "What stands after `part of`"));
        String name = messages.text(part.path().span());
        int from = in.add(expressions.point(part.from(), at, "What stands after `between`"));
        int to = in.add(expressions.point(part.to(), at, "What stands after `and`"));
        return expressions.made(
                new PathConstruction.Part(
                        new PlaceOnPath.AtPoint(from, messages.text(part.from().span()), name),
                        new PlaceOnPath.AtPoint(to, messages.text(part.to().span()), name)),
                in,
                Type.PATH,
                part.span());
    }
}
