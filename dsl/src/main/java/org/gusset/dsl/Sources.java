package org.gusset.dsl;

import java.util.Map;
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

    /**
     * Texts by the names under which they lie in one folder: {@code skirt.gusset}, {@code rules/necks.gusset}. A draft's name for another
     * is looked up among them and goes nowhere else: what a stranger writes is a key here and never a path. It counts from the folder of
     * the draft in which it stands; the first source must have its own name among them, or one that would lie beside them.
     *
     * @param texts the texts by name, with {@code /} between folders; copied
     * @throws IllegalArgumentException if a name could not be said by a draft
     */
    static Sources of(Map<String, String> texts) {
        Map<String, String> shelf = Map.copyOf(texts);
        for (String name : shelf.keySet()) {
            if (!FileName.from("", name).equals(Optional.of(name))) {
                throw new IllegalArgumentException("no draft could say the name `" + name + "`");
            }
        }
        return (file, asking) -> {
            Optional<String> objection = FileName.objection(file);
            if (objection.isPresent()) {
                return Answer.none(objection.get());
            }
            Optional<String> name = FileName.from(asking.name(), file);
            if (name.isEmpty()) {
                return Answer.none("it lies outside the folder of the first draft");
            }
            String text = shelf.get(name.get());
            return text == null
                    ? Answer.none("there is no such file in the folder of this draft")
                    : Answer.of(Source.of(name.get(), text));
        };
    }

    /** A host that has no other files. */
    static Sources none() {
        return (file, asking) -> Answer.none("no other files can be reached from here");
    }
}
