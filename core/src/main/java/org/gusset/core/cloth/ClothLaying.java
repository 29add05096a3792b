package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Packs every arrangement of what is wanted of one cloth, at once. */
final class ClothLaying {
    /** So many single pieces are tried beside those on folded cloth. */
    private static final int MOST_TRIED = 12;

    private final LayCloth cloth;
    private final LayOptions options;
    private final Arranging arranging;
    private final SectionPacking packing;
    private final Map<Object, Optional<Packed>> known = new LinkedHashMap<>();

    ClothLaying(LayCloth cloth, LayOptions options, List<Wanted> wanted, Effort effort) {
        this.cloth = cloth;
        this.options = options;
        this.arranging = new Arranging(cloth, options, wanted);
        this.packing = new SectionPacking(cloth, options, Stripes.of(cloth, wanted), effort);
    }

    /** All that could be packed; empty if something fits on no arrangement, or none within the effort. */
    List<Laid> all() {
        List<Laid> all = new ArrayList<>();
        for (Arrangement arrangement : arranging.all()) {
            if (!arrangement.tooWide().isEmpty() || (stripesAcross() && middle(arrangement))) {
                continue;
            }
            packed(arrangement.kind(), arrangement.sections()).ifPresent(laid -> {
                all.add(laid);
                if (arrangement.kind() == Arrangement.Kind.LENGTHWISE
                        && arrangement.sections().containsKey(Folding.OPEN)) {
                    filled(arrangement.sections(), laid).ifPresent(all::add);
                }
            });
        }
        return all;
    }

    /** With stripes that meet across, two folds would have to lie a whole number of repeats apart. */
    private boolean stripesAcross() {
        return cloth.repeatAcross().isPresent() && !cloth.matched().isEmpty();
    }

    private static boolean middle(Arrangement arrangement) {
        return arrangement.sections().containsKey(Folding.TO_MIDDLE)
                || arrangement.sections().containsKey(Folding.PART);
    }

    /** What fits nowhere in the arrangement that comes nearest. */
    List<Lot> tooWide() {
        return arranging.all().stream()
                .map(Arrangement::tooWide)
                .filter(lots -> !lots.isEmpty())
                .min(Comparator.comparingInt(List::size))
                .orElse(List.of());
    }

    private Optional<Laid> packed(Arrangement.Kind kind, Map<Folding, List<Lot>> sections) {
        List<Packed> packed = new ArrayList<>();
        for (Folding folding : new Arrangement(kind, sections, List.of()).foldings()) {
            List<Lot> lots = sections.getOrDefault(folding, List.of());
            Optional<Packed> one = known.computeIfAbsent(List.of(folding, lots), key -> packing.pack(folding, lots));
            if (one.isEmpty()) {
                return Optional.empty();
            }
            packed.add(one.get());
        }
        double repeat = cloth.repeatAlong().orElse(0.0);
        return Optional.of(new Laid(kind, packed, options.gap(), repeat));
    }

    /** Single pieces moved one by one from the open cloth to room that is left beside those on folded cloth, where they are cut twice. */
    private Optional<Laid> filled(Map<Folding, List<Lot>> sections, Laid before) {
        List<Lot> open = new ArrayList<>(sections.getOrDefault(Folding.OPEN, List.of()));
        if (open.isEmpty() || !sections.containsKey(Folding.LENGTHWISE)) {
            return Optional.empty();
        }
        List<Lot> candidates = open.stream()
                .filter(l -> l.way() == LaidWay.FLAT)
                .sorted(Comparator.comparingDouble(
                        (Lot l) -> -SafeRing.polygon(l.ring()).getArea()))
                .limit(MOST_TRIED)
                .toList();
        Optional<Laid> best = Optional.empty();
        Map<Folding, List<Lot>> now = new EnumMap<>(sections);
        for (Lot lot : candidates) {
            Map<Folding, List<Lot>> next = new EnumMap<>(now);
            List<Lot> folded = new ArrayList<>(now.get(Folding.LENGTHWISE));
            List<Lot> rest = new ArrayList<>(now.getOrDefault(Folding.OPEN, List.of()));
            rest.remove(lot);
            Copies spare = lot.hand() == Lot.Hand.MIRRORED ? new Copies(1, 0, 0) : new Copies(0, 1, 0);
            Lot doubled = new Lot(lot.shape(), LaidWay.FLAT, Lot.Hand.BOTH, lot.times(), spare, Optional.empty());
            if (!doubled.fits(Arranging.width(Folding.LENGTHWISE, cloth), cloth, options)) {
                continue;
            }
            folded.add(doubled);
            next.put(Folding.LENGTHWISE, folded);
            if (rest.isEmpty()) {
                next.remove(Folding.OPEN);
            } else {
                next.put(Folding.OPEN, rest);
            }
            Optional<Laid> tried = packed(Arrangement.Kind.LENGTHWISE, next);
            if (tried.isPresent() && tried.get().length() < best.orElse(before).length() - 1e-6) {
                best = tried;
                now = next;
            }
        }
        return best;
    }
}
