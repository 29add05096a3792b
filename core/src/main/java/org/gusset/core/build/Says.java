package org.gusset.core.build;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.construct.Telling;

/** Words with values in them. */
final class Says {
    private static final String HOLE = "{}";

    private Says() {}

    /** The words, each {@code {}} standing for the next value. */
    static Term words(String text, Shown[] shown) {
        List<Telling.Part> parts = new ArrayList<>();
        Inputs in = new Inputs();
        int at = 0;
        int next = 0;
        for (int hole = text.indexOf(HOLE); hole >= 0; hole = text.indexOf(HOLE, at)) {
            if (next == shown.length) {
                throw count(text, shown);
            }
            if (hole > at) {
                parts.add(new Telling.Words(text.substring(at, hole)));
            }
            parts.add(part(shown[next], in));
            next++;
            at = hole + HOLE.length();
        }
        if (next != shown.length) {
            throw count(text, shown);
        }
        if (at < text.length()) {
            parts.add(new Telling.Words(text.substring(at)));
        }
        return Term.Made.of(new Telling(parts), in.terms(), Kind.TEXT, 0, p -> "\"" + text + "\"");
    }

    private static IllegalArgumentException count(String text, Shown[] shown) {
        int holes = text.split("\\{}", -1).length - 1;
        return new IllegalArgumentException(
                "\"" + text + "\" has " + holes + " {} for values, and " + shown.length + " are given");
    }

    private static Telling.Part part(Shown shown, Inputs in) {
        Term term = ((Value) shown).term();
        int input = in.add(term);
        return switch (term.kind()) {
            case TRUTH -> new Telling.Answer(input);
            case WORD -> new Telling.WordOf(input);
            default -> new Telling.Amount(input, term.kind().dimension());
        };
    }
}
