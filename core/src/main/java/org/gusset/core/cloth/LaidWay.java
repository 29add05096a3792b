package org.gusset.core.cloth;

/** How a piece lies in a section. */
public enum LaidWay {
    /** Its fold on the fold of the cloth. */
    AT_FOLD,
    /** Anywhere, as its paper is. */
    FLAT,
    /** A piece with a fold, its paper unfolded to the whole. */
    OPENED
}
