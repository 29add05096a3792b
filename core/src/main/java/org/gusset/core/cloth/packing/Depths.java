package org.gusset.core.cloth.packing;

import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * The depth tables of a strip's shapes, made when they are first asked for. Two shapes that are both turned by half a turn, or that change
 * their parts, see the same table with the signs of the place changed. Several threads may ask.
 */
final class Depths {
    private final Shapes shapes;
    private final int size;
    /** For each shape the one that is the same turned by half a turn, or -1. */
    private final int[] half;

    private final AtomicReferenceArray<DepthTable> tables;

    Depths(Shapes shapes) {
        this.shapes = shapes;
        this.size = shapes.size();
        this.half = new int[size];
        for (int i = 0; i < size; i++) {
            half[i] = -1;
            for (int j : shapes.ofItem[shapes.turned.get(i).item]) {
                Orientation a = shapes.turned.get(i).orientation;
                Orientation b = shapes.turned.get(j).orientation;
                if (a.mirrored() == b.mirrored() && Math.abs(a.degrees() - b.degrees()) == 180) {
                    half[i] = j;
                }
            }
        }
        tables = new AtomicReferenceArray<>(size * size);
    }

    /** The table that holds the depth of {@code moving} in {@code fixed}; signs as {@link #turned} says. */
    DepthTable table(int fixed, int moving) {
        int at = least(fixed, moving);
        DepthTable known = tables.get(at);
        if (known == null) {
            known = new DepthTable(shapes.noFit(at / size, at % size), shapes.rounding, 4 * shapes.clearance);
            tables.set(at, known);
        }
        return known;
    }

    /** Whether the place must change its signs. */
    boolean turned(int fixed, int moving) {
        int at = least(fixed, moving);
        return at != fixed * size + moving
                && (half[fixed] < 0 || half[moving] < 0 || at != half[moving] * size + half[fixed]);
    }

    private int least(int fixed, int moving) {
        int least = Math.min(fixed * size + moving, moving * size + fixed);
        if (half[fixed] >= 0 && half[moving] >= 0) {
            least = Math.min(least, Math.min(half[fixed] * size + half[moving], half[moving] * size + half[fixed]));
        }
        return least;
    }
}
