package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.Drawing;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Piece;

/**
 * Plans how the pieces of drawings are laid on cloth. Of several ways to fold the cloth it takes the one of which least has to be bought,
 * and of those that cost the same the one that is asked for. The same drawing, options and rounds give the same plan.
 */
public final class LayPlanner {
    /** So many pieces are laid on one cloth at the most. */
    private static final int MOST_CUTS = 2_000;

    private final LayOptions options;
    private final LaySearch search;

    public LayPlanner(LayOptions options, LaySearch search) {
        this.options = options;
        this.search = search;
    }

    public LayOptions options() {
        return options;
    }

    LayPlanner with(LayOptions other) {
        return new LayPlanner(other, search);
    }

    /** The cloths that a drawing names, as its draft describes them. */
    public static List<LayCloth> cloths(Drawing drawing) {
        return drawing.cloths().stream().map(LayCloth::of).toList();
    }

    /** The names of the cloths that pieces are cut from and the draft does not describe; empty for a draft that names none. */
    public static List<String> undescribed(Drawing drawing) {
        Set<String> known = new LinkedHashSet<>();
        drawing.cloths().forEach(c -> known.add(c.name()));
        Set<String> missing = new LinkedHashSet<>();
        for (Piece piece : drawing.pieces()) {
            for (Cut cut : piece.cuts()) {
                cut.cloth().filter(c -> !known.contains(c)).ifPresent(missing::add);
            }
        }
        return List.copyOf(missing);
    }

    /**
     * A plan for each cloth from which something is cut, in their order.
     *
     * @param cloths the cloths; a piece that does not say from which it is cut is laid on the first
     * @return the plans that could be made, with errors for the others
     */
    public Outcome<List<LayPlan>> plan(Drawing drawing, List<LayCloth> cloths) {
        List<Diagnostic> told = new ArrayList<>();
        List<LayPlan> plans = new ArrayList<>();
        Set<String> known = new LinkedHashSet<>();
        cloths.forEach(c -> known.add(c.name()));
        Set<String> unsure = new LinkedHashSet<>();
        for (Piece piece : drawing.pieces()) {
            for (Cut cut : piece.cuts()) {
                if (cut.cloth().isPresent() && !known.contains(cut.cloth().get())) {
                    told.add(noCloth(piece, cut.cloth().get()));
                } else if (cut.cloth().isEmpty() && cloths.size() > 1 && unsure.add(piece.name())) {
                    told.add(Diagnostic.of(
                                    ClothCode.FIRST_CLOTH,
                                    Place.named(piece.name()),
                                    "piece",
                                    piece.name(),
                                    "cloth",
                                    cloths.get(0).name())
                            .with(Hint.of("cloth.from", "Write `from` and the cloth behind its `cut`.")));
                }
            }
        }
        Effort effort = new Effort(options.most());
        for (int i = 0; i < cloths.size(); i++) {
            Outcome<LayPlan> plan = plan(drawing, cloths.get(i), i == 0, Trial.NONE, cloths.size() - i, effort);
            told.addAll(plan.diagnostics());
            plan.value().ifPresent(plans::add);
        }
        return Outcome.of(List.copyOf(plans), told);
    }

    private static Diagnostic noCloth(Piece piece, String cloth) {
        return Diagnostic.of(ClothCode.NO_CLOTH, Place.named(piece.name()), "piece", piece.name(), "cloth", cloth)
                .with(Hint.of("cloth.width", "Say how wide it is: `cloth {cloth} wide 140 cm`.", "cloth", cloth));
    }

    /**
     * A plan for one cloth, with a change of its pieces.
     *
     * @param first true if what does not say from which cloth it is cut is laid on this one
     * @param clothsLeft how many cloths share what is left of the time of the search, this one among them
     * @param effort what may still be spent on all cloths of the drawing
     */
    Outcome<LayPlan> plan(Drawing drawing, LayCloth cloth, boolean first, Trial trial, int clothsLeft, Effort effort) {
        CutReading reading = new CutReading(drawing.draft(), cloth, options);
        CutReading.Belongs belongs =
                (piece, cut) -> cut.cloth().map(c -> c.equals(cloth.name())).orElse(first);
        List<Wanted> wanted = reading.read(drawing.pieces(), belongs, trial);
        List<Diagnostic> told = new ArrayList<>(reading.diagnostics());
        if (wanted.isEmpty()) {
            if (told.isEmpty()) {
                told.add(Diagnostic.of(ClothCode.NO_CUTS, Place.named(cloth.name()), "cloth", cloth.name()));
            }
            return Outcome.none(told);
        }
        long cuts = wanted.stream().mapToLong(Wanted::copies).sum();
        if (cuts > MOST_CUTS) {
            told.add(tooMuch(cloth, cuts, MOST_CUTS + " pieces"));
            return Outcome.none(told);
        }
        told.addAll(Stripes.unmatched(cloth, wanted));
        Optional<Folding> turned = options.only().or(cloth::asked).filter(Folding::turnsLayers);
        if (cloth.oneWay() && turned.isPresent()) {
            told.add(Diagnostic.of(
                            ClothCode.NAP_TURNED,
                            Place.named(cloth.name()),
                            "cloth",
                            cloth.name(),
                            "folding",
                            turned.get().words())
                    .with(Hint.of("cloth.nap", "Fold it lengthwise, or lay it open.")));
            return Outcome.none(told);
        }
        ClothLaying laying = new ClothLaying(cloth, options, wanted, effort);
        List<Laid> all = laying.all();
        if (all.isEmpty()) {
            List<Diagnostic> wide = tooWide(laying, cloth);
            if (effort.spent()) {
                told.add(tooMuch(cloth, cuts, effort.most() + " steps"));
            } else {
                told.addAll(wide.isEmpty() ? List.of(noLay(cloth)) : wide);
            }
            return Outcome.none(told);
        }
        boolean bias = wanted.stream().anyMatch(w -> w.shape().oneHand());
        List<Wanted> best = wanted;
        if (bias) {
            // Shorter lengths of a bias strip find room beside the pieces where long ones do not.
            for (int more = 1; more <= 3; more++) {
                List<Wanted> other = new CutReading(drawing.draft(), cloth, options)
                        .read(drawing.pieces(), belongs, trial.withBiasLengths(more));
                List<Laid> shorter = new ClothLaying(cloth, options, other, effort).all();
                if (shortest(shorter) < shortest(all) - 1e-6) {
                    all = shorter;
                    best = other;
                }
            }
        }
        LayPlan plan = chosen(cloth, best, all, clothsLeft, effort);
        options.only()
                .filter(f -> plan.sections().stream().noneMatch(s -> s.folding() == f))
                .ifPresent(f -> told.add(Diagnostic.of(
                                ClothCode.OTHERWISE_FOLDED,
                                Place.named(cloth.name()),
                                "cloth",
                                cloth.name(),
                                "how",
                                f.words(),
                                "laid",
                                plan.words())
                        .with(Hint.of("cloth.any-folding", "Let it be folded in any way, or lay it open."))));
        return Outcome.of(plan, told);
    }

    private static Diagnostic tooMuch(LayCloth cloth, long cuts, String most) {
        return Diagnostic.of(
                        ClothCode.TOO_MUCH,
                        Place.named(cloth.name()),
                        "cloth",
                        cloth.name(),
                        "count",
                        cuts,
                        "most",
                        most)
                .with(Hint.of("cloth.fewer", "Plan fewer pieces at once, or outlines of fewer corners."));
    }

    private static double shortest(List<Laid> all) {
        return all.stream().mapToDouble(Laid::length).min().orElse(Double.POSITIVE_INFINITY);
    }

    private LayPlan chosen(LayCloth cloth, List<Wanted> wanted, List<Laid> all, int clothsLeft, Effort effort) {
        double area = wanted.stream().mapToDouble(Wanted::area).sum();
        List<Laid> improved = search.improved(all, clothsLeft * (cloth.oneWay() ? 2 : 1));
        Optional<Double> withoutNap = Optional.empty();
        Laid taken = taken(cloth, improved);
        if (cloth.oneWay()) {
            LayCloth plain = cloth.withOneWay(false);
            List<Laid> free =
                    search.improved(new ClothLaying(plain, options, wanted, effort).all(), clothsLeft * 2 - 1);
            // What is laid with the nap in mind can be cut without one.
            withoutNap = Optional.of(shortest(free))
                    .filter(Double::isFinite)
                    .map(length -> Math.min(length, taken.length()));
        }
        return new LayPlan(cloth, taken.sections(), area, compared(cloth, improved, taken), withoutNap, options.sale());
    }

    private Laid taken(LayCloth cloth, List<Laid> all) {
        Folding asked = cloth.asked().orElse(Folding.LENGTHWISE);
        return all.stream()
                .min(Comparator.comparingDouble((Laid l) -> options.sale().roundedUp(cloth.bought(l.length())))
                        .thenComparing(l -> l.kind().folding() != asked)
                        .thenComparing(Laid::spares)
                        .thenComparingInt(Laid::placements)
                        .thenComparingDouble(Laid::length))
                .orElseThrow();
    }

    private List<LayPlan.Compared> compared(LayCloth cloth, List<Laid> all, Laid taken) {
        Optional<Folding> asked = options.only().or(cloth::asked);
        Map<String, LayPlan.Compared> byWords = new LinkedHashMap<>();
        for (Laid one : all) {
            Phrase words = one.words();
            boolean wantedSo = asked.filter(f -> f == one.kind().folding()).isPresent();
            LayPlan.Compared now = new LayPlan.Compared(words, one.length(), one.equals(taken), wantedSo);
            byWords.merge(
                    words.toString(), now, (a, b) -> a.taken() || (!b.taken() && a.length() <= b.length()) ? a : b);
        }
        return List.copyOf(byWords.values());
    }

    /** Each piece by itself is narrow enough: it is the folding that is asked for, or the pattern, that leaves no place. */
    private Diagnostic noLay(LayCloth cloth) {
        Phrase how = options.only()
                .map(Folding::words)
                .orElseGet(() -> Phrase.of("lay.so-that-it-meets", "so that its pattern meets"));
        return Diagnostic.of(ClothCode.NO_LAY, Place.named(cloth.name()), "cloth", cloth.name(), "how", how)
                .with(
                        options.only().isPresent()
                                ? Hint.of("cloth.any-folding", "Let it be folded in any way, or lay it open.")
                                : Hint.of(
                                        "cloth.along-only",
                                        "Let only the stripes across meet, or take a wider cloth."));
    }

    private List<Diagnostic> tooWide(ClothLaying laying, LayCloth cloth) {
        Map<String, Diagnostic> byPiece = new LinkedHashMap<>();
        for (Lot lot : laying.tooWide()) {
            String piece = lot.shape().piece().name();
            byPiece.putIfAbsent(
                    piece,
                    Diagnostic.of(
                                    ClothCode.TOO_WIDE,
                                    Place.named(piece),
                                    "piece",
                                    piece,
                                    "cloth",
                                    cloth.name(),
                                    "needs",
                                    Fact.length(lot.needs(cloth, options)),
                                    "width",
                                    Fact.length(cloth.usable()))
                            .with(Hint.of(
                                    "cloth.wider",
                                    "Take a wider cloth, or cut the piece in panels with a seam between them.")));
        }
        return List.copyOf(byPiece.values());
    }
}
