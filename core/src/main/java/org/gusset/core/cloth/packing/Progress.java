package org.gusset.core.cloth.packing;

/**
 * How far a search has come.
 *
 * @param round the rounds that are done
 * @param rounds how many there are at most
 * @param length the length of the shortest plan so far
 */
public record Progress(int round, int rounds, double length) {}
