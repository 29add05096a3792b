package org.gusset.core.pattern;

/**
 * Bias strips cut from a rectangle of cloth. The cloth is cut along the bias from one selvage, and the corner that falls off is sewn
 * to the other end along the weft, so that a parallelogram is left from which whole strips are cut, each from selvage to selvage.
 * One step along the selvage is the strip's width times the square root of 2; every strip is the cloth's width times that long.
 * (Geometry. The sum of area divided by width, which charts print, is never reached, since strips come whole.)
 *
 * @param width of the cloth from selvage to selvage, in mm
 * @param depth of the cloth along the selvage
 * @param strip the width to which the strips are cut
 * @param allowance of each side of a join; 0 for what could be cut if joins took nothing
 * @param count how many whole strips there are
 * @param each how long each is, along its middle, before it is joined
 */
public record BiasStrips(double width, double depth, double strip, double allowance, int count, double each) {
    private static final double ROOT = StrictMath.sqrt(2);

    /** Counts that are whole up to this are whole. */
    private static final double HAIR = 1e-9;

    /**
     * The strips of a rectangle.
     *
     * @throws IllegalArgumentException if a measure is not above 0, or the allowance below it
     */
    public static BiasStrips of(double width, double depth, double strip, double allowance) {
        if (!(width > 0 && depth > 0 && strip > 0 && allowance >= 0)) {
            throw new IllegalArgumentException("cloth and strip need a width and a length: " + width + " by " + depth
                    + ", strips " + strip + ", allowance " + allowance);
        }
        // The seam that puts the corner back takes its allowances off the depth.
        double left = depth - 2 * allowance;
        int count = left <= 0 ? 0 : (int) Math.floor(left / (strip * ROOT) + HAIR);
        return new BiasStrips(width, depth, strip, allowance, count, width * ROOT);
    }

    /** What a join takes of a strip's length: it is sewn along the grain, so both allowances lie askew. */
    public static double join(double allowance) {
        return 2 * allowance * ROOT;
    }

    /** The length of all strips joined end to end, the last one ready to be joined too, in mm. */
    public double total() {
        return count * Math.max(0, each - join(allowance));
    }

    /** The step along the selvage, in mm. */
    public double step() {
        return strip * ROOT;
    }
}
