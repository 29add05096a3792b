package org.gusset.svg.style;

import java.util.List;

/**
 * How a line is drawn. The true line is the middle of the stroke.
 *
 * @param weight its breadth in mm
 * @param dashes lengths in mm of dash and gap in turn; empty for an unbroken line
 * @param colour {@code #rrggbb} or a colour's name
 */
public record Pen(double weight, List<Double> dashes, String colour) {
    /**
     * Checks the parts.
     *
     * @throws IllegalArgumentException if the weight or a dash is not a positive number or the colour is not one word or triplet
     */
    public Pen {
        dashes = List.copyOf(dashes);
        Colours.checked(colour);
        if (!(weight > 0) || Double.isInfinite(weight)) {
            throw new IllegalArgumentException("A pen's weight must be more than 0 mm, not " + weight + ".");
        }
        for (double dash : dashes) {
            if (!(dash > 0) || Double.isInfinite(dash)) {
                throw new IllegalArgumentException("Dashes and gaps must be longer than 0 mm, not " + dash + ".");
            }
        }
    }

    /** An unbroken black line. */
    public static Pen solid(double weight) {
        return new Pen(weight, List.of(), "#000000");
    }

    /** A broken black line. */
    public static Pen dashed(double weight, Double... dashes) {
        return new Pen(weight, List.of(dashes), "#000000");
    }

    public Pen withColour(String newColour) {
        return new Pen(weight, dashes, newColour);
    }

    public Pen withWeight(double newWeight) {
        return new Pen(newWeight, dashes, colour);
    }
}
