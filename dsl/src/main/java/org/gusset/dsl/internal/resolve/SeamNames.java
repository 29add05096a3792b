package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.TreeWalk;

/** The names in a seam: what it matches by bare names lies in the pieces of its sides. */
final class SeamNames {
    private final Indexing indexing;

    SeamNames(Indexing indexing) {
        this.indexing = indexing;
    }

    void read(Statement.Seam seam, Context at) {
        seam.first().forEach(p -> indexing.walk(p, at));
        seam.second().forEach(p -> indexing.walk(p, at));
        seam.ease().ifPresent(r -> indexing.walk(r, at));
        seam.within().ifPresent(w -> indexing.walk(w, at));
        seam.pressed().ifPresent(p -> indexing.walk(p, at));
        List<String> one = List.copyOf(SeamNotches.pieces(seam.first()));
        List<String> other = List.copyOf(SeamNotches.pieces(seam.second()));
        List<String> both = new ArrayList<>(one);
        both.addAll(other);
        for (Statement.Match match : seam.matching()) {
            spot(match.first(), one, at);
            spot(match.second(), other, at);
            match.ease().ifPresent(r -> indexing.walk(r, at));
        }
        for (Statement.Meeting meeting : seam.meeting()) {
            spot(meeting.point(), both, at);
        }
    }

    private void spot(Expr expr, List<String> pieces, Context at) {
        List<Expr.Reference> references = TreeWalk.all(expr, Expr.Reference.class);
        Optional<Scope> owner = SeamNotches.piece(expr).isPresent() || references.isEmpty()
                ? Optional.empty()
                : pieces.stream()
                        .map(at.home().pieceScopes()::get)
                        .filter(scope -> scope != null
                                && references.stream()
                                        .allMatch(
                                                r -> scope.own(r.parts().get(0).text()) != null))
                        .findFirst();
        indexing.walk(
                expr,
                owner.map(scope -> new Context(scope, new LinkedHashSet<>(), -1))
                        .orElse(at));
    }
}
