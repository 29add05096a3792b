package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.syntax.DraftTree;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.TreeWalk;

/** The seams between two parts that are taken from one piece at one line: they are checked without being stated. */
final class PartSeams {
    private final SeamStatements seams;

    PartSeams(SeamStatements seams) {
        this.seams = seams;
    }

    List<CheckedDraft.Check> checks(Home home) {
        List<PieceBody> bodies = home.bodies().values().stream()
                .filter(body -> taken(body).isPresent())
                .toList();
        List<CheckedDraft.Check> checks = new ArrayList<>();
        for (int i = 0; i < bodies.size(); i++) {
            for (PieceBody second : bodies.subList(i + 1, bodies.size())) {
                PieceBody first = bodies.get(i);
                if (partners(first, second) && !stated(home.tree(), first, second)) {
                    checks.add(seam(first, second));
                }
            }
        }
        return checks;
    }

    private static boolean partners(PieceBody first, PieceBody second) {
        Optional<Statement.TakenBeside> one = taken(first);
        Optional<Statement.TakenBeside> other = taken(second);
        return one.isPresent()
                && other.isPresent()
                && one.get().other().text().equals(other.get().other().text())
                && first.newEdge().isPresent()
                && first.newEdge().equals(second.newEdge())
                && one.get().side() != other.get().side();
    }

    private static Optional<Statement.TakenBeside> taken(PieceBody body) {
        return body.piece()
                .origin()
                .filter(o -> o instanceof Statement.TakenBeside)
                .map(o -> (Statement.TakenBeside) o);
    }

    /** True if the draft says itself how the two are sewn. */
    private static boolean stated(DraftTree tree, PieceBody first, PieceBody second) {
        for (Statement statement : tree.statements()) {
            if (statement instanceof Statement.Seam seam) {
                Set<String> edges = new LinkedHashSet<>();
                List<Expr> all = new ArrayList<>(seam.first());
                all.addAll(seam.second());
                all.forEach(path -> TreeWalk.all(path, Expr.Reference.class).forEach(r -> edges.add(r.text())));
                if (edges.contains(edge(first)) && edges.contains(edge(second))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static String edge(PieceBody body) {
        return body.name() + "." + body.newEdge().orElseThrow();
    }

    private CheckedDraft.Check seam(PieceBody first, PieceBody second) {
        Span span = second.piece().head();
        return seams.plain(edge(first) + " to " + edge(second), reference(first, span), reference(second, span), span);
    }

    private static Expr.Reference reference(PieceBody body, Span span) {
        return SeamStatements.edge(body.name(), body.newEdge().orElseThrow(), span);
    }
}
