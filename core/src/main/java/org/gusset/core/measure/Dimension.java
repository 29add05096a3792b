package org.gusset.core.measure;

import org.jspecify.annotations.Nullable;

/**
 * What a number measures: powers of length and of angle. A plain number has both at 0.
 *
 * @param length the power of length: 1 a length, 2 an area
 * @param angle the power of angle
 */
public record Dimension(int length, int angle) {
    public static final Dimension NUMBER = new Dimension(0, 0);
    public static final Dimension LENGTH = new Dimension(1, 0);
    public static final Dimension AREA = new Dimension(2, 0);
    public static final Dimension ANGLE = new Dimension(0, 1);

    public Dimension times(Dimension other) {
        return new Dimension(length + other.length, angle + other.angle);
    }

    public Dimension over(Dimension other) {
        return new Dimension(length - other.length, angle - other.angle);
    }

    /** True if the square root has a dimension too. */
    public boolean hasRoot() {
        return length % 2 == 0 && angle % 2 == 0;
    }

    public Dimension root() {
        return new Dimension(length / 2, angle / 2);
    }

    /** In a drafter's words, with the article: "a length", "a plain number". */
    public String words() {
        if (equals(NUMBER)) {
            return "a plain number";
        } else if (equals(LENGTH)) {
            return "a length";
        } else if (equals(AREA)) {
            return "an area";
        } else if (equals(ANGLE)) {
            return "an angle";
        } else if (angle == 0 && length == -1) {
            return "a number divided by a length";
        } else if (angle == 0) {
            return "a length to the power of " + length;
        }
        return "a mixture of length (power " + length + ") and angle (power " + angle + ")";
    }

    /** Written out for the start of short runs, see docs/decisions/0034. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other || (other instanceof Dimension that && length == that.length && angle == that.angle);
    }

    @Override
    public int hashCode() {
        return 31 * length + angle;
    }
}
