package org.gusset.svg.sheet;

import java.util.List;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Piece;

/** What sheets say of a piece, for hosts that say the same elsewhere. */
public final class PieceWords {
    private final Words words;

    public PieceWords(Wording wording) {
        this.words = new Words(wording);
    }

    /** A name of a draft as it is read: underscores are blanks. */
    public static String spoken(String name) {
        return Words.spoken(name);
    }

    /** How a piece is cut: {@code cut 1 pair from shell}. */
    public String cut(Cut cut) {
        return words.cut(cut);
    }

    /** All lines of the cutting list in a row. */
    public String cuts(Piece piece) {
        List<String> cuts = piece.cuts().stream().map(words::cut).toList();
        return String.join("; ", cuts);
    }

    /** The allowance of a piece: what most edges have, then the edges that differ. */
    public String allowance(Piece piece) {
        return words.allowance(piece);
    }
}
