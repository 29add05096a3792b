package org.gusset.core.grade;

/** How the moves of a corner run over the sizes of a chart. */
public enum Course {
    /** Every move is the same. */
    CONSTANT,
    /**
     * The moves differ, but only as the chart's own steps do: what the measures that the piece rests on explain in earlier sizes, they
     * explain in later ones.
     */
    WITH_CHART,
    /** The moves differ although the chart's steps are alike: the draft is not linear there. */
    BENDS,
    /** There is no move: the corner is not there in two neighbouring sizes. */
    NONE
}
