package org.gusset.dsl.lint;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Hint;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.TreeWalk;

/** Pieces and edges that no seam uses. */
final class Sewing {
    private final Drafted drafted;
    private final Advice advice;
    private final Set<String> sewnPieces = new LinkedHashSet<>();
    private final Set<Sewn> sewnPaths = new LinkedHashSet<>();
    private boolean anySeam;

    private record Sewn(String piece, String path) {}

    Sewing(Drafted drafted, Advice advice) {
        this.drafted = drafted;
        this.advice = advice;
    }

    void look() {
        for (Statement statement : drafted.file()) {
            if (statement instanceof Statement.Seam seam) {
                anySeam = true;
                seam.first().forEach(this::sewn);
                seam.second().forEach(this::sewn);
            }
        }
        Set<String> apart = apart();
        boolean alone = drafted.parts().size() == 1 && !anySeam;
        for (Drafted.Part part : drafted.parts()) {
            if (!alone && !apart.contains(part.name().text())) {
                piece(part);
            }
        }
    }

    private void sewn(Expr path) {
        for (Expr.Reference reference : TreeWalk.all(path, Expr.Reference.class)) {
            List<Name> names = reference.parts();
            if (names.size() > 1) {
                sewnPieces.add(names.get(0).text());
                sewnPaths.add(new Sewn(names.get(0).text(), names.get(1).text()));
            }
        }
    }

    /** Pieces that are set on, or whose seam with their other part is checked of itself. */
    private Set<String> apart() {
        Set<String> apart = new LinkedHashSet<>();
        for (Drafted.Part part : drafted.parts()) {
            part.all(Statement.Mark.class).forEach(m -> m.piece().ifPresent(p -> apart.add(p.text())));
            if (part.from().isPresent() && !part.traced()) {
                apart.add(part.name().text());
            }
        }
        return apart;
    }

    private void piece(Drafted.Part part) {
        String name = part.name().text();
        Optional<Statement.Outline> outline = outline(part);
        if (!sewnPieces.contains(name)) {
            if (outline.isPresent() || part.whole() instanceof Statement.Strip) {
                advice.tell(
                        LintCode.PIECE_UNSEWN,
                        part.name().span(),
                        Hint.of("seam.piece", "Add a `seam` that joins it, so that its edges are checked."),
                        "piece",
                        name);
            }
        } else if (outline.isPresent()) {
            edges(part, outline.get());
        }
    }

    private Optional<Statement.Outline> outline(Drafted.Part part) {
        for (Drafted.Part elder : drafted.line(part)) {
            List<Statement.Outline> own = elder.all(Statement.Outline.class);
            if (!own.isEmpty()) {
                return Optional.of(own.get(own.size() - 1));
            } else if (!elder.traced()) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private void edges(Drafted.Part part, Statement.Outline outline) {
        Set<String> finished = finished(part);
        List<String> open = new ArrayList<>();
        List<Expr.Reference> places = new ArrayList<>();
        for (Expr.Reference edge : outline.edges()) {
            String name = edge.text();
            if (!finished.contains(name) && !isHem(name) && !isSewn(part, name) && !open.contains("`" + name + "`")) {
                open.add("`" + name + "`");
                places.add(edge);
            }
        }
        if (!open.isEmpty()) {
            boolean own = part.all(Statement.Outline.class).contains(outline);
            advice.tell(
                    LintCode.EDGES_UNSEWN,
                    own ? places.get(0).span() : part.name().span(),
                    Hint.of(
                            "seam.edge",
                            "If it is sewn to another edge, add the `seam`; a raw edge has the allowance `none`, a hem is"
                                    + " `turned up`."),
                    "edges",
                    list(open),
                    "piece",
                    part.name().text());
        }
    }

    /** Edges on a fold, turned up or left raw, here or in what the piece is traced from. */
    private Set<String> finished(Drafted.Part part) {
        Set<String> finished = new LinkedHashSet<>();
        for (Drafted.Part elder : drafted.line(part)) {
            elder.all(Statement.Cut.class).forEach(c -> c.fold().ifPresent(f -> finished.add(f.text())));
            for (Statement.Allow allow : elder.all(Statement.Allow.class)) {
                for (Statement.EdgeAllowance edge : allow.edges()) {
                    if (edge.turnedUp() || edge.amount().isEmpty()) {
                        finished.add(edge.edge().text());
                    }
                }
            }
        }
        return finished;
    }

    private static boolean isHem(String edge) {
        return edge.equals("hem") || edge.startsWith("hem_") || edge.endsWith("_hem");
    }

    /** True if a seam uses the edge, or one of the paths that it is joined from. */
    private boolean isSewn(Drafted.Part part, String edge) {
        String piece = part.name().text();
        if (sewnPaths.contains(new Sewn(piece, edge))) {
            return true;
        }
        for (Drafted.Part elder : drafted.line(part)) {
            for (Statement.Join join : elder.all(Statement.Join.class)) {
                if (join.name().text().equals(edge)
                        && join.parts().stream()
                                .flatMap(p -> TreeWalk.all(p, Expr.Reference.class).stream())
                                .anyMatch(r -> sewnPaths.contains(new Sewn(piece, r.text())))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static String list(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }
}
