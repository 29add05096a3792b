package org.gusset.core.cloth.packing;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.jspecify.annotations.Nullable;

/**
 * The depth tables of a strip's shapes, made when they are first asked for. Two shapes that are both turned by half a turn, or that change
 * their parts, see the same table with the signs of the place changed. Several threads may ask.
 */
final class Depths {
    /** Tables are kept up to so many bytes, about. */
    private static final long MOST_KEPT = 256L << 20;

    private final Shapes shapes;
    private final int size;
    private final int[] half;
    private final long most;
    private final AtomicLong kept = new AtomicLong();
    private final AtomicInteger generation = new AtomicInteger();
    private final AtomicReferenceArray<@Nullable DepthTable> tables;

    Depths(Shapes shapes) {
        this(shapes, MOST_KEPT);
    }

    /** @param most so many bytes are kept, about; once there are more, all are dropped and made again as they are asked for */
    Depths(Shapes shapes, long most) {
        this.shapes = shapes;
        this.size = shapes.size();
        this.half = shapes.half;
        this.most = most;
        tables = new AtomicReferenceArray<>(size * size);
    }

    /** Counted up whenever all tables have been dropped: whoever keeps tables of an earlier generation should let them go. */
    int generation() {
        return generation.get();
    }

    /** The table that holds the depth of {@code moving} in {@code fixed}; signs as {@link #turned} says. */
    DepthTable table(int fixed, int moving) {
        int at = least(fixed, moving);
        DepthTable known = tables.get(at);
        if (known == null) {
            known = new DepthTable(shapes.noFit(at / size, at % size), shapes.rounding, 4 * shapes.clearance);
            if (kept.addAndGet(known.bytes()) > most) {
                drop();
            }
            tables.set(at, known);
        }
        return known;
    }

    private void drop() {
        kept.set(0);
        for (int i = 0; i < tables.length(); i++) {
            tables.set(i, null);
        }
        generation.incrementAndGet();
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
