package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Which shapes are cut in which section of the cloth.
 *
 * @param kind what kind it is
 * @param sections the lots of each section, in the order in which the sections follow one another
 * @param tooWide what fits nowhere
 */
record Arrangement(Kind kind, Map<Folding, List<Lot>> sections, List<Lot> tooWide) {
    /** The order of cutting: folded cloth first, what is left is opened. */
    private static final List<Folding> ORDER = List.of(
            Folding.TWICE, Folding.TO_MIDDLE, Folding.PART, Folding.LENGTHWISE, Folding.CROSSWISE, Folding.OPEN);

    /** The arrangements that are compared. */
    enum Kind {
        /** What can be is cut folded lengthwise, single pieces from cloth that is opened. */
        LENGTHWISE(Folding.LENGTHWISE),
        /** All is cut folded lengthwise, single pieces twice. */
        LENGTHWISE_ALL(Folding.LENGTHWISE),
        /** All is cut from one layer. */
        OPEN(Folding.OPEN),
        /** Single pieces in one layer beside the rest, for which one selvage is folded in. */
        PART(Folding.PART),
        /** Pieces on a fold with both selvages folded in, pairs folded lengthwise, single pieces open. */
        TO_MIDDLE_FOLDS(Folding.TO_MIDDLE),
        /** Pieces on a fold and pairs with both selvages folded in, single pieces open. */
        TO_MIDDLE(Folding.TO_MIDDLE),
        /** What can be is cut folded twice, the rest folded lengthwise, single pieces open. */
        TWICE(Folding.TWICE),
        /** Pairs are cut folded across, all else open. */
        CROSSWISE(Folding.CROSSWISE);

        private final Folding folding;

        Kind(Folding folding) {
            this.folding = folding;
        }

        Folding folding() {
            return folding;
        }
    }

    Arrangement {
        Map<Folding, List<Lot>> copy = new EnumMap<>(Folding.class);
        for (Folding folding : ORDER) {
            List<Lot> lots = sections.getOrDefault(folding, List.of());
            if (!lots.isEmpty()) {
                copy.put(folding, List.copyOf(lots));
            }
        }
        sections = copy;
        tooWide = List.copyOf(tooWide);
    }

    /** The sections in the order in which they follow one another. */
    List<Folding> foldings() {
        List<Folding> order = new ArrayList<>();
        for (Folding folding : ORDER) {
            if (sections.containsKey(folding)) {
                order.add(folding);
            }
        }
        return order;
    }
}
