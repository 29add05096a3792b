package org.gusset.core.geometry;

/** A circular stretch, exact: from an angle at the centre (degrees, anticlockwise as seen from right), swept by a signed angle. */
public record ArcSegment(Point centre, double radius, double fromDegrees, double sweepDegrees) implements Segment {
    @Override
    public Point start() {
        throw new UnsupportedOperationException();
    }

    @Override
    public Point end() {
        throw new UnsupportedOperationException();
    }

    @Override
    public Point at(double t) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Vector derivative(double t) {
        throw new UnsupportedOperationException();
    }

    @Override
    public double length() {
        throw new UnsupportedOperationException();
    }

    @Override
    public double lengthTo(double t) {
        throw new UnsupportedOperationException();
    }

    @Override
    public double parameterAt(double length) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Vector tangent(double t) {
        throw new UnsupportedOperationException();
    }

    @Override
    public double curvature(double t) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Segment reversed() {
        throw new UnsupportedOperationException();
    }

    @Override
    public Segment transformed(Transform by) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Segment part(double t0, double t1) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Box bounds() {
        throw new UnsupportedOperationException();
    }
}
