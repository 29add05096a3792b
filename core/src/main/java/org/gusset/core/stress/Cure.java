package org.gusset.core.stress;

/**
 * A narrower range that keeps out all bodies that fail in one way.
 *
 * @param change the range
 * @param lost the share of the legal bodies that it keeps out too
 * @param triedOn how many bodies were tried with it, none of which failed so
 */
public record Cure(Tightening change, double lost, int triedOn) {}
