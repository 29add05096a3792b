package org.gusset.core.stress;

import org.gusset.core.measure.Quantity;

/** One range made narrower. */
public sealed interface Tightening {
    /** The measure or choice whose range it is. */
    String variable();

    /** Which end of a range. */
    enum End {
        LEAST,
        MOST
    }

    /** What an end is told by. */
    enum Form {
        /** An amount. */
        AMOUNT,
        /** A number of times another measure. */
        TIMES,
        /** An amount more than another measure. */
        MORE_THAN
    }

    /**
     * Another end.
     *
     * @param variable the measure or choice
     * @param end which end
     * @param form how it is told
     * @param other the other measure, empty for an amount
     * @param from the end that the legal bodies reached before: an amount, a number of times, or how much more
     * @param to the new end
     */
    record Bound(String variable, End end, Form form, String other, Quantity from, Quantity to) implements Tightening {}

    /** One word or answer less to choose. */
    record Without(String variable, String word) implements Tightening {}
}
