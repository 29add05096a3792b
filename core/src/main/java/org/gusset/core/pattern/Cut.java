package org.gusset.core.pattern;

import java.util.Optional;

/**
 * One line of the cutting list of a piece.
 *
 * @param count how many, as said in the draft
 * @param arrangement how they lie
 * @param cloth the cloth's name, if said
 * @param allowance the allowance of this cut: empty for the piece's own, 0 for without, else one width all round
 */
public record Cut(int count, Arrangement arrangement, Optional<String> cloth, Optional<Double> allowance) {
    /** How the copies of a piece are cut. */
    public enum Arrangement {
        /** All the same way up. */
        SINGLE,
        /** In mirrored pairs: {@code count} pairs. */
        PAIRS,
        /** Each on a fold of the cloth. */
        ON_FOLD,
        /** For the wearer's left side only. */
        LEFT,
        /** For the wearer's right side only. */
        RIGHT,
        /** Layers that lie on one another. */
        LAYERS
    }

    /** How many pieces of cloth this line gives: a pair is two. */
    public int pieces() {
        return arrangement == Arrangement.PAIRS ? 2 * count : count;
    }

    /** How many times an edge of the piece is worn because of this line: on a fold two halves, layers once. */
    int worn() {
        if (arrangement == Arrangement.LAYERS) {
            return 1;
        }
        return arrangement == Arrangement.PAIRS || arrangement == Arrangement.ON_FOLD ? 2 * count : count;
    }
}
