package org.gusset.core.pattern;

import org.jspecify.annotations.Nullable;

/**
 * What is added outside an edge.
 *
 * @param width the width in mm, 0 for none
 * @param turnedUp true for a hem whose allowance is the mirror image of the piece, so that it lies flat when turned
 */
public record Allowance(double width, boolean turnedUp) {
    public static final Allowance NONE = new Allowance(0, false);

    public static Allowance of(double mm) {
        return new Allowance(mm, false);
    }

    public static Allowance turnedUp(double mm) {
        return new Allowance(mm, true);
    }

    /** Written out for the start of short runs, see docs/decisions/0034. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof Allowance that
                        && Double.compare(width, that.width) == 0
                        && turnedUp == that.turnedUp);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(width) + Boolean.hashCode(turnedUp);
    }
}
