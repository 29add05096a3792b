package org.gusset.core.stress;

/** A legal body of the search: where it lies between the ends of each range, and what that makes it. Not changed once made. */
final class Sample {
    /** By axis, from 0 at the low end to 1 at the high end; NaN where the body lacks the measure. */
    final double[] unit;

    final Body body;

    Sample(double[] unit, Body body) {
        this.unit = unit;
        this.body = body;
    }

    boolean lacks(int axis) {
        return Double.isNaN(unit[axis]);
    }
}
