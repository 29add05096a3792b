package org.gusset.core.geometry;

/** Where two paths meet: the point, and the arc lengths in mm from the start of each. */
public record Meeting(Point point, double s, double otherS) {}
