package org.gusset.core.stress;

import java.util.List;
import org.gusset.core.measure.Dimension;

/**
 * One thing that is varied: a measure or a choice.
 *
 * @param name its name in the draft
 * @param kind what it is
 * @param dimension of a measure or an amount
 * @param words what may be chosen, for words; {@code yes} and {@code no} for an answer
 * @param mayLack true for a measure that a rule estimates, so that bodies may lack it
 * @param whole true for an amount that counts: a plain number whose default and ends are whole
 */
public record Variable(
        String name, Kind kind, Dimension dimension, List<String> words, boolean mayLack, boolean whole) {
    /** What is varied. */
    public enum Kind {
        MEASURE,
        AMOUNT,
        WORD,
        ANSWER
    }

    public Variable {
        words = List.copyOf(words);
    }

    /** True if it runs over numbers. */
    public boolean amount() {
        return kind == Kind.MEASURE || kind == Kind.AMOUNT;
    }
}
