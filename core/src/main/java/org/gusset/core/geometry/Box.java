package org.gusset.core.geometry;

/** An upright rectangle that holds something, in millimetres. */
public record Box(double left, double top, double right, double bottom) {
    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }

    /** The smallest box that holds both. */
    public Box with(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    /** This box with {@code by} more on each side. */
    public Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }

    public boolean meets(Box other) {
        return left <= other.right && other.left <= right && top <= other.bottom && other.top <= bottom;
    }
}
