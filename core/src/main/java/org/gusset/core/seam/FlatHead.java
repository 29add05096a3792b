package org.gusset.core.seam;

import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Piece;

/** Ease in the head of a sleeve that lies too flat to take any. */
final class FlatHead {
    /** A head lower than this share of its width belongs to a dropped shoulder; common practice, no source. */
    private static final double FLAT_HEAD = 0.25;

    /** A flat head takes no more than this, in mm; common practice, no source. */
    private static final double FLAT_EASE = 5;

    private final Sides sides;

    FlatHead(Sides sides) {
        this.sides = sides;
    }

    /** A head that lies flat, eased into the armhole of two pieces or more. */
    List<Diagnostic> wrong(SewnSeam seam) {
        double ease = seam.ease();
        List<Run> head = ease > 0 ? seam.walk().first() : seam.walk().second();
        List<Run> hole = ease > 0 ? seam.walk().second() : seam.walk().first();
        long bodies = hole.stream().map(Run::piece).distinct().count();
        if (head.size() != 1
                || bodies < 2
                || Math.abs(ease) <= FLAT_EASE
                || !head.get(0).taken().isEmpty()) {
            return List.of();
        }
        Path path = head.get(0).path();
        Optional<Piece> piece = sides.piece(head.get(0).piece());
        Vector across = path.end().minus(path.start());
        boolean paired = piece.map(p -> p.worn() == 2).orElse(false);
        if (!paired || path.straight() || across.length() < path.length() / 2) {
            return List.of();
        }
        double height = 0;
        for (int i = 1; i < 16; i++) {
            Vector to = path.at(path.length() * i / 16).minus(path.start());
            height = Math.max(height, Math.abs(across.unit().cross(to)));
        }
        if (height > 0.05 * across.length() && height < FLAT_HEAD * across.length()) {
            return List.of(Diagnostic.of(
                            SeamCode.FLAT_HEAD_EASED,
                            seam.walk().place(),
                            "seam",
                            seam.name(),
                            "ease",
                            Fact.length(Math.abs(ease)),
                            "edge",
                            head.get(0).words(),
                            "piece",
                            head.get(0).piece(),
                            "height",
                            Fact.length(height),
                            "width",
                            Fact.length(across.length()))
                    .with(Hint.of(
                            "head.flat", "Make the head as long as the armhole, or draw it higher and narrower.")));
        }
        return List.of();
    }
}
