package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Piece;

/**
 * Whether there are enough copies of a piece: one that is cut once cannot be sewn to the left and to the right of another. An edge that
 * several seams use may have a different piece on either hand, and a side that names `all` copies of an edge is judged by its length.
 */
final class MissingHands {
    private final Sides sides;

    MissingHands(Sides sides) {
        this.sides = sides;
    }

    /** What is wrong with the pieces of the seams. */
    List<Diagnostic> wrong(List<SewnSeam> seams) {
        Map<Sides.Sewn, Integer> uses = new LinkedHashMap<>();
        for (SewnSeam seam : seams) {
            seam.walk().runs().forEach(r -> sides.sewn(r).ifPresent(s -> uses.merge(s, 1, Integer::sum)));
        }
        List<Diagnostic> wrong = new ArrayList<>();
        for (SewnSeam seam : seams) {
            Set<String> told = new LinkedHashSet<>();
            missing(seam, seam.walk().first(), seam.walk().second(), uses, told, wrong);
            missing(seam, seam.walk().second(), seam.walk().first(), uses, told, wrong);
        }
        return wrong;
    }

    private void missing(
            SewnSeam seam,
            List<Run> own,
            List<Run> others,
            Map<Sides.Sewn, Integer> uses,
            Set<String> told,
            List<Diagnostic> wrong) {
        if (own.stream().anyMatch(r -> r.copies() > 1) || others.stream().anyMatch(r -> r.copies() > 1)) {
            return;
        }
        for (Run run : own) {
            Optional<Cut> once = sides.piece(run.piece()).flatMap(MissingHands::cutOnce);
            for (Run other : others) {
                boolean twoHands = sides.sewn(other)
                        .filter(s -> Hands.bothHands(s.piece()) && uses.getOrDefault(s, 0) == 1)
                        .isPresent();
                if (once.isPresent() && twoHands && told.add(run.piece())) {
                    wrong.add(Diagnostic.of(
                                    SeamCode.HAND_MISSING,
                                    seam.walk().place(),
                                    "piece",
                                    run.piece(),
                                    "cloth",
                                    once.get()
                                            .cloth()
                                            .map(c -> " from `" + c + "`")
                                            .orElse(""),
                                    "seam",
                                    seam.name(),
                                    "other",
                                    other.piece())
                            .with(Hint.of(
                                    "cut.pair",
                                    "Write `cut 1 pair`, or `cut 2` if both are alike; name `all` its edges if one"
                                            + " {piece} is sewn to both.",
                                    "piece",
                                    run.piece())));
                }
            }
        }
    }

    /** The cut that gives one copy only of the cloth it is from. */
    private static Optional<Cut> cutOnce(Piece piece) {
        return piece.cuts().stream()
                .filter(c -> c.arrangement() == Cut.Arrangement.SINGLE && c.count() == 1)
                .filter(c -> piece.cuts().stream()
                                .filter(other -> other.cloth().equals(c.cloth()))
                                .count()
                        == 1)
                .findFirst();
    }
}
