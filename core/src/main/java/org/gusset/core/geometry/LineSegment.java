package org.gusset.core.geometry;

import org.jspecify.annotations.Nullable;

/** A straight stretch. One without length has the zero vector for its tangent. */
public record LineSegment(Point start, Point end) implements Segment {
    @Override
    public Point at(double t) {
        return t == 1 ? end : start.toward(end, t);
    }

    @Override
    public Vector derivative(double t) {
        return end.minus(start);
    }

    @Override
    public double length() {
        return start.distance(end);
    }

    @Override
    public double lengthTo(double t) {
        return length() * t;
    }

    @Override
    public double parameterAt(double length) {
        double whole = length();
        return whole == 0 ? 0 : Math.max(0, Math.min(1, length / whole));
    }

    @Override
    public Vector tangent(double t) {
        return end.minus(start).unit();
    }

    @Override
    public double curvature(double t) {
        return 0;
    }

    @Override
    public LineSegment reversed() {
        return new LineSegment(end, start);
    }

    @Override
    public LineSegment transformed(Transform by) {
        return new LineSegment(by.apply(start), by.apply(end));
    }

    @Override
    public LineSegment part(double t0, double t1) {
        return new LineSegment(at(t0), at(t1));
    }

    @Override
    public Box bounds() {
        return new Box(
                Math.min(start.x(), end.x()),
                Math.min(start.y(), end.y()),
                Math.max(start.x(), end.x()),
                Math.max(start.y(), end.y()));
    }

    /** Written out for the start of short runs, see docs/decisions/0034. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other || (other instanceof LineSegment that && start.equals(that.start) && end.equals(that.end));
    }

    @Override
    public int hashCode() {
        return 31 * start.hashCode() + end.hashCode();
    }
}
