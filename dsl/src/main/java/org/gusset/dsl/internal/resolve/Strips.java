package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.syntax.Direction;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Move;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;

/** A strip is a piece whose rectangle is drawn for it: the edges top, right_end, bottom and left_end, and a crease if it is folded. */
final class Strips {
    private Strips() {}

    static Statement.Piece piece(Statement.Strip strip) {
        List<Statement> body = new ArrayList<>(new Drawing(strip).statements());
        body.addAll(strip.body());
        return new Statement.Piece(strip.name(), Optional.empty(), strip.condition(), body, strip.head(), strip.span());
    }

    /** The statements that draw the rectangle, all at the place of the strip's head. */
    private record Drawing(Statement.Strip strip) {
        private Span at() {
            return strip.head();
        }

        private Name name(String text) {
            return new Name(text, strip.name().span());
        }

        private Expr.Reference of(String text) {
            return new Expr.Reference(List.of(name(text)), false, at());
        }

        private Statement point(String name, Expr value) {
            return new Statement.Point(name(name), value, at());
        }

        private Expr moved(Expr from, Direction direction, Expr amount) {
            return new Expr.Moved(from, new Move.Squared(direction, amount, amount.span()), at());
        }

        private Statement line(String name, Expr from, Expr to) {
            return new Statement.Line(name(name), List.of(from, to), at());
        }

        private Expr halfway(String first, String second) {
            return new Expr.Between(of(first), of(second), Optional.empty(), at());
        }

        List<Statement> statements() {
            List<Statement> drawn = new ArrayList<>();
            drawn.add(point("top_left", new Expr.Origin(at())));
            drawn.add(point("top_right", moved(of("top_left"), Direction.RIGHT, strip.length())));
            drawn.add(point("bottom_right", moved(of("top_right"), Direction.DOWN, strip.width())));
            drawn.add(point("bottom_left", moved(of("top_left"), Direction.DOWN, strip.width())));
            drawn.add(line("top", of("top_left"), of("top_right")));
            drawn.add(line("right_end", of("top_right"), of("bottom_right")));
            drawn.add(line("bottom", of("bottom_right"), of("bottom_left")));
            drawn.add(line("left_end", of("bottom_left"), of("top_left")));
            drawn.add(new Statement.Outline(List.of(of("top"), of("right_end"), of("bottom"), of("left_end")), at()));
            if (strip.folded()) {
                drawn.add(line("crease", halfway("top_left", "bottom_left"), halfway("top_right", "bottom_right")));
                drawn.add(new Statement.Mark(
                        Statement.MarkKind.LINE,
                        Optional.empty(),
                        Optional.of(of("crease")),
                        Optional.empty(),
                        Optional.empty(),
                        at()));
            }
            boolean ownGrain = strip.body().stream().anyMatch(s -> s instanceof Statement.Grain);
            if (!ownGrain) {
                Optional<Expr> along = strip.bias() ? Optional.empty() : Optional.of(of("top"));
                drawn.add(new Statement.Grain(along, Optional.empty(), Optional.empty(), strip.bias(), at()));
            }
            return drawn;
        }
    }
}
