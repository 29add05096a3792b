package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;

/**
 * Cuts a finished piece anew with other allowances. Folds stay folds and have none. Hems that are turned up stay so, all other corners are
 * mitred. Outline, grain, cutting list, marks and the places of notches stay as they are.
 */
public final class Recutting {
    private Recutting() {}

    /** The piece with the allowances that a function gives its edges; the PCE errors if the outline cannot bear them. */
    public static Outcome<Piece> of(Piece piece, Function<Edge, Allowance> allowance) {
        Place place = Place.named(piece.name());
        List<PieceSpec.NamedPath> outline = new ArrayList<>();
        Map<String, Allowance> allowances = new LinkedHashMap<>();
        List<String> folds = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            outline.add(new PieceSpec.NamedPath(edge.name(), edge.path(), place));
            if (edge.onFold()) {
                folds.add(edge.name());
            } else {
                allowances.put(edge.name(), allowance.apply(edge));
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
                piece.cuts(),
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
                        .map(cut -> new Piece(
                                piece.name(),
                                cut.edges(),
                                cut.cutting(),
                                piece.cuts(),
                                piece.grain(),
                                cut.notches(),
                                piece.marks(),
                                piece.labels(),
                                piece.nest())),
                made.diagnostics().stream()
                        .filter(d -> !d.code().equals(PieceCode.NO_GRAIN))
                        .toList());
    }
}
