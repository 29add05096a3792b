package org.gusset.core.cloth;

import java.util.List;
import org.gusset.core.diagnostic.Phrase;

/**
 * Whether what is at hand of a cloth is enough.
 *
 * @param verdict the answer
 * @param plan the plan that it is measured by
 * @param have what is at hand, as bought, in mm
 * @param missing how much longer the plan is; 0 if it fits
 * @param changes what would make it fit, each with the plan that shows it; the smallest change first
 */
public record HaveAnswer(Verdict verdict, LayPlan plan, double have, double missing, List<Change> changes) {
    /** The answer. */
    public enum Verdict {
        /** It is enough: the plan shows how. */
        YES,
        /** No plan was found that is short enough. */
        NO,
        /** There is less cloth than pieces, however they are laid. */
        IMPOSSIBLE
    }

    /**
     * A change that was planned again and fits.
     *
     * @param words what is changed
     * @param plan the plan with the change
     */
    public record Change(Phrase words, LayPlan plan) {}

    public HaveAnswer {
        changes = List.copyOf(changes);
    }
}
