package org.gusset.core.cloth.packing;

/**
 * An item that has no place on the strip, however long it is.
 *
 * @param item its number among the strip's items
 * @param least how far it reaches across the strip in the orientation in which it reaches least
 * @param room the span across the strip that its rail leaves it. Where {@code least} is not above this, its lattice across the strip has no
 *     value at which it lies within.
 */
public record Misfit(int item, double least, double room) {}
