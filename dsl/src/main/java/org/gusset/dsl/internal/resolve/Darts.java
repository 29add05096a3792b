package org.gusset.dsl.internal.resolve;

import java.util.List;
import java.util.Optional;
import org.gusset.core.construct.PlaceOnPath;
import org.gusset.core.construct.Side;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.pattern.DartConstruction;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Statement;

/** Checks darts and what is said of their parts. */
final class Darts {
    private static final List<String> PARTS = List.of("leg_a", "leg_b", "fold_line", "tip", "intake", "angle");

    private final Expressions expressions;
    private final Messages messages;

    Darts(Expressions expressions, Messages messages) {
        this.expressions = expressions;
        this.messages = messages;
    }

    Term onEdge(Statement.EdgeDart dart, Context at) {
        Inputs in = new Inputs(
                expressions.path(dart.edge(), at, "The edge of a dart"),
                expressions.length(dart.intake(), at, "The intake of a dart"),
                expressions.point(dart.tip(), at, "The tip of a dart"));
        PlaceOnPath place = expressions
                .shapes()
                .places()
                .place(dart.place(), messages.text(dart.edge().span()), in, at);
        Optional<DartConstruction.Hollow> curved = Optional.empty();
        if (dart.curvedSide().isPresent() && dart.curvedBy().isPresent()) {
            Side side = expressions.shapes().side(dart.curvedSide().get(), in, at);
            curved = Optional.of(new DartConstruction.Hollow(
                    side, in.formula(expressions.length(dart.curvedBy().get(), at, "The curve of a leg"))));
        }
        Optional<Integer> pressed =
                dart.pressedToward().map(p -> in.add(expressions.point(p, at, "What stands after `pressed toward`")));
        return place == null
                ? new Term.Broken(dart.span())
                : expressions.made(
                        new DartConstruction.OnEdge(dart.name().text(), place, curved, pressed),
                        in,
                        Type.DART,
                        dart.span());
    }

    Term inside(Statement.InnerDart dart, Context at) {
        Inputs in = new Inputs(
                expressions.point(dart.from(), at, "An end of a dart"),
                expressions.point(dart.to(), at, "An end of a dart"),
                expressions.length(dart.intake(), at, "The intake of a dart"),
                expressions.point(dart.at(), at, "The widest place of a dart"));
        return expressions.made(new DartConstruction.Inside(dart.name().text()), in, Type.DART, dart.span());
    }

    /** A dart as a whole, or one of its parts: {@code d.tip}. */
    static Term part(Symbol dart, Expr.Reference reference, Context at, Expressions expressions, Messages messages) {
        Term whole = expressions.use(dart, reference.span(), at);
        String last = reference.parts().get(reference.parts().size() - 1).text();
        if (whole.broken() || last.equals(dart.name())) {
            return whole;
        }
        Inputs in = new Inputs(whole);
        return switch (last) {
            case "tip" -> expressions.made(new DartConstruction.Tip(), in, Type.POINT, reference.span());
            case "intake" -> expressions.made(new DartConstruction.Intake(), in, Type.LENGTH, reference.span());
            case "angle" -> expressions.made(new DartConstruction.Angle(), in, Type.ANGLE, reference.span());
            case "leg_a" -> line(DartConstruction.Part.LEG_A, in, reference, expressions);
            case "leg_b" -> line(DartConstruction.Part.LEG_B, in, reference, expressions);
            case "fold_line" -> line(DartConstruction.Part.FOLD_LINE, in, reference, expressions);
            default -> {
                Diagnostic unknown = Diagnostic.of(
                        ResolveCode.NOT_IN_PIECE,
                        reference.span(),
                        "piece",
                        "The dart `" + dart.name() + "`",
                        "name",
                        last);
                messages.tell(Names.suggesting(unknown, last, PARTS, reference.span()));
                yield new Term.Broken(reference.span());
            }
        };
    }

    private static Term line(DartConstruction.Part part, Inputs in, Expr.Reference reference, Expressions expressions) {
        return expressions.made(new DartConstruction.Line(part), in, Type.PATH, reference.span());
    }
}
