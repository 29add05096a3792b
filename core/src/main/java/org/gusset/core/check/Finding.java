package org.gusset.core.check;

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
 */
public record Finding(String name, Verdict verdict, Phrase figures, Place place, Optional<Diagnostic> diagnostic) {
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
