package org.gusset.dsl.internal.resolve;

import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;

/** How to come from what is given to what is wanted. */
final class KindHints {
    private KindHints() {}

    /** @param text the source text of the term */
    static Hint hint(Type wanted, Term term, String text) {
        Type given = term.type();
        if (wanted.equals(Type.POINT) && given.path()) {
            return Hint.of(
                    "kind.on", "A point of a path is `on` it, as in `on hem at 1/2`, or its `.start` or `.end`.");
        } else if (wanted.equals(Type.LENGTH) && given.path()) {
            Hint hint = Hint.of("kind.length", "The length of a path is `length(...)`.");
            return text.isEmpty() ? hint : hint.replacing(term.span(), "length(" + text + ")");
        } else if (wanted.equals(Type.LENGTH) && given.equals(Type.POINT)) {
            return Hint.of("kind.distance", "The length between two points is `distance(A, B)`.");
        } else if (wanted.equals(Type.PATH) && given.equals(Type.POINT)) {
            return Hint.of("kind.line", "Draw a path through points with `line name = A to B`, and name that.");
        } else if (wanted.equals(Type.TRUTH)) {
            return Hint.of(
                    "kind.compare", "Compare two values, as in `chest > 100 cm`, or use a choice that is yes or no.");
        }
        return Hint.of("kind.other", "Put {wanted} here.", "wanted", wanted.words());
    }

    /** What is missing between a direction and what it goes up to. */
    static Hint to(String direction, Span span) {
        Span before = new Span(
                span.source(), span.start(), span.start(), span.line(), span.column(), span.line(), span.column());
        return Hint.of("kind.to", "Write `{direction} to` to go as far as it.", "direction", direction)
                .replacing(before, "to ");
    }
}
