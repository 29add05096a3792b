package org.gusset.dsl;

import java.util.Optional;

/**
 * Where the files come from that drafts use: supplied by the host, since the language itself reads no files.
 *
 * <p>A host that keeps its drafts in a database, an archive or a map answers from there. The name of a source tells it from all
 * others: two names for one text are two files, and a source whose name is already being read is a circle.
 */
@FunctionalInterface
public interface Sources {
    /**
     * What a host answers.
     *
     * @param source the text, if there is one
     * @param why why there is none, as the end of a sentence; empty if there is one
     */
    record Answer(Optional<Source> source, String why) {
        public static Answer of(Source source) {
            return new Answer(Optional.of(source), "");
        }

        /** No text; the message goes on with the reason, as in {@code there is no such file in the archive}. */
        public static Answer none(String why) {
            return new Answer(Optional.empty(), why);
        }
    }

    /**
     * The text that a draft asks for.
     *
     * @param file what stands in the quotes after {@code use}
     * @param asking the text in which it stands
     */
    Answer find(String file, Source asking);

    /** A host that has no other files. */
    static Sources none() {
        return (file, asking) -> Answer.none("no other files can be reached from here");
    }
}
