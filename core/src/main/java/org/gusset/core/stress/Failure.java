package org.gusset.core.stress;

import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Place;

/**
 * One way in which bodies fail.
 *
 * @param kind what happened
 * @param code the message's code; for an exception its class
 * @param subject the check, seam or piece that it is about; empty if it is about neither
 * @param place where in the draft
 * @param bodies how many legal bodies fail so, those of the search among them
 * @param spread how many of those that are spread evenly
 * @param first the first of them
 * @param worst the one that fails most, if there is a figure
 * @param message what is told of the worst, else of the first; empty if nothing is
 * @param words the exception's message, empty for others
 * @param cure the range that, made narrower, keeps all of them out; none if no single one does, or if it was not sought
 */
public record Failure(
        Kind kind,
        String code,
        String subject,
        Place place,
        int bodies,
        int spread,
        Body first,
        Body worst,
        Optional<Diagnostic> message,
        String words,
        Optional<Cure> cure) {
    /** What happened. */
    public enum Kind {
        /** A message was given. */
        MESSAGE,
        /** A piece was refused, and nothing says why. */
        REFUSED_WITHOUT_A_WORD,
        /** The library itself failed. */
        EXCEPTION
    }

    Failure with(Cure found) {
        return new Failure(
                kind, code, subject, place, bodies, spread, first, worst, message, words, Optional.of(found));
    }
}
