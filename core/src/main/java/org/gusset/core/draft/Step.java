package org.gusset.core.draft;

import java.util.List;
import org.gusset.core.diagnostic.Phrase;

/**
 * One teaching step of a piece.
 *
 * @param piece the piece's name
 * @param title the step's title
 * @param names what it introduces, in order
 * @param words the teacher's words, values filled in
 */
public record Step(String piece, String title, List<String> names, List<Phrase> words) {
    public Step {
        names = List.copyOf(names);
        words = List.copyOf(words);
    }
}
