package org.gusset.core.build;

import java.util.List;

/** A word out of several: a choice. */
public final class Word extends Value implements Shown {
    private final List<String> options;

    Word(Term term, List<String> options) {
        super(term);
        this.options = List.copyOf(options);
    }

    /**
     * True where it is this word.
     *
     * @throws IllegalArgumentException if it is none of those that may be chosen
     */
    public Truth is(String word) {
        if (!options.contains(word)) {
            throw new IllegalArgumentException(
                    "`" + word + "` is no word of `" + this + "`, which is one of " + String.join(", ", options));
        }
        return new Truth(Term.Alike.of(term(), new Term.Word(word)));
    }
}
