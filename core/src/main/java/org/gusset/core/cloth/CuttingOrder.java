package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.pattern.Grain;
import org.gusset.core.pattern.JoinPlan;
import org.locationtech.jts.geom.Polygon;

/**
 * In which order the pieces of a plan are cut: section by section, as the cloth is folded anew only when the one before is done, and in
 * each from its beginning to its end, so that the cloth can be rolled off; where two begin alike the larger first.
 */
public final class CuttingOrder {
    /** Pieces that begin within this count as beginning alike, in mm. */
    private static final double ALIKE = 20;

    /** What rounding may do to where a piece begins, in mm. */
    private static final double ROUNDING = 1e-6;

    private CuttingOrder() {}

    /**
     * A piece that is cut.
     *
     * @param number counts from 1
     * @param section the section's number, from 0
     * @param piece the piece in its place
     * @param length of a joined strip which of its lengths it is, from 1; else 0
     * @param words what is cut, with its name
     */
    public record Step(int number, int section, LaidPiece piece, int length, Phrase words) {}

    public static List<Step> of(LayPlan plan) {
        List<Step> steps = new ArrayList<>();
        Map<String, Integer> lengths = new LinkedHashMap<>();
        for (int s = 0; s < plan.sections().size(); s++) {
            LaySection section = plan.sections().get(s);
            List<LaidPiece> pieces = new ArrayList<>(section.pieces());
            pieces.sort(Comparator.comparingDouble((LaidPiece p) -> Math.floor((p.from() + ROUNDING) / ALIKE))
                    .thenComparingDouble(p -> -area(p))
                    .thenComparingDouble(LaidPiece::from)
                    .thenComparingDouble(p -> p.ring().get(0).y()));
            for (LaidPiece piece : pieces) {
                int length = 0;
                if (piece.join().filter(j -> j.lengths() > 1).isPresent()) {
                    length = lengths.merge(
                                    piece.piece().name(),
                                    Math.max(
                                            1,
                                            piece.gives().minus(piece.spare()).all()),
                                    Integer::sum)
                            - Math.max(0, piece.gives().minus(piece.spare()).all() - 1);
                }
                steps.add(new Step(steps.size() + 1, s, piece, length, words(piece, length)));
            }
        }
        return List.copyOf(steps);
    }

    private static double area(LaidPiece piece) {
        Polygon polygon = SafeRing.polygon(piece.ring());
        return polygon.getArea();
    }

    private static Phrase words(LaidPiece laid, int length) {
        String name = laid.piece().name().replace('_', ' ');
        List<Phrase> parts = new ArrayList<>();
        parts.add(Phrase.of("lay.piece", "{name}", "name", name));
        parts.add(gives(laid));
        if (laid.piece().grain().filter(Grain::bias).isPresent()) {
            parts.add(Phrase.of("lay.bias", "on the bias"));
        }
        laid.join().filter(j -> j.lengths() > 1).ifPresent(join -> parts.add(length(laid, join, length)));
        laid.inner()
                .ifPresent(inner -> parts.add(Phrase.of(
                        "lay.inner",
                        "then {name} out of the upper two layers",
                        "name",
                        inner.name().replace('_', ' '))));
        if (laid.mirrored() && laid.layers() == 1 && laid.way() == LaidWay.FLAT) {
            parts.add(Phrase.of("lay.mirrored", "paper wrong side up"));
        }
        if (laid.turned()) {
            parts.add(Phrase.of("lay.turned", "turned end for end"));
        }
        if (laid.spare().all() > 0) {
            parts.add(Phrase.of(
                    "lay.spare",
                    "{count} of them to spare",
                    "count",
                    laid.spare().all()));
        }
        return Phrase.joined("lay.step", ", ", parts);
    }

    private static Phrase length(LaidPiece laid, JoinPlan join, int length) {
        int useful = laid.gives().minus(laid.spare()).all();
        int within = (length - 1) % join.lengths() + 1;
        if (useful <= 1) {
            return Phrase.of("lay.length", "length {number} of {count}", "number", within, "count", join.lengths());
        }
        int last = (length + useful - 2) % join.lengths() + 1;
        return useful == 2
                ? Phrase.of(
                        "lay.lengths",
                        "lengths {first} and {last} of {count}",
                        "first",
                        within,
                        "last",
                        last,
                        "count",
                        join.lengths())
                : Phrase.of(
                        "lay.lengths.many",
                        "{all} lengths, {count} to each strip",
                        "all",
                        useful,
                        "count",
                        join.lengths());
    }

    private static Phrase gives(LaidPiece laid) {
        Copies gives = laid.gives();
        return switch (laid.way()) {
            case AT_FOLD ->
                gives.whole() == 1
                        ? Phrase.of("lay.fold", "on the fold")
                        : Phrase.of("lay.folds", "on the fold, {count} at once", "count", gives.whole());
            case OPENED ->
                gives.whole() == 1
                        ? Phrase.of("lay.opened", "opened out")
                        : Phrase.of("lay.openeds", "opened out, {count} at once", "count", gives.whole());
            case FLAT -> {
                if (laid.layers() == 1) {
                    yield Phrase.of("lay.single", "1 piece");
                }
                yield gives.plain() == 1
                        ? Phrase.of("lay.pair", "a pair")
                        : Phrase.of("lay.pairs", "{count} pairs", "count", gives.plain());
            }
        };
    }
}
