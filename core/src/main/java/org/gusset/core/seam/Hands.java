package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Piece;

/** Whether pieces that are sewn to a left and a right hand are cut for both. */
final class Hands {
    private final Sides sides;
    private final Map<Piece, Boolean> symmetric = new IdentityHashMap<>();

    Hands(Sides sides) {
        this.sides = sides;
    }

    /** What is wrong with the pieces of a seam. */
    List<Diagnostic> wrong(SewnSeam seam) {
        List<Diagnostic> wrong = new ArrayList<>();
        hands(seam, wrong);
        Optional<Sides.Sewn> self = sides.selfSewn(seam.walk());
        if (self.isPresent()
                && oneHanded(self.get().piece())
                && !symmetric(self.get().piece())) {
            notMirrored(seam, self.get().piece(), "itself", wrong);
        }
        return wrong;
    }

    /** Pieces cut all the same way up that are sewn to a left and a right hand. */
    private void hands(SewnSeam seam, List<Diagnostic> wrong) {
        Set<String> told = new LinkedHashSet<>();
        for (Run run : seam.walk().runs()) {
            Optional<Piece> piece = sides.piece(run.piece());
            if (piece.isEmpty() || told.contains(run.piece()) || !oneHanded(piece.get())) {
                continue;
            }
            for (Run other : seam.walk().runs()) {
                boolean handed = !other.piece().equals(run.piece())
                        && sides.piece(other.piece()).map(Hands::bothHands).orElse(false);
                if (handed && !told.contains(run.piece()) && !symmetric(piece.get())) {
                    told.add(run.piece());
                    notMirrored(seam, piece.get(), other.piece(), wrong);
                }
            }
        }
    }

    private boolean symmetric(Piece piece) {
        return symmetric.computeIfAbsent(piece, Symmetry::isSymmetric);
    }

    private static void notMirrored(SewnSeam seam, Piece piece, String other, List<Diagnostic> wrong) {
        Cut cut = piece.cuts().stream().filter(Hands::oneHanded).findFirst().orElseThrow();
        wrong.add(Diagnostic.of(
                        SeamCode.NOT_MIRRORED,
                        seam.walk().place(),
                        "piece",
                        piece.name(),
                        "count",
                        cut.count(),
                        "other",
                        other)
                .with(Hint.of(
                        "cut.pairs",
                        cut.count() == 2
                                ? "Write `cut 1 pair`: a left one and a right one."
                                : "Write `cut {pairs} pairs`: as many left ones as right ones.",
                        "pairs",
                        cut.count() / 2)));
    }

    private static boolean oneHanded(Piece piece) {
        return piece.cuts().stream().anyMatch(Hands::oneHanded);
    }

    private static boolean oneHanded(Cut cut) {
        return cut.arrangement() == Cut.Arrangement.SINGLE && cut.count() > 1;
    }

    /** True if a left and a right one of a piece are worn, or a left and a right half. */
    static boolean bothHands(Piece piece) {
        return piece.cuts().stream()
                .anyMatch(c -> c.arrangement() == Cut.Arrangement.PAIRS || c.arrangement() == Cut.Arrangement.ON_FOLD);
    }
}
