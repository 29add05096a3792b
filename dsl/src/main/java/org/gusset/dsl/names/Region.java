package org.gusset.dsl.names;

import java.util.List;
import org.gusset.core.diagnostic.Span;

/**
 * A stretch of text with names of its own: a file, a piece, or a rule with its arguments.
 *
 * @param place the stretch
 * @param owner the full name of what it belongs to; empty for the file that was asked for
 * @param closed false if its end is missing, so that it goes on to the next region
 * @param names what can be said there by its name alone, besides what can be said around it
 */
public record Region(Span place, String owner, boolean closed, List<Named> names) {
    public Region {
        names = List.copyOf(names);
    }
}
