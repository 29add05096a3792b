package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.TreeWalk;

/** The notches that seams ask for in pieces: {@code matching P with Q notched} puts one on either side. */
final class SeamNotches {
    private SeamNotches() {}

    /** A point in the words of its piece. */
    record Spot(Expr point, int strokes, Span place) {}

    /** The notches that the seams of a piece's own file ask of it. */
    static List<Spot> of(PieceBody body) {
        List<Spot> spots = new ArrayList<>();
        for (Statement.Seam seam : body.home().notching()) {
            for (Statement.Match match : seam.matching()) {
                if (match.strokes() > 0) {
                    within(match.first(), seam.first(), body)
                            .ifPresent(p -> spots.add(new Spot(p, match.strokes(), match.span())));
                    within(match.second(), seam.second(), body)
                            .ifPresent(p -> spots.add(new Spot(p, match.strokes(), match.span())));
                }
            }
        }
        return spots;
    }

    /** The pieces whose edges a side names, in order. */
    static Set<String> pieces(List<Expr> side) {
        Set<String> pieces = new LinkedHashSet<>();
        for (Expr path : side) {
            for (Expr.Reference reference : TreeWalk.all(path, Expr.Reference.class)) {
                if (reference.parts().size() > 1) {
                    pieces.add(reference.parts().get(0).text());
                }
            }
        }
        return pieces;
    }

    /** A matched point as it is named inside a piece; empty if it belongs to another one. */
    private static Optional<Expr> within(Expr point, List<Expr> side, PieceBody body) {
        if (!pieces(side).contains(body.name())) {
            return Optional.empty();
        }
        Optional<String> piece = piece(point);
        if (piece.isEmpty()) {
            return Optional.of(point);
        } else if (!piece.get().equals(body.name())) {
            return Optional.empty();
        }
        return Optional.of(point instanceof Expr.Reference reference ? inside(reference) : point);
    }

    /** The piece that the names of a point begin with; empty if it is a bare name. */
    static Optional<String> piece(Expr point) {
        return TreeWalk.all(point, Expr.Reference.class).stream()
                .filter(r -> r.parts().size() > 1 && Character.isUpperCase(first(r).charAt(0)))
                .map(SeamNotches::first)
                .findFirst();
    }

    private static String first(Expr.Reference reference) {
        return reference.parts().get(0).text();
    }

    private static Expr.Reference inside(Expr.Reference reference) {
        List<Name> rest = reference.parts().subList(1, reference.parts().size());
        return new Expr.Reference(rest, false, reference.span());
    }
}
