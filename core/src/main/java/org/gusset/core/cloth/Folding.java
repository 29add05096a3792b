package org.gusset.core.cloth;

import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.draft.ClothWays;

/** How a stretch of cloth lies on the table while it is cut. */
public enum Folding {
    /** One layer, right side up. */
    OPEN(1, false, "open, one layer"),
    /** Two layers with one fold along the warp, selvage on selvage. */
    LENGTHWISE(2, false, "folded lengthwise, selvage on selvage"),
    /** Two layers with two folds along the warp: both selvages are folded in until they meet. */
    TO_MIDDLE(2, false, "folded lengthwise, both selvages in to where they meet"),
    /** One fold along the warp, one selvage folded in only so far: two layers to there, one layer beyond. */
    PART(2, false, "folded lengthwise part of the way, one layer beside it"),
    /** Four layers: folded lengthwise, and then across, so that the layers of one half run the other way. */
    TWICE(4, true, "folded twice, lengthwise and then across"),
    /** Two layers with one fold across the warp: the upper one runs the other way. */
    CROSSWISE(2, true, "folded across");

    private final int layers;
    private final boolean turnsLayers;
    private final String english;

    Folding(int layers, boolean turnsLayers, String english) {
        this.layers = layers;
        this.turnsLayers = turnsLayers;
        this.english = english;
    }

    /** How many layers of cloth are cut at once; of one that is folded part of the way in the folded part. */
    public int layers() {
        return layers;
    }

    /** True if the warp of some layers runs the other way, which a cloth with a nap does not allow. */
    public boolean turnsLayers() {
        return turnsLayers;
    }

    /** True if there is a fold along the warp, at which pieces on a fold may lie. */
    public boolean hasFoldAlong() {
        return this == LENGTHWISE || this == TO_MIDDLE || this == PART || this == TWICE;
    }

    /** Lengths of cloth that a length of the folded stretch takes: two where the cloth is folded across. */
    public int lengths() {
        return turnsLayers ? 2 : 1;
    }

    /** How the cloth is laid, in words. */
    public Phrase words() {
        return Phrase.of("lay.folding." + name().toLowerCase(java.util.Locale.ROOT), english);
    }

    /** What a draft asks for. */
    public static Folding of(ClothWays.Laid laid) {
        return switch (laid) {
            case OPEN -> OPEN;
            case LENGTHWISE -> LENGTHWISE;
            case TWICE -> TWICE;
        };
    }
}
