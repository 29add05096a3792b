package org.gusset.workbench.lesson;

import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.Quantity;

/** Reads the amount of a measure as it is written in a table. */
@FunctionalInterface
public interface AmountReading {
    /**
     * The amount, or what is wrong with it.
     *
     * @param body whose measure it is
     * @param measure the measure's name
     * @param text what is written, neither empty nor with blanks round it
     * @param place where messages say it stands
     */
    Outcome<Quantity> read(String body, String measure, String text, Place place);
}
