package org.gusset.core.geometry;

/** A rigid motion of the plane, mirrored or not: (x, y) goes to (a x + c y + e, b x + d y + f). */
public record Transform(double a, double b, double c, double d, double e, double f) {
    public static final Transform NONE = new Transform(1, 0, 0, 1, 0, 0);

    public static Transform shift(Vector by) {
        return new Transform(1, 0, 0, 1, by.dx(), by.dy());
    }

    /** A turn about a point by an angle in degrees, anticlockwise as seen. */
    public static Transform turn(Point about, double degrees) {
        Vector way = Vector.atAngle(degrees);
        double cos = way.dx();
        double sin = -way.dy();
        return new Transform(
                cos,
                -sin,
                sin,
                cos,
                about.x() - cos * about.x() - sin * about.y(),
                about.y() + sin * about.x() - cos * about.y());
    }

    /** The mirror image over the line through a point along a way. */
    public static Transform mirror(Point through, Vector along) {
        Vector u = along.unit();
        double cos = u.dx() * u.dx() - u.dy() * u.dy();
        double sin = 2 * u.dx() * u.dy();
        return new Transform(
                cos,
                sin,
                sin,
                -cos,
                through.x() - cos * through.x() - sin * through.y(),
                through.y() - sin * through.x() + cos * through.y());
    }

    public Point apply(Point p) {
        return new Point(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
    }

    public Vector apply(Vector v) {
        return new Vector(a * v.dx() + c * v.dy(), b * v.dx() + d * v.dy());
    }

    /** This motion first, then {@code next}. */
    public Transform then(Transform next) {
        return new Transform(
                next.a * a + next.c * b,
                next.b * a + next.d * b,
                next.a * c + next.c * d,
                next.b * c + next.d * d,
                next.a * e + next.c * f + next.e,
                next.b * e + next.d * f + next.f);
    }

    /** True if it turns left into right. */
    public boolean mirrors() {
        return a * d - b * c < 0;
    }
}
