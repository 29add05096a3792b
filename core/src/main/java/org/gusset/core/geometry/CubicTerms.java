package org.gusset.core.geometry;

/**
 * A cubic in plain numbers, for the inner loops: the same sums in the same order as {@link CubicSegment} forms them, so that the
 * bits are the same, without an object for every place and way.
 */
final class CubicTerms {
    private final CubicSegment curve;
    private final double x0;
    private final double y0;
    private final double x1;
    private final double y1;
    private final double x2;
    private final double y2;
    private final double x3;
    private final double y3;

    /** The three legs of the control polygon. */
    private final double leaveX;

    private final double leaveY;
    private final double middleX;
    private final double middleY;
    private final double arriveX;
    private final double arriveY;

    /** The differences of neighbouring legs. */
    private final double bend0X;

    private final double bend0Y;
    private final double bend1X;
    private final double bend1Y;

    CubicTerms(CubicSegment curve) {
        this.curve = curve;
        this.x0 = curve.start().x();
        this.y0 = curve.start().y();
        this.x1 = curve.control1().x();
        this.y1 = curve.control1().y();
        this.x2 = curve.control2().x();
        this.y2 = curve.control2().y();
        this.x3 = curve.end().x();
        this.y3 = curve.end().y();
        this.leaveX = x1 - x0;
        this.leaveY = y1 - y0;
        this.middleX = x2 - x1;
        this.middleY = y2 - y1;
        this.arriveX = x3 - x2;
        this.arriveY = y3 - y2;
        this.bend0X = middleX + (x0 - x1);
        this.bend0Y = middleY + (y0 - y1);
        this.bend1X = arriveX + (x1 - x2);
        this.bend1Y = arriveY + (y1 - y2);
    }

    CubicSegment curve() {
        return curve;
    }

    /** No less than the length of the control polygon. */
    double bound() {
        return Math.abs(leaveX)
                + Math.abs(leaveY)
                + (Math.abs(middleX) + Math.abs(middleY))
                + (Math.abs(arriveX) + Math.abs(arriveY));
    }

    double x(double t) {
        return at(t, x0, x1, x2, x3);
    }

    double y(double t) {
        return at(t, y0, y1, y2, y3);
    }

    private static double at(double t, double p0, double p1, double p2, double p3) {
        if (t == 0) {
            return p0;
        } else if (t == 1) {
            return p3;
        }
        double u = 1 - t;
        double b0 = u * u * u;
        double b1 = 3 * u * u * t;
        double b2 = 3 * u * t * t;
        double b3 = t * t * t;
        return b0 * p0 + b1 * p1 + b2 * p2 + b3 * p3;
    }

    /** The first derivative by t. */
    double dx(double t) {
        double u = 1 - t;
        return leaveX * (3 * u * u) + middleX * (6 * u * t) + arriveX * (3 * t * t);
    }

    double dy(double t) {
        double u = 1 - t;
        return leaveY * (3 * u * u) + middleY * (6 * u * t) + arriveY * (3 * t * t);
    }

    /** The second derivative by t. */
    double ddx(double t) {
        return bend0X * (6 * (1 - t)) + bend1X * (6 * t);
    }

    double ddy(double t) {
        return bend0Y * (6 * (1 - t)) + bend1Y * (6 * t);
    }
}
