package org.gusset.core.geometry;

/** A place on a path: its arc length from the start in mm, the point, and how far off the point that was asked for lies. */
public record Position(double s, Point point, double distance) {}
