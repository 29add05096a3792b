package org.gusset.core.diagnostic;

/** Where a diagnostic belongs: a stretch of source text, a cell of a table, a named thing, or nowhere. */
public sealed interface Place permits Span, Place.Cell, Place.Named, Place.Nowhere {
    /** A cell of a table of measures; row and column count from 1, the heading being row 1. */
    record Cell(String table, long row, int column, String text) implements Place {}

    /** Something that has a name but no text, as in a draft built in Java. */
    record Named(String name) implements Place {}

    /** No place at all. */
    record Nowhere() implements Place {}

    static Place nowhere() {
        return new Nowhere();
    }

    static Place named(String name) {
        return new Named(name);
    }
}
