package org.gusset.core.geometry;

/** A way in a piece's flat frame, in millimetres: dx counts to the right, dy counts down. */
public record Vector(double dx, double dy) {
    /** Negative zero counts as zero, so that equal ways are equal. */
    public Vector {
        dx += 0.0;
        dy += 0.0;
    }

    public static final Vector RIGHT = new Vector(1, 0);
    public static final Vector LEFT = new Vector(-1, 0);
    public static final Vector UP = new Vector(0, -1);
    public static final Vector DOWN = new Vector(0, 1);

    /** The unit vector at an angle in degrees, anticlockwise as seen from right; exact at the four directions. */
    public static Vector atAngle(double degrees) {
        double turn = degrees % 360;
        if (turn < 0) {
            turn += 360;
        }
        if (turn == 0) {
            return RIGHT;
        } else if (turn == 90) {
            return UP;
        } else if (turn == 180) {
            return LEFT;
        } else if (turn == 270) {
            return DOWN;
        }
        double radians = StrictMath.toRadians(turn);
        return new Vector(StrictMath.cos(radians), -StrictMath.sin(radians));
    }

    public double length() {
        return Hypotenuse.of(dx, dy);
    }

    public Vector times(double factor) {
        return new Vector(dx * factor, dy * factor);
    }

    public Vector plus(Vector other) {
        return new Vector(dx + other.dx, dy + other.dy);
    }

    public Vector opposite() {
        return new Vector(-dx, -dy);
    }

    public double dot(Vector other) {
        return dx * other.dx + dy * other.dy;
    }

    /** Positive when {@code other} lies anticlockwise of this as seen on the page (y counts down). */
    public double cross(Vector other) {
        return dy * other.dx - dx * other.dy;
    }

    /** The same way with length 1; a zero vector stays as it is. */
    public Vector unit() {
        double length = length();
        return length == 0 ? this : new Vector(dx / length, dy / length);
    }

    /** Turned a quarter anticlockwise as seen: to the left of one who walks this way. */
    public Vector left() {
        return new Vector(dy, -dx);
    }

    /** Turned a quarter clockwise as seen: to the right of one who walks this way. */
    public Vector right() {
        return new Vector(-dy, dx);
    }

    /** The angle in degrees, anticlockwise as seen from right, at least 0 and less than 360. */
    public double degrees() {
        double degrees = StrictMath.toDegrees(StrictMath.atan2(-dy, dx));
        return degrees < 0 ? degrees + 360 : degrees == 0 ? 0 : degrees;
    }
}
