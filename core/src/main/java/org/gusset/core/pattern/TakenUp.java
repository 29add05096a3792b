package org.gusset.core.pattern;

/** What takes something up of an edge, so that it is sewn shorter than it is drawn. */
public sealed interface TakenUp permits Dart, Fullness {
    /** The arc length along the edge as drawn at which it begins, in mm. */
    double from();

    /** The arc length at which it ends. */
    double to();

    /** What is taken up, in mm. */
    double intake();
}
