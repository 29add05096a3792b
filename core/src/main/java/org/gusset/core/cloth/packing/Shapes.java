package org.gusset.core.cloth.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.jspecify.annotations.Nullable;

/**
 * All turned items of a strip that fit on it, numbered from 0, and their no-fit polygons, made when they are first asked for. Several
 * threads may ask; what they get depends on the strip alone.
 */
final class Shapes {
    final Strip strip;
    /** Planes aslant are moved out by so much. */
    final double clearance;
    /** Differences of coordinates that are smaller than this come of rounding. */
    final double rounding;

    final List<Turned> turned = new ArrayList<>();
    final List<Room> rooms = new ArrayList<>();
    /** The shapes of each item. */
    final int[][] ofItem;

    /** For each shape the one that is the same turned by half a turn, or -1. */
    final int[] half;

    private final List<List<Convex>> parts = new ArrayList<>();
    /** No-fit polygons are kept up to so many planes, some hundred megabytes; beyond that all are dropped, and made again when asked for. */
    static final long MOST_PLANES = 4_000_000;

    private final AtomicReferenceArray<@Nullable NoFit> noFits;
    private final AtomicLong planes = new AtomicLong();

    /** The share of the clearance that planes along the axes are moved out by. */
    private final double onAxes;

    /** Strips without misfits only. */
    Shapes(Strip strip, double onAxes) {
        this.onAxes = onAxes;
        this.strip = strip;
        this.clearance = strip.width() * 1e-8;
        this.rounding = strip.width() * 1e-12;
        this.ofItem = new int[strip.items().size()][];
        for (int i = 0; i < strip.items().size(); i++) {
            Item item = strip.items().get(i);
            List<Integer> shapes = new ArrayList<>();
            for (Orientation orientation : item.orientations()) {
                Turned shape = Turned.of(item, i, orientation);
                Optional<Room> room = Room.of(shape, item.rail(), strip.width());
                if (room.isPresent()) {
                    shapes.add(turned.size());
                    turned.add(shape);
                    rooms.add(room.get());
                    parts.add(Outward.parts(shape));
                }
            }
            ofItem[i] = shapes.stream().mapToInt(Integer::intValue).toArray();
        }
        noFits = new AtomicReferenceArray<>(turned.size() * turned.size());
        half = new int[turned.size()];
        for (int i = 0; i < half.length; i++) {
            half[i] = turnedByHalf(i);
        }
    }

    private int turnedByHalf(int shape) {
        Orientation own = turned.get(shape).orientation;
        int found = -1;
        for (int other : ofItem[turned.get(shape).item]) {
            Orientation its = turned.get(other).orientation;
            if (own.mirrored() == its.mirrored() && Math.abs(own.degrees() - its.degrees()) == 180) {
                found = other;
            }
        }
        return found;
    }

    int size() {
        return turned.size();
    }

    /** Where {@code moving} overlaps {@code fixed}, seen from the origin of {@code fixed}. */
    NoFit noFit(int fixed, int moving) {
        int at = fixed * turned.size() + moving;
        NoFit known = noFits.get(at);
        if (known == null) {
            known = NoFit.of(parts.get(fixed), parts.get(moving), strip.gap(), clearance, onAxes * clearance);
            if (planes.addAndGet(known.c.length) > MOST_PLANES) {
                drop();
            }
            noFits.set(at, known);
        }
        return known;
    }

    private void drop() {
        planes.set(0);
        for (int i = 0; i < noFits.length(); i++) {
            noFits.set(i, null);
        }
    }
}
