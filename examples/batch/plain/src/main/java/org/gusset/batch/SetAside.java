package org.gusset.batch;

/**
 * A row that gave no garment.
 *
 * @param row its number
 * @param body the body's name, as far as it could be read
 * @param why the kind of reason
 * @param code the code of the first message; empty if there is none
 * @param reason what is wrong, in words
 * @param written the row as it was written
 */
public record SetAside(long row, String body, String why, String code, String reason, String written)
        implements RowResult {
    /** The kinds of reasons. */
    public enum Why {
        /** More or fewer cells than headings, or no row of CSV at all. */
        RAGGED("ragged"),
        /** No name in the first cell. */
        NAMELESS("nameless"),
        /** A cell that is no amount, or has no unit. */
        UNREADABLE("unreadable"),
        /** A measure that the draft needs, and no rule estimates. */
        MISSING("missing"),
        /** A measure or choice outside the range that the draft takes for this body. */
        OUT_OF_RANGE("out of range"),
        /** A piece that cannot be made for this body. */
        REFUSED("refused piece"),
        /** A fault of the library; the row is set aside and the batch goes on. */
        FAULT("fault");

        private final String words;

        Why(String words) {
            this.words = words;
        }

        /** The word that stands in the file. */
        public String words() {
            return words;
        }
    }

    static SetAside of(TableRow row, Why why, String code, String reason) {
        String body = row.cells().isEmpty() ? "" : row.cells().get(0);
        return new SetAside(row.row(), body, why.words(), code, reason, row.written());
    }
}
