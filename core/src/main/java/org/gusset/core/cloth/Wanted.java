package org.gusset.core.cloth;

/**
 * How often a shape is wanted of a cloth.
 *
 * @param shape the shape
 * @param plain copies as drawn
 * @param mirrored copies that are the mirror image
 * @param whole whole pieces, of one with a fold
 */
record Wanted(LayShape shape, int plain, int mirrored, int whole) {
    int copies() {
        return plain + mirrored + whole;
    }

    double area() {
        return shape.area() * copies();
    }

    Wanted less(int wholes) {
        return new Wanted(shape, plain, mirrored, whole - wholes);
    }

    Wanted plus(Wanted more) {
        return new Wanted(shape, sum(plain, more.plain), sum(mirrored, more.mirrored), sum(whole, more.whole));
    }

    /** Far more than is ever laid stands for whatever is more, so that all three together are still a number. */
    private static int sum(int one, int other) {
        return (int) Math.min(Integer.MAX_VALUE / 3, (long) one + other);
    }
}
