package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.gusset.core.cloth.packing.Item;
import org.gusset.core.cloth.packing.Packer;
import org.gusset.core.cloth.packing.Strip;

/** Packs the lots of a section at once. */
final class SectionPacking {
    /** Up to so many placements every way of sharing them over two folds is tried. */
    private static final int FEW = 4;

    /** So many widths of a part are tried at the most. */
    private static final int MOST_BREAKS = 8;

    private final LayCloth cloth;
    private final LayOptions options;
    private final Stripes stripes;
    private final Effort effort;

    SectionPacking(LayCloth cloth, LayOptions options, Stripes stripes, Effort effort) {
        this.cloth = cloth;
        this.options = options;
        this.stripes = stripes;
        this.effort = effort;
    }

    /** The section packed; empty if something fits nowhere, or it takes more than the effort that is left. */
    Optional<Packed> pack(Folding folding, List<Lot> lots) {
        double width = Arranging.width(folding, cloth);
        if (folding == Folding.TO_MIDDLE) {
            return toMiddle(lots, width);
        } else if (folding == Folding.PART) {
            return part(lots);
        }
        return side(folding, lots, width, 0, false).map(side -> new Packed(folding, width, width, List.of(side)));
    }

    private Optional<Packed.Side> side(Folding folding, List<Lot> lots, double width, double from, boolean flipped) {
        List<Item> items =
                lots.stream().map(l -> l.item(folding, cloth, options, stripes)).toList();
        Strip strip = new Strip(width, items, options.gap());
        if (!effort.take(strip)) {
            return Optional.empty();
        }
        return Packer.first(strip).map(packing -> new Packed.Side(folding, lots, strip, packing, from, flipped));
    }

    /** One selvage folded in as far as is best: what must be cut double in the folded part, single pieces beside it. */
    private Optional<Packed> part(List<Lot> lots) {
        List<Lot> doubled = lots.stream().filter(l -> !l.single()).toList();
        List<Lot> single = lots.stream().filter(Lot::single).toList();
        if (doubled.isEmpty() || single.isEmpty()) {
            return Optional.empty();
        }
        double usable = cloth.usable();
        TreeSet<Double> singles = new TreeSet<>();
        breaks(single).forEach(b -> singles.add(b + options.gap()));
        breaks(doubled).forEach(d -> singles.add(usable - 2 * d));
        Packed best = null;
        for (double beside : singles) {
            double fold = (usable - beside) / 2;
            boolean fits = beside > 0
                    && fold > 0
                    && doubled.stream().allMatch(l -> l.fits(fold, cloth, options))
                    && single.stream().allMatch(l -> l.fits(beside - options.gap(), cloth, options));
            if (!fits) {
                continue;
            }
            Optional<Packed.Side> folded = side(Folding.LENGTHWISE, doubled, fold, 0, false);
            Optional<Packed.Side> open =
                    side(Folding.OPEN, single, beside - options.gap(), fold + options.gap(), false);
            if (folded.isPresent() && open.isPresent()) {
                Packed packed = new Packed(Folding.PART, fold, fold + beside, List.of(folded.get(), open.get()));
                if (best == null || packed.length() < best.length()) {
                    best = packed;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** Widths at which more of some lots come to lie beside one another: what one takes, and two of them. */
    private TreeSet<Double> breaks(List<Lot> lots) {
        TreeSet<Double> needs = new TreeSet<>();
        lots.forEach(l -> needs.add(l.needs(cloth, options)));
        TreeSet<Double> breaks = new TreeSet<>(needs);
        for (double one : needs) {
            for (double other : needs) {
                breaks.add(one + other);
            }
        }
        double least = needs.last();
        breaks.removeIf(b -> b < least);
        while (breaks.size() > MOST_BREAKS) {
            breaks.pollLast();
        }
        return breaks;
    }

    /** Both selvages folded in: what lies at the one fold and what at the other, and how far each is folded in. */
    private Optional<Packed> toMiddle(List<Lot> lots, double width) {
        List<Lot> single = new ArrayList<>();
        for (Lot lot : lots) {
            for (int i = 0; i < lot.times(); i++) {
                single.add(lot.times(1));
            }
        }
        single.sort(Comparator.comparingDouble(
                (Lot l) -> -SafeRing.polygon(l.ring()).getArea()));
        TreeSet<Double> flaps = new TreeSet<>();
        flaps.add(width / 2);
        for (Lot lot : single) {
            double needs = lot.needs(cloth, options);
            if (needs < width) {
                flaps.add(Math.max(needs, width - options.gap() - needs));
            }
        }
        Packed best = null;
        for (double flap : flaps) {
            Optional<Packed> packed =
                    single.size() <= FEW ? everyWay(single, flap, width) : byTurns(single, flap, width);
            if (packed.isPresent() && (best == null || packed.get().length() < best.length())) {
                best = packed.get();
            }
        }
        return Optional.ofNullable(best);
    }

    private Optional<Packed> everyWay(List<Lot> single, double flap, double width) {
        Packed best = null;
        for (int ways = 0; ways < 1 << single.size(); ways++) {
            List<Lot> here = new ArrayList<>();
            List<Lot> there = new ArrayList<>();
            for (int i = 0; i < single.size(); i++) {
                ((ways >> i & 1) == 0 ? here : there).add(single.get(i));
            }
            Optional<Packed> packed = sides(here, there, flap, width);
            if (packed.isPresent() && (best == null || packed.get().length() < best.length())) {
                best = packed.get();
            }
        }
        return Optional.ofNullable(best);
    }

    /** The larger ones first, each to the fold where less lies. */
    private Optional<Packed> byTurns(List<Lot> single, double flap, double width) {
        List<Lot> here = new ArrayList<>();
        List<Lot> there = new ArrayList<>();
        double[] load = new double[2];
        for (Lot lot : single) {
            double area = SafeRing.polygon(lot.ring()).getArea();
            boolean first = lot.fits(flap, cloth, options);
            boolean second = lot.fits(width - flap - options.gap(), cloth, options);
            if (!first && !second) {
                return Optional.empty();
            }
            boolean toFirst = first && (!second || load[0] / flap <= load[1] / (width - flap));
            (toFirst ? here : there).add(lot);
            load[toFirst ? 0 : 1] += area;
        }
        return sides(here, there, flap, width);
    }

    private Optional<Packed> sides(List<Lot> here, List<Lot> there, double flap, double width) {
        List<Packed.Side> sides = new ArrayList<>();
        double between = here.isEmpty() || there.isEmpty() ? 0 : options.gap();
        for (boolean flipped : new boolean[] {false, true}) {
            List<Lot> lots = flipped ? there : here;
            double wide = flipped ? width - flap - between : flap;
            if (!lots.isEmpty()) {
                if (lots.stream().anyMatch(l -> !l.fits(wide, cloth, options))) {
                    return Optional.empty();
                }
                Optional<Packed.Side> side = side(Folding.TO_MIDDLE, lots, wide, 0, flipped);
                if (side.isEmpty()) {
                    return Optional.empty();
                }
                sides.add(side.get());
            }
        }
        return Optional.of(new Packed(Folding.TO_MIDDLE, flap, width, sides));
    }
}
