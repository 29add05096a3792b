package org.gusset.dsl.syntax;

import org.gusset.core.diagnostic.Span;

/** A name as written, with its place. */
public record Name(String text, Span span) {
    @Override
    public String toString() {
        return text;
    }
}
