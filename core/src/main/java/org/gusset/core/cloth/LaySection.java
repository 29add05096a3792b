package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.cloth.packing.Flaw;
import org.gusset.core.cloth.packing.Packing;
import org.gusset.core.cloth.packing.PackingCheck;
import org.gusset.core.cloth.packing.Strip;

/**
 * A stretch of the cloth that is folded in one way.
 *
 * @param folding how
 * @param start where on the cloth it begins
 * @param length how long it is as it lies on the table
 * @param width how wide it is as it lies on the table, selvages left out; folds lie at 0, with both selvages in the middle at the width too
 * @param meets where a selvage lies that is folded in, counted from the fold at 0: both where they meet, or one with a single layer
 *     beyond; else the width
 * @param pieces what lies on it
 * @param sides the strips that were packed: one, or two where a selvage is folded in
 */
public record LaySection(
        Folding folding,
        double start,
        double length,
        double width,
        double meets,
        List<LaidPiece> pieces,
        List<Side> sides) {
    /**
     * One strip of the section with what is packed on it.
     *
     * @param from where across the section its y = 0 lies, before it is flipped
     * @param flipped true if its y counts from the other fold
     */
    public record Side(Strip strip, Packing packing, double from, boolean flipped) {}

    public LaySection {
        pieces = List.copyOf(pieces);
        sides = List.copyOf(sides);
    }

    /** How much of the cloth's length it takes: twice as much as on the table where it is folded across. */
    public double clothLength() {
        return length * folding.lengths();
    }

    /** Where on the cloth it ends. */
    public double end() {
        return start + clothLength();
    }

    /** What {@link PackingCheck} finds wrong with its strips; nothing, or it is a fault of this library. */
    public List<Flaw> flaws() {
        List<Flaw> flaws = new ArrayList<>();
        sides.forEach(side -> flaws.addAll(PackingCheck.flaws(side.strip(), side.packing())));
        return flaws;
    }
}
