package org.gusset.core.build;

import org.gusset.core.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/** Something that has a name in the draft. */
final class Symbol {
    private final DraftBuilder draft;
    private final @Nullable PieceBuilder piece;
    private final String name;
    private final Kind kind;
    private @Nullable Term definition;

    Symbol(DraftBuilder draft, @Nullable PieceBuilder piece, String name, Kind kind) {
        this.draft = draft;
        this.piece = piece;
        this.name = name;
        this.kind = kind;
    }

    DraftBuilder draft() {
        return draft;
    }

    /** The piece that names it; null for what the draft as a whole names, pieces among it. */
    @Nullable
    PieceBuilder piece() {
        return piece;
    }

    String name() {
        return name;
    }

    Kind kind() {
        return kind;
    }

    /** The name with the piece in front: {@code Back.tip}. */
    String fullName() {
        return piece == null ? name : piece.name() + "." + name;
    }

    Place place() {
        return Place.named(fullName());
    }

    /** What it is; null for an unknown that nothing solves, and for pieces, whose layout is put together at the end. */
    @Nullable
    Term definition() {
        return definition;
    }

    void define(Term term) {
        this.definition = term;
    }

    /** The name as one reads it inside a piece. */
    String words(String inside) {
        return piece != null && piece.name().equals(inside) ? name : fullName();
    }

    @Override
    public String toString() {
        return fullName();
    }
}
