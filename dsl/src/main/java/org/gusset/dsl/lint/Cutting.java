package org.gusset.dsl.lint;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.measure.Dimension;
import org.gusset.dsl.Source;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.PlaceOn;
import org.gusset.dsl.syntax.Statement;

/** How pieces are cut, what is notched, and checks that cannot fail. */
final class Cutting {
    private static final List<String> SIDED = List.of("Front", "Sleeve", "Left", "Right");

    private final Drafted drafted;
    private final Source source;
    private final Advice advice;

    Cutting(Drafted drafted, Source source, Advice advice) {
        this.drafted = drafted;
        this.source = source;
        this.advice = advice;
    }

    void look() {
        References references = new References(drafted);
        for (Statement statement : drafted.file()) {
            if (statement instanceof Statement.Check check) {
                idle(check, references);
            }
        }
        for (Drafted.Part part : drafted.parts()) {
            part.all(Statement.Cut.class).forEach(c -> twice(part, c));
            notches(part);
        }
    }

    private void idle(Statement.Check check, References references) {
        if (!references.canVary(check)) {
            advice.tell(
                    LintCode.CHECK_IDLE,
                    check.condition().span(),
                    Hint.of(
                            "check.vary",
                            "Compare with something that follows from a measure, or take the check out."));
        }
    }

    private void twice(Drafted.Part part, Statement.Cut cut) {
        boolean two = cut.count() instanceof Expr.Amount amount
                && !amount.hasUnit()
                && amount.quantity().value() == 2;
        String name = part.name().text();
        if (two && cut.form() == Statement.CutForm.SINGLE && SIDED.stream().anyMatch(name::contains)) {
            advice.tell(
                    LintCode.NOT_MIRRORED,
                    cut.span(),
                    Hint.of("cut.pair", "Write `cut 1 pair` for a left one and a right one.")
                            .replacing(cut.count().span(), "1 pair"),
                    "piece",
                    name);
        }
    }

    private void notches(Drafted.Part part) {
        Map<List<String>, Statement.Notch> places = new LinkedHashMap<>();
        for (Statement.Notch notch : drafted.inheritedNotches(part)) {
            places.putIfAbsent(place(notch), notch);
        }
        for (Statement.Notch notch : part.all(Statement.Notch.class)) {
            Statement.Notch other = places.putIfAbsent(place(notch), notch);
            if (other != null) {
                advice.tell(Diagnostic.of(
                                LintCode.NOTCHED_TWICE,
                                notch.span(),
                                "edge",
                                notch.edge().text(),
                                "piece",
                                part.name().text())
                        .with(new Related(Phrase.of("notch.first", "the other one"), other.span()))
                        .with(Hint.of("notch.one", "Take one of them out; `double` and `triple` give more strokes.")));
            }
        }
    }

    private List<String> place(Statement.Notch notch) {
        return List.of(notch.edge().text(), place(notch.place()));
    }

    /** A place in words that are alike for places that are surely alike. */
    private String place(PlaceOn place) {
        if (place instanceof PlaceOn.Halfway) {
            return "0.5";
        } else if (place instanceof PlaceOn.At at) {
            Optional<PlaceOn.From> from = at.from().filter(f -> !(f instanceof PlaceOn.From.Start));
            OptionalDouble share = share(at.amount());
            if (share.isPresent()) {
                return Double.toString(share.getAsDouble());
            } else if (from.isEmpty()) {
                return "at " + text(at.amount());
            } else if (from.get() instanceof PlaceOn.From.Point point) {
                return "at " + text(at.amount()) + " from " + text(point.point());
            }
            return "at " + text(at.amount()) + " from end";
        }
        return "nearest " + text(((PlaceOn.Nearest) place).point());
    }

    private static OptionalDouble share(Expr amount) {
        if (amount instanceof Expr.Amount number
                && number.quantity().dimension().equals(Dimension.NUMBER)) {
            return OptionalDouble.of(number.quantity().value());
        } else if (amount instanceof Expr.Arithmetic sum && sum.operator() == Expr.Operator.OVER) {
            OptionalDouble over = share(sum.left());
            OptionalDouble under = share(sum.right());
            return over.isPresent() && under.isPresent()
                    ? OptionalDouble.of(over.getAsDouble() / under.getAsDouble())
                    : OptionalDouble.empty();
        }
        return OptionalDouble.empty();
    }

    private String text(Expr expr) {
        if (expr instanceof Expr.Amount amount) {
            return amount.quantity().toString();
        }
        return source.text().substring(expr.span().start(), expr.span().end()).replaceAll("\\s+", " ");
    }
}
