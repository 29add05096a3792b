package org.gusset.core.build;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where a value is at home.
 *
 * @param draft the builder from which it comes; null for what is the same in every draft, such as {@code cm(3)}
 * @param frame the piece in whose frame a shape lies; null for amounts, and for shapes that fit any frame, such as the origin
 */
record Home(@Nullable DraftBuilder draft, @Nullable PieceBuilder frame) {
    static final Home ANYWHERE = new Home(null, null);

    /**
     * The home of what is made of others.
     *
     * @throws IllegalArgumentException if they come from two drafts, or are shapes of two pieces
     */
    static Home of(List<Term> terms, Kind kind) {
        DraftBuilder draft = null;
        PieceBuilder frame = null;
        for (Term term : terms) {
            Home home = term.home();
            if (home.draft() != null) {
                if (draft != null && draft != home.draft()) {
                    throw new IllegalArgumentException("`" + term.words("") + "` belongs to the draft \""
                            + home.draft().title() + "\", and what it is put together with to \"" + draft.title()
                            + "\"");
                }
                draft = home.draft();
            }
            if (term.kind().shape() && home.frame() != null) {
                if (frame != null && frame != home.frame()) {
                    throw new IllegalArgumentException(
                            "`" + term.words("") + "` lies in the piece "
                                    + home.frame().name() + ", and what it is put together with in " + frame.name()
                                    + "; two pieces have nothing to do with each other on the table, but lengths may be taken from one to the other");
                }
                frame = home.frame();
            }
        }
        return new Home(draft, kind.shape() ? frame : null);
    }
}
