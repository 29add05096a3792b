package org.gusset.core.cloth.packing;

/**
 * What is wrong with a packing.
 *
 * @param kind what it is
 * @param first the number of a placement, or of an item for {@link Kind#DEMAND}; 0 for {@link Kind#LENGTH}
 * @param second the number of the other placement where there are two, else {@code first}
 * @param amount how much it is, in the strip's unit; for {@link Kind#DEMAND} how many pieces too many, negative if too few
 */
public record Flaw(Kind kind, int first, int second, double amount) {
    /** Kinds of flaws. */
    public enum Kind {
        /** An item is placed too often, or not often enough; or a placement is of no item. */
        DEMAND,
        /** A piece lies in an orientation that its item does not allow. */
        ORIENTATION,
        /** A piece reaches beyond the strip's edges, its length or its item's rail. */
        OUTSIDE,
        /** The origin of a piece is not on its lattice. */
        LATTICE,
        /** Two pieces overlap, as JTS relates them. */
        OVERLAP_BY_RELATION,
        /** Two pieces overlap, as their edges tell. */
        OVERLAP_BY_EDGES,
        /** Two pieces are nearer to one another than the gap. */
        GAP,
        /** The length is not finite, or not that of the last piece's end at least. */
        LENGTH
    }
}
