package org.gusset.core.pattern;

import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Outcome;

/**
 * Cuts a finished piece anew with wider allowances, as a trial garment wants them. Every edge with an allowance gets at least a
 * width; an edge that the draft leaves raw stays raw, unless the piece has no allowance at all. Folds stay folds. Hems that are
 * turned up stay so, all other corners are mitred. Outline, grain, marks and the places of notches stay as they are; cuts without
 * allowance, such as those from fusing, go, and cuts with one of their own take that of the piece.
 */
public final class Widening {
    private Widening() {}

    /**
     * The piece with allowances of at least {@code least} mm; the PCE errors if the outline cannot bear them, and warnings where a
     * hollow is too tight.
     */
    public static Outcome<Piece> of(Piece piece, double least) {
        boolean bare = piece.edges().stream().allMatch(edge -> edge.allowance().width() == 0);
        return Recutting.of(
                new Piece(
                        piece.name(),
                        piece.edges(),
                        piece.cutting(),
                        cuts(piece),
                        piece.grain(),
                        piece.notches(),
                        piece.marks(),
                        piece.labels(),
                        piece.nest()),
                edge -> widened(edge.allowance(), least, bare));
    }

    private static Allowance widened(Allowance allowance, double least, boolean bare) {
        if (allowance.width() == 0 && !bare) {
            return allowance;
        }
        return new Allowance(Math.max(least, allowance.width()), allowance.turnedUp());
    }

    private static List<Cut> cuts(Piece piece) {
        List<Cut> cuts = piece.cuts().stream()
                .filter(cut -> cut.allowance().isEmpty() || cut.allowance().get() > 0)
                .map(cut -> new Cut(cut.count(), cut.arrangement(), cut.cloth(), Optional.empty()))
                .toList();
        return cuts.isEmpty() ? piece.cuts() : cuts;
    }
}
