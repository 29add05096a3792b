package org.gusset.core.seam;

import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.geometry.Path;
import org.gusset.core.pattern.Piece;

/**
 * Whether a curved edge of a pair, as the head of a sleeve, is marked where it is set into two pieces or more: without a notch or a
 * matched point nothing says which point of it comes to their joint, and it can be set turned.
 */
final class UnmarkedHeads {
    /** A head is at least this share of its length wide; a neckline, which is deeper, shows by itself how it lies. */
    private static final double WIDE = 0.4;

    private final Sides sides;

    UnmarkedHeads(Sides sides) {
        this.sides = sides;
    }

    List<Diagnostic> wrong(SewnSeam seam) {
        if (!seam.walk().matches().isEmpty()) {
            return List.of();
        }
        List<Diagnostic> first =
                wrong(seam, seam.walk().first(), seam.firstMarks(), seam.walk().second());
        return first.isEmpty()
                ? wrong(
                        seam,
                        seam.walk().second(),
                        seam.secondMarks(),
                        seam.walk().first())
                : first;
    }

    private List<Diagnostic> wrong(SewnSeam seam, List<Run> head, List<SeamMark> marks, List<Run> hole) {
        long bodies = hole.stream().map(Run::piece).distinct().count();
        if (head.size() != 1 || bodies < 2 || !marks.isEmpty()) {
            return List.of();
        }
        Run run = head.get(0);
        Path path = run.path();
        Optional<Piece> piece = sides.piece(run.piece());
        boolean set = piece.filter(p -> p.worn() == 2 && Hands.bothHands(p)).isPresent()
                && !path.straight()
                && path.end().minus(path.start()).length() > WIDE * path.length();
        return set
                ? List.of(Diagnostic.of(
                                SeamCode.HEAD_UNMARKED,
                                run.place(),
                                "edge",
                                sides.edge(run).map(e -> e.name()).orElse(run.words()),
                                "piece",
                                run.piece(),
                                "other",
                                Walk.words(hole),
                                "seam",
                                seam.name())
                        .with(Hint.of(
                                "head.notch",
                                "Match its highest point with the end of the shoulder: `matching P with Q notched`, a single"
                                        + " notch for the front and a `double` one for the back.")))
                : List.of();
    }
}
