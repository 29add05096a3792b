package org.gusset.svg.style;

/**
 * How words are written.
 *
 * @param size the height of the type (its em) in mm
 * @param bold true for heavy strokes
 * @param colour {@code #rrggbb} or a colour's name
 */
public record Lettering(double size, boolean bold, String colour) {
    /**
     * Checks the parts.
     *
     * @throws IllegalArgumentException if the size is not a positive number or the colour is not one word or triplet
     */
    public Lettering {
        Colours.checked(colour);
        if (!(size > 0) || Double.isInfinite(size)) {
            throw new IllegalArgumentException("Lettering must be higher than 0 mm, not " + size + ".");
        }
    }

    public static Lettering plain(double size) {
        return new Lettering(size, false, "#000000");
    }

    public static Lettering bold(double size) {
        return new Lettering(size, true, "#000000");
    }
}
