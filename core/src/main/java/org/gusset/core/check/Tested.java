package org.gusset.core.check;

import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.measure.Dimension;

/**
 * A figure that a check holds to limits, so that others may seek what moves it.
 *
 * @param what what it is
 * @param dimension its dimension; lengths are in mm, angles in degrees
 * @param value the figure
 * @param least the least that is wanted; minus infinity for none
 * @param most the most that is wanted
 * @param tolerance how far it may be outside
 */
public record Tested(Phrase what, Dimension dimension, double value, double least, double most, double tolerance) {
    /** How far the figure is outside what is wanted, the tolerance not counted: negative below, 0 inside. */
    public double beyond() {
        return value > most ? value - most : value < least ? value - least : 0;
    }

    /** How far the figure is from failing; negative if it fails. */
    public double margin() {
        return Math.min(value - least, most - value) + tolerance;
    }

    public boolean holds() {
        return margin() >= 0;
    }
}
