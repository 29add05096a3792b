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
    private static final int FEW = 6;

    private final LayCloth cloth;
    private final LayOptions options;
    private final Stripes stripes;

    SectionPacking(LayCloth cloth, LayOptions options, Stripes stripes) {
        this.cloth = cloth;
        this.options = options;
        this.stripes = stripes;
    }

    /** The section packed; empty if something fits nowhere. */
    Optional<Packed> pack(Folding folding, List<Lot> lots) {
        double width = Arranging.width(folding, cloth);
        if (folding == Folding.TO_MIDDLE) {
            return toMiddle(lots, width);
        }
        return side(folding, lots, width, false).map(side -> new Packed(folding, width, width, List.of(side)));
    }

    private Optional<Packed.Side> side(Folding folding, List<Lot> lots, double width, boolean flipped) {
        List<Item> items =
                lots.stream().map(l -> l.item(folding, cloth, options, stripes)).toList();
        Strip strip = new Strip(width, items, options.gap());
        return Packer.first(strip).map(packing -> new Packed.Side(lots, strip, packing, flipped));
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
            double needs = lot.needs(Folding.TO_MIDDLE, cloth, options);
            if (needs < width) {
                flaps.add(Math.max(needs, width - needs));
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
            boolean first = lot.fits(flap, Folding.TO_MIDDLE, cloth, options);
            boolean second = lot.fits(width - flap, Folding.TO_MIDDLE, cloth, options);
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
        for (boolean flipped : new boolean[] {false, true}) {
            List<Lot> lots = flipped ? there : here;
            double wide = flipped ? width - flap : flap;
            if (!lots.isEmpty()) {
                if (lots.stream().anyMatch(l -> !l.fits(wide, Folding.TO_MIDDLE, cloth, options))) {
                    return Optional.empty();
                }
                Optional<Packed.Side> side = side(Folding.TO_MIDDLE, lots, wide, flipped);
                if (side.isEmpty()) {
                    return Optional.empty();
                }
                sides.add(side.get());
            }
        }
        return Optional.of(new Packed(Folding.TO_MIDDLE, flap, width, sides));
    }
}
