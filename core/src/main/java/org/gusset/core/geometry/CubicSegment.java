package org.gusset.core.geometry;

import java.util.List;

/**
 * A cubic Bezier stretch. Where its derivative vanishes (a control on its end, a cusp) the tangent is the limit: the way that
 * the travel goes on, at the end the way that it came.
 */
public record CubicSegment(Point start, Point control1, Point control2, Point end) implements Segment {
    /** Speeds below this share of the control polygon's length count as none. */
    static final double STANDSTILL = 1e-10;

    /** How far into the stretch the curvature is taken where the derivative vanishes. */
    private static final double ASIDE = 1e-3;

    @Override
    public Point at(double t) {
        if (t == 0) {
            return start;
        } else if (t == 1) {
            return end;
        }
        double u = 1 - t;
        double b0 = u * u * u;
        double b1 = 3 * u * u * t;
        double b2 = 3 * u * t * t;
        double b3 = t * t * t;
        return new Point(
                b0 * start.x() + b1 * control1.x() + b2 * control2.x() + b3 * end.x(),
                b0 * start.y() + b1 * control1.y() + b2 * control2.y() + b3 * end.y());
    }

    @Override
    public Vector derivative(double t) {
        double u = 1 - t;
        return control1.minus(start)
                .times(3 * u * u)
                .plus(control2.minus(control1).times(6 * u * t))
                .plus(end.minus(control2).times(3 * t * t));
    }

    /** The second derivative by t. */
    public Vector secondDerivative(double t) {
        Vector first = control2.minus(control1).plus(start.minus(control1));
        Vector last = end.minus(control2).plus(control1.minus(control2));
        return first.times(6 * (1 - t)).plus(last.times(6 * t));
    }

    private Vector thirdDerivative() {
        return end.minus(start).plus(control1.minus(control2).times(3)).times(6);
    }

    /** True if a derivative is more than none; asked so often that a bound on the control polygon's length stands first. */
    private boolean moves(Vector derivative) {
        double speed = derivative.length();
        double bound = side(start, control1) + side(control1, control2) + side(control2, end);
        return speed > 2 * STANDSTILL * bound || speed > STANDSTILL * polygonLength();
    }

    private static double side(Point from, Point to) {
        return Math.abs(to.x() - from.x()) + Math.abs(to.y() - from.y());
    }

    /** As {@link Path#straight()} of this stretch alone. */
    boolean straight() {
        Point furthest = start;
        for (Point p : new Point[] {control1, control2, end}) {
            if (p.distance(start) > furthest.distance(start)) {
                furthest = p;
            }
        }
        Vector way = furthest.minus(start).unit();
        return furthest.distance(start) > Path.COINCIDE
                && off(way, control1) <= Path.COINCIDE
                && off(way, control2) <= Path.COINCIDE
                && off(way, end) <= Path.COINCIDE;
    }

    /** How far a point lies beside the line from the start. */
    private double off(Vector way, Point p) {
        return Math.abs(way.cross(p.minus(start)));
    }

    /** The length of the control polygon, at least the arc length. */
    double polygonLength() {
        return start.distance(control1) + control1.distance(control2) + control2.distance(end);
    }

    @Override
    public double length() {
        return ArcLength.between(this, 0, 1);
    }

    @Override
    public double lengthTo(double t) {
        return ArcLength.between(this, 0, t);
    }

    @Override
    public double parameterAt(double length) {
        return ArcLength.parameterAt(this, length);
    }

    @Override
    public Vector tangent(double t) {
        Vector first = derivative(t);
        if (moves(first)) {
            return first.unit();
        }
        double slow = STANDSTILL * polygonLength();
        Vector second = secondDerivative(t);
        if (second.length() > slow) {
            return t > 1 - 1e-6 ? second.opposite().unit() : second.unit();
        }
        return thirdDerivative().unit();
    }

    /**
     * Signed curvature in 1/mm at t, positive where the path turns left as seen. Where the derivative vanishes it is that of a
     * place a thousandth of the parameter further inside, or 0.
     */
    @Override
    public double curvature(double t) {
        Vector first = derivative(t);
        double at = t;
        if (!moves(first)) {
            at = t < 0.5 ? t + ASIDE : t - ASIDE;
            first = derivative(at);
            if (!moves(first)) {
                return 0;
            }
        }
        double speed = first.length();
        return first.cross(secondDerivative(at)) / (speed * speed * speed);
    }

    @Override
    public CubicSegment reversed() {
        return new CubicSegment(end, control2, control1, start);
    }

    @Override
    public CubicSegment transformed(Transform by) {
        return new CubicSegment(by.apply(start), by.apply(control1), by.apply(control2), by.apply(end));
    }

    /** The stretch between two parameters by de Casteljau's rule. */
    @Override
    public CubicSegment part(double t0, double t1) {
        if (t0 == 0 && t1 == 1) {
            return this;
        } else if (t0 == 0) {
            return head(t1);
        } else if (t1 == 1) {
            return tail(t0);
        }
        return tail(t0).head((t1 - t0) / (1 - t0));
    }

    private CubicSegment head(double t) {
        Point a = start.toward(control1, t);
        Point b = control1.toward(control2, t);
        Point ab = a.toward(b, t);
        Point bc = b.toward(control2.toward(end, t), t);
        return new CubicSegment(start, a, ab, ab.toward(bc, t));
    }

    private CubicSegment tail(double t) {
        Point b = control1.toward(control2, t);
        Point c = control2.toward(end, t);
        Point ab = start.toward(control1, t).toward(b, t);
        Point bc = b.toward(c, t);
        return new CubicSegment(ab.toward(bc, t), bc, c, end);
    }

    @Override
    public Box bounds() {
        double left = Math.min(start.x(), end.x());
        double right = Math.max(start.x(), end.x());
        double top = Math.min(start.y(), end.y());
        double bottom = Math.max(start.y(), end.y());
        for (double t : turnsOfX()) {
            double x = at(t).x();
            left = Math.min(left, x);
            right = Math.max(right, x);
        }
        for (double t : turnsOfY()) {
            double y = at(t).y();
            top = Math.min(top, y);
            bottom = Math.max(bottom, y);
        }
        return new Box(left, top, right, bottom);
    }

    /** The parameters between 0 and 1 at which x turns round, in order. */
    List<Double> turnsOfX() {
        return BernsteinRoots.of(control1.x() - start.x(), control2.x() - control1.x(), end.x() - control2.x());
    }

    /** The parameters between 0 and 1 at which y turns round, in order. */
    List<Double> turnsOfY() {
        return BernsteinRoots.of(control1.y() - start.y(), control2.y() - control1.y(), end.y() - control2.y());
    }

    /** The box of the four control points; it holds the stretch but is cheaper and wider than {@link #bounds()}. */
    Box controlBox() {
        return new Box(
                Math.min(Math.min(start.x(), end.x()), Math.min(control1.x(), control2.x())),
                Math.min(Math.min(start.y(), end.y()), Math.min(control1.y(), control2.y())),
                Math.max(Math.max(start.x(), end.x()), Math.max(control1.x(), control2.x())),
                Math.max(Math.max(start.y(), end.y()), Math.max(control1.y(), control2.y())));
    }

    /**
     * A bound in mm on how far the stretch strays from its chord at the same parameter: an eighth of the largest second
     * derivative.
     */
    double strays() {
        double first = control2.minus(control1).plus(start.minus(control1)).length();
        double last = end.minus(control2).plus(control1.minus(control2)).length();
        return 0.75 * Math.max(first, last);
    }
}
