package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Mark;
import org.gusset.core.pattern.Piece;

/** What can be told of pieces that no seam uses: two of one hand, and pieces whose seams the choices leave out. */
final class LonePieces {
    private final Sewing.Known known;
    private final Set<String> sewn = new LinkedHashSet<>();
    private final Set<String> placed = new LinkedHashSet<>();

    LonePieces(List<Piece> pieces, List<SewnSeam> seams, Sewing.Known known) {
        this.known = known;
        seams.forEach(s -> s.walk().runs().forEach(r -> sewn.add(r.piece())));
        sewn.addAll(known.unknown());
        for (Piece piece : pieces) {
            for (Mark mark : piece.marks()) {
                if (mark instanceof Mark.Placed on) {
                    placed.add(on.piece());
                }
            }
        }
    }

    /** True if nothing says to what a piece is sewn. */
    boolean alone(Piece piece) {
        return !sewn.contains(piece.name()) && !placed.contains(piece.name());
    }

    /** The seams that the choices leave out and that alone use a piece; none if others do. */
    List<String> leftOut(Piece piece) {
        return alone(piece) ? known.leftOut().getOrDefault(piece.name(), List.of()) : List.of();
    }

    List<Diagnostic> wrong(List<Piece> pieces) {
        List<Diagnostic> wrong = new ArrayList<>();
        for (Piece piece : pieces) {
            Place place = known.places().getOrDefault(piece.name(), Place.nowhere());
            List<String> leftOut = leftOut(piece);
            if (!leftOut.isEmpty()) {
                wrong.add(Diagnostic.of(
                                SeamCode.LEFT_WITHOUT_SEAMS,
                                place,
                                "piece",
                                piece.name(),
                                "seams",
                                String.join(
                                        ", ",
                                        leftOut.stream().map(s -> "`" + s + "`").toList()))
                        .with(Hint.of(
                                "piece.same-choice",
                                "Give {piece} the same condition (`piece {piece} if ...`), or add the seam that joins it now.",
                                "piece",
                                piece.name())));
            }
            if (!sewn.contains(piece.name()) && !Symmetry.isSymmetric(piece)) {
                handed(piece, place, wrong);
            }
        }
        return wrong;
    }

    private static void handed(Piece piece, Place place, List<Diagnostic> wrong) {
        for (Cut cut : piece.cuts()) {
            if (cut.arrangement() == Cut.Arrangement.SINGLE && cut.count() > 1 && cut.count() % 2 == 0) {
                wrong.add(Diagnostic.of(SeamCode.ALIKE_ALONE, place, "piece", piece.name(), "count", cut.count())
                        .with(Hint.of(
                                "cut.pairs",
                                cut.count() == 2
                                        ? "Write `cut 1 pair`: a left one and a right one."
                                        : "Write `cut {pairs} pairs`: as many left ones as right ones.",
                                "pairs",
                                cut.count() / 2))
                        .with(Hint.of(
                                "cut.layers",
                                "If they lie on one another, write `cut {count} layers`.",
                                "count",
                                cut.count())));
                return;
            }
        }
    }
}
