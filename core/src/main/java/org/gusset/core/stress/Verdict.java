package org.gusset.core.stress;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.check.Tested;
import org.gusset.core.diagnostic.Diagnostic;
import org.jspecify.annotations.Nullable;

/** What came of one body. Not changed once made. */
final class Verdict {
    /** How one body fails. */
    record Told(String subject, int check, Optional<Diagnostic> message, String words) {}

    final Map<Trouble, Told> troubles;
    /** By check: the figure that is nearest to failing; null if there is none. */
    final List<@Nullable Tested> figures;
    /** By axis: the value that the draft worked with, the number of a word, or NaN if there is none. */
    final double[] values;
    /** A piece could not be made. */
    final boolean refused;

    Verdict(Map<Trouble, Told> troubles, List<@Nullable Tested> figures, double[] values, boolean refused) {
        this.troubles = new LinkedHashMap<>(troubles);
        this.figures = figures;
        this.values = values;
        this.refused = refused;
    }

    boolean passed() {
        return troubles.isEmpty();
    }

    /** How far a check is from failing; infinite if it has no figure. */
    double margin(int check) {
        Tested figure = figures.get(check);
        return figure == null ? Double.POSITIVE_INFINITY : figure.margin();
    }
}
