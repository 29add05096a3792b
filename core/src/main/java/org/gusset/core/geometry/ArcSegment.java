package org.gusset.core.geometry;

/**
 * A circular stretch, exact: from an angle at the centre (degrees, anticlockwise as seen from right), swept by a signed angle.
 * The radius is not negative.
 */
public record ArcSegment(Point centre, double radius, double fromDegrees, double sweepDegrees) implements Segment {
    /**
     * @throws IllegalArgumentException if the radius is negative
     */
    public ArcSegment {
        if (radius < 0) {
            throw new IllegalArgumentException("an arc cannot have the negative radius " + radius);
        }
    }

    @Override
    public Point start() {
        return at(0);
    }

    @Override
    public Point end() {
        return at(1);
    }

    @Override
    public Point at(double t) {
        return centre.plus(spoke(t).times(radius));
    }

    /** The unit way from the centre to the point at t. */
    private Vector spoke(double t) {
        return Vector.atAngle(fromDegrees + sweepDegrees * t);
    }

    @Override
    public Vector derivative(double t) {
        return spoke(t).left().times(radius * StrictMath.toRadians(sweepDegrees));
    }

    @Override
    public double length() {
        return radius * StrictMath.toRadians(Math.abs(sweepDegrees));
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
        return sweepDegrees < 0 ? spoke(t).right() : spoke(t).left();
    }

    @Override
    public double curvature(double t) {
        if (radius == 0) {
            return 0;
        }
        return sweepDegrees < 0 ? -1 / radius : 1 / radius;
    }

    @Override
    public ArcSegment reversed() {
        return new ArcSegment(centre, radius, fromDegrees + sweepDegrees, -sweepDegrees);
    }

    /**
     * The arc moved, turned, mirrored or evenly scaled.
     *
     * @throws IllegalArgumentException if the transform would make the circle an ellipse
     */
    @Override
    public ArcSegment transformed(Transform by) {
        Vector right = by.apply(Vector.RIGHT);
        Vector down = by.apply(Vector.DOWN);
        double scale = right.length();
        if (Math.abs(down.length() - scale) > 1e-9 * scale || Math.abs(right.dot(down)) > 1e-9 * scale * scale) {
            throw new IllegalArgumentException("an arc stays one under rigid motion and even scaling only: " + by);
        }
        double from = by.apply(spoke(0)).degrees();
        return new ArcSegment(by.apply(centre), radius * scale, from, by.mirrors() ? -sweepDegrees : sweepDegrees);
    }

    @Override
    public ArcSegment part(double t0, double t1) {
        return new ArcSegment(centre, radius, fromDegrees + sweepDegrees * t0, sweepDegrees * (t1 - t0));
    }

    @Override
    public Box bounds() {
        Box box = new LineSegment(start(), end()).bounds();
        double low = Math.min(fromDegrees, fromDegrees + sweepDegrees);
        double high = Math.max(fromDegrees, fromDegrees + sweepDegrees);
        int reached = 0;
        for (double quarter = StrictMath.ceil(low / 90); quarter * 90 <= high && reached < 4; quarter++) {
            Point p = centre.plus(Vector.atAngle(quarter * 90).times(radius));
            box = box.with(new Box(p.x(), p.y(), p.x(), p.y()));
            reached++;
        }
        return box;
    }
}
