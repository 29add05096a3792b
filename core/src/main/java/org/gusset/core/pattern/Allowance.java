package org.gusset.core.pattern;

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
}
