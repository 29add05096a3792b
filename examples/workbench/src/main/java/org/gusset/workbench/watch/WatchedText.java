package org.gusset.workbench.watch;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.draft.Draft;

/**
 * A draft's text as it was read last, and what became of it.
 *
 * @param name the file's name as messages say it
 * @param text the text; that of before if the file could not be read
 * @param draft the draft; empty if the text is too broken for one, or could not be read
 * @param messages what is wrong with the text
 * @param trouble why the file could not be read; empty if it could
 * @param found where its names stand; may still be looked for, as it is needed last
 */
public record WatchedText(
        String name,
        String text,
        Optional<Draft> draft,
        List<Diagnostic> messages,
        String trouble,
        CompletableFuture<Names> found) {
    /**
     * Where names stand in the text.
     *
     * @param defined for each name in full the line, from 1, on which this file defines it
     * @param spoken for each line the names in full that stand on it without being defined there
     */
    public record Names(Map<String, Integer> defined, Map<Integer, List<String>> spoken) {
        public Names {
            defined = Map.copyOf(defined);
            spoken = Map.copyOf(spoken);
        }

        /** No names. */
        public static Names none() {
            return new Names(Map.of(), Map.of());
        }
    }

    public WatchedText {
        messages = List.copyOf(messages);
    }

    /** A text whose names are known. */
    public WatchedText(
            String name, String text, Optional<Draft> draft, List<Diagnostic> messages, String trouble, Names names) {
        this(name, text, draft, messages, trouble, CompletableFuture.completedFuture(names));
    }

    /** Where its names stand. */
    Names names() {
        return found.join();
    }

    /** True if nothing is wrong with the text itself. */
    public boolean sound() {
        return trouble.isEmpty() && draft.isPresent() && messages.stream().noneMatch(Diagnostic::isError);
    }
}
