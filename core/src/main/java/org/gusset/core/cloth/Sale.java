package org.gusset.core.cloth;

/**
 * In which steps cloth is cut off the bolt and sold (common practice, no source).
 *
 * @param step the smallest difference of two lengths that are sold, in mm
 */
public record Sale(double step) {
    /** By ten centimetres. */
    public static final Sale METRIC = new Sale(100);
    /** By the eighth of a yard. */
    public static final Sale YARDS = new Sale(914.4 / 8);

    /** So much over a length that is sold counts as that length, in mm: less than shears can tell, and no more than outlines are held from outside. */
    static final double HAIR = 0.5;

    /**
     * A step.
     *
     * @throws IllegalArgumentException if it is not above 0
     */
    public Sale {
        if (!(step > 0 && step < Double.MAX_VALUE)) {
            throw new IllegalArgumentException("cloth is sold in steps of more than nothing: " + step);
        }
    }

    /** The shortest length that is sold and not shorter than this one. */
    public double roundedUp(double length) {
        return Math.ceil((length - HAIR) / step) * step;
    }
}
