package org.gusset.dsl.names;

import java.util.List;

/**
 * What can stand next in a statement that is being written, by the grammar alone: {@code Gusset.continuation} makes it.
 *
 * @param words the words of the language, in the order of the alphabet; two that belong together are one, as {@code turned up}
 * @param name whether a name can stand there, and which
 * @param whole whether the statement can also end there
 */
public record Continuation(List<String> words, NameForm name, boolean whole) {
    /** Whether a name can stand next. */
    public enum NameForm {
        NONE,
        /** A name that is only being given, as behind {@code point}. */
        NEW,
        /** A name that means something already. */
        KNOWN
    }

    public Continuation {
        words = List.copyOf(words);
    }
}
