package org.gusset.core.pattern;

/** What takes something up of an edge, so that it is sewn shorter than it is drawn. */
public sealed interface TakenUp permits Dart, Fullness {
    /** What is taken up, in mm. */
    double intake();
}
