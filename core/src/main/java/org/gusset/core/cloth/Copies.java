package org.gusset.core.cloth;

/**
 * What comes out when a piece is cut through all layers.
 *
 * @param plain copies as drawn, right side up
 * @param mirrored copies that are the mirror image
 * @param whole whole pieces, of one with a fold
 */
public record Copies(int plain, int mirrored, int whole) {
    /** Nothing. */
    public static final Copies NONE = new Copies(0, 0, 0);

    public int all() {
        return plain + mirrored + whole;
    }

    public Copies plus(Copies other) {
        return new Copies(plain + other.plain, mirrored + other.mirrored, whole + other.whole);
    }

    public Copies minus(Copies other) {
        return new Copies(plain - other.plain, mirrored - other.mirrored, whole - other.whole);
    }
}
