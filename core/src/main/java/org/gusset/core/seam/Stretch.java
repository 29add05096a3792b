package org.gusset.core.seam;

import org.gusset.core.seam.Walk.Band;

/**
 * A stretch of a seam between two places that come together. Lengths in mm, counted from the start of the seam.
 *
 * @param from where it begins, in words; empty for the start of the seam
 * @param to where it ends; empty for the end of the seam
 * @param firstFrom where it begins on the first side
 * @param firstTo where it ends on the first side
 * @param secondFrom where it begins on the second side
 * @param secondTo where it ends on the second side
 * @param wanted how much longer the first side may be
 */
public record Stretch(
        String from, String to, double firstFrom, double firstTo, double secondFrom, double secondTo, Band wanted) {
    public double firstLength() {
        return firstTo - firstFrom;
    }

    public double secondLength() {
        return secondTo - secondFrom;
    }

    /** How much longer the first side is. */
    public double ease() {
        return firstLength() - secondLength();
    }
}
