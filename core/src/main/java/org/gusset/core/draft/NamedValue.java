package org.gusset.core.draft;

import org.gusset.core.measure.Quantity;

/** A named value of a drawing. */
public sealed interface NamedValue {
    String name();

    /** An amount; {@code estimated} if it is a measure that the body's table lacks and the draft's rule gave. */
    record Amount(String name, Quantity quantity, boolean estimated) implements NamedValue {}

    /** A word out of several. */
    record Word(String name, String word) implements NamedValue {}

    /** Yes or no. */
    record Answer(String name, boolean yes) implements NamedValue {}
}
