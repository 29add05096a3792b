package org.gusset.batch;

/** What became of one row: every row gives exactly one of the two. */
public sealed interface RowResult permits BodyResult, SetAside {
    /** The number of the row. */
    long row();
}
