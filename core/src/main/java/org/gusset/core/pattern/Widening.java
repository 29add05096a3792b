package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;

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
        Place place = Place.named(piece.name());
        List<PieceSpec.NamedPath> outline = new ArrayList<>();
        Map<String, Allowance> allowances = new LinkedHashMap<>();
        List<String> folds = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            outline.add(new PieceSpec.NamedPath(edge.name(), edge.path(), place));
            if (edge.onFold()) {
                folds.add(edge.name());
            } else {
                allowances.put(edge.name(), widened(edge.allowance(), least, bare));
            }
        }
        List<PieceSpec.NotchSpec> notches = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            notches.add(new PieceSpec.NotchSpec(
                    notch.edge(), notch.at(), notch.ticks().size(), place));
        }
        Outcome<Piece> made = PieceMaker.make(new PieceSpec(
                piece.name(),
                place,
                outline,
                Optional.of(Allowance.NONE),
                allowances,
                List.of(),
                cuts(piece),
                folds,
                Optional.empty(),
                false,
                notches,
                List.of(),
                List.of(),
                List.of(),
                piece.nest()));
        return new Outcome<>(
                made.value()
                        .map(wide -> new Piece(
                                piece.name(),
                                wide.edges(),
                                wide.cutting(),
                                wide.cuts(),
                                piece.grain(),
                                wide.notches(),
                                piece.marks(),
                                piece.labels(),
                                piece.nest())),
                made.diagnostics().stream()
                        .filter(d -> !d.code().equals(PieceCode.NO_GRAIN))
                        .toList());
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
