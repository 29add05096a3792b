package org.gusset.core.pattern;

import org.gusset.core.diagnostic.Outcome;

/** Makes a sound piece of what a draft says of it: turns edges, closes the outline, adds allowances, corners and notches. */
public final class PieceMaker {
    private PieceMaker() {}

    /** The piece, or the PCE and GEO errors why there is none; warnings may come with a piece. Places are left to the caller. */
    public static Outcome<Piece> make(PieceSpec spec) {
        throw new UnsupportedOperationException();
    }
}
