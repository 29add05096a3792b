package org.gusset.core.check;

import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;

/**
 * What a check or seam found.
 *
 * @param name the seam's name, or what the check tells
 * @param verdict whether it holds
 * @param figures the figures, in words: both lengths, the difference, the tolerance
 * @param place where the draft asks for it
 * @param diagnostic the message, unless it passed or was skipped
 * @param tested the figures that it holds to limits; empty if it looks at none, or has none
 */
public record Finding(
        String name,
        Verdict verdict,
        Phrase figures,
        Place place,
        Optional<Diagnostic> diagnostic,
        List<Tested> tested) {
    public Finding {
        tested = List.copyOf(tested);
    }

    /** A finding without figures. */
    public Finding(String name, Verdict verdict, Phrase figures, Place place, Optional<Diagnostic> diagnostic) {
        this(name, verdict, figures, place, diagnostic, List.of());
    }

    /** This finding with the figures that it looked at. */
    public Finding with(Tested... figuresTested) {
        return new Finding(name, verdict, figures, place, diagnostic, List.of(figuresTested));
    }

    /** This finding with another message. */
    public Finding telling(Diagnostic message) {
        return new Finding(name, verdict, figures, place, Optional.of(message), tested);
    }

    /** How far the worst figure is from failing, negative if it fails; NaN if it looks at none. */
    public double margin() {
        return tested.stream().mapToDouble(Tested::margin).min().orElse(Double.NaN);
    }

    /** How a check came out. */
    public enum Verdict {
        PASSED,
        FAILED,
        /** Something it speaks of is left out by choice. */
        SKIPPED,
        /** Something it speaks of could not be made; the reason is told elsewhere. */
        UNKNOWN
    }
}
