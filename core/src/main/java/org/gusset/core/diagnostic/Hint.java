package org.gusset.core.diagnostic;

import java.util.Optional;

/** What to do about it: a sentence and, where it can be said exactly, the edit of the source. */
public record Hint(Phrase phrase, Optional<Edit> edit) {
    /** Replace what stands at {@code at} with {@code text}; an empty span inserts. */
    public record Edit(Span at, String text) {}

    public static Hint of(String key, String english, Object... namesAndFacts) {
        return new Hint(Phrase.of(key, english, namesAndFacts), Optional.empty());
    }

    /** This hint with the edit that carries it out. */
    public Hint replacing(Span at, String text) {
        return new Hint(phrase, Optional.of(new Edit(at, text)));
    }
}
