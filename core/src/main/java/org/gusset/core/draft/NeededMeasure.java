package org.gusset.core.draft;

import java.util.List;

/**
 * A measure that a draft needs of a body, with the choices that were made.
 *
 * @param measure the measure
 * @param pieces the pieces that rest on it, in file order, be it through other values or through the rule that estimates another measure
 * @param checks true if seams, finished measures, openings or checks rest on it
 * @param standsInFor the measures whose rules alone ask for it: if they are all taken, nothing rests on it; empty if something else does
 */
public record NeededMeasure(Draft.Measure measure, List<String> pieces, boolean checks, List<String> standsInFor) {
    public NeededMeasure {
        pieces = List.copyOf(pieces);
        standsInFor = List.copyOf(standsInFor);
    }

    public String name() {
        return measure.name();
    }

    /** True if the draft cannot be drawn without it: it has no rule, and something rests on it whatever else is taken. */
    public boolean required() {
        return !measure.estimated() && standsInFor.isEmpty();
    }
}
