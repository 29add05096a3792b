package org.gusset.dsl.internal.resolve;

import java.util.Optional;
import org.gusset.dsl.Source;
import org.gusset.dsl.syntax.DraftTree;

/** Gives the syntax trees of files that drafts use; what is wrong with their syntax is told by the loader. */
public interface Loader {
    /** A text and its tree. */
    record Loaded(Source source, DraftTree tree) {}

    /**
     * The tree, or why there is none.
     *
     * @param tooLong true if the texts would be longer together than is allowed
     */
    record Answer(Optional<Loaded> loaded, String why, boolean tooLong) {}

    Answer find(String file, Source asking);
}
