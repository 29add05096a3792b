package org.gusset.core.graph;

/** A value whose size counts when an evaluation reckons its steps; all others count as one. */
public interface Sized {
    /** How many segments of paths, points or marks it holds. */
    long size();
}
