package org.gusset.core.change;

/**
 * A place where an outline is broken open, with what is left out of it.
 *
 * @param edge the edge's number
 * @param from the arc length along the edge, in the way of the loop, at which the part before ends, in mm
 * @param to where the part after begins; {@code from} if nothing is left out
 */
record Break(int edge, double from, double to) {
    static Break at(int edge, double s) {
        return new Break(edge, s, s);
    }
}
