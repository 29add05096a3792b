package org.gusset.core.diagnostic;

import java.util.ArrayList;
import java.util.List;

/**
 * One message: what is wrong, where, what else belongs to it and what to do.
 *
 * @param code the kind
 * @param phrase the sentence, its facts typed
 * @param place where
 * @param related other places
 * @param hints what to do, best first
 */
public record Diagnostic(Code code, Phrase phrase, Place place, List<Related> related, List<Hint> hints) {
    public Diagnostic {
        related = List.copyOf(related);
        hints = List.copyOf(hints);
    }

    /** A diagnostic with facts given as name and value in turn, see {@link Phrase#of}. */
    public static Diagnostic of(Code code, Place place, Object... namesAndFacts) {
        return new Diagnostic(code, Phrase.of(code.id(), code.english(), namesAndFacts), place, List.of(), List.of());
    }

    public Severity severity() {
        return code.severity();
    }

    public boolean isError() {
        return severity() == Severity.ERROR;
    }

    /** The sentence in English. */
    public String message() {
        return phrase.toString();
    }

    public Diagnostic at(Place where) {
        return new Diagnostic(code, phrase, where, related, hints);
    }

    public Diagnostic with(Hint hint) {
        List<Hint> all = new ArrayList<>(hints);
        all.add(hint);
        return new Diagnostic(code, phrase, place, related, all);
    }

    public Diagnostic with(Related other) {
        List<Related> all = new ArrayList<>(related);
        all.add(other);
        return new Diagnostic(code, phrase, place, all, hints);
    }

    @Override
    public String toString() {
        return code.id() + " " + severity().word() + ": " + message();
    }
}
