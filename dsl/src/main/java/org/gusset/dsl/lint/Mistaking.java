package org.gusset.dsl.lint;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.diagnostic.Hint;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.TreeWalk;

/** Two pieces that are sewn to one edge and notched alike, so that one may be taken for the other. */
final class Mistaking {
    private final Drafted drafted;
    private final Advice advice;

    Mistaking(Drafted drafted, Advice advice) {
        this.drafted = drafted;
        this.advice = advice;
    }

    void look() {
        for (Statement statement : drafted.file()) {
            if (statement instanceof Statement.Seam seam) {
                sides(seam.first(), seam.second());
                sides(seam.second(), seam.first());
            }
        }
    }

    /** Looks at the edges of one side of a seam, if the other side is of one piece. */
    private void sides(List<Expr> many, List<Expr> one) {
        if (edges(one).stream().map(e -> e.piece).distinct().count() != 1) {
            return;
        }
        Map<List<Integer>, Edge> alike = new LinkedHashMap<>();
        for (Edge edge : edges(many)) {
            List<Integer> strokes = strokes(edge);
            Edge other = strokes.isEmpty() ? null : alike.putIfAbsent(strokes, edge);
            if (other != null && !other.piece.equals(edge.piece)) {
                advice.tell(
                        LintCode.NOTCHED_ALIKE,
                        edge.reference.span(),
                        Hint.of(
                                "notch.double",
                                "Give one of them a `double` notch: one for the front, two for the back."),
                        "first",
                        other.reference.text(),
                        "second",
                        edge.reference.text());
            }
        }
    }

    /** An edge as a seam names it. */
    private record Edge(String piece, String name, Expr.Reference reference) {}

    private static List<Edge> edges(List<Expr> paths) {
        List<Edge> edges = new ArrayList<>();
        for (Expr path : paths) {
            // Of a part of an edge, the edge itself comes first.
            TreeWalk.all(path, Expr.Reference.class).stream()
                    .filter(r -> r.parts().size() == 2)
                    .findFirst()
                    .ifPresent(r -> {
                        List<Name> parts = r.parts();
                        edges.add(new Edge(parts.get(0).text(), parts.get(1).text(), r));
                    });
        }
        return edges;
    }

    /** The strokes of an edge's notches, fewest first; none if the piece is not of this file. */
    private List<Integer> strokes(Edge edge) {
        List<Integer> strokes = new ArrayList<>();
        for (Drafted.Part part : drafted.parts()) {
            if (part.name().text().equals(edge.piece)) {
                List<Statement.Notch> notches = new ArrayList<>(drafted.inheritedNotches(part));
                notches.addAll(part.all(Statement.Notch.class));
                notches.stream()
                        .filter(n -> n.edge().text().equals(edge.name))
                        .forEach(n -> strokes.add(Math.max(1, n.strokes())));
            }
        }
        Collections.sort(strokes);
        return strokes;
    }
}
