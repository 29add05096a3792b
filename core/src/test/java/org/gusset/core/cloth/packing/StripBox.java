package org.gusset.core.cloth.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.gusset.core.geometry.Point;

/** Strips that tests make. */
final class StripBox {
    static final List<Orientation> HALF_TURNS = List.of(Orientation.AS_GIVEN, Orientation.turned(180));
    static final List<Orientation> QUARTER_TURNS =
            List.of(Orientation.AS_GIVEN, Orientation.turned(90), Orientation.turned(180), Orientation.turned(270));

    private StripBox() {}

    static List<Point> rectangle(double length, double height) {
        return ring(0, 0, length, 0, length, height, 0, height);
    }

    static List<Point> ring(double... coordinates) {
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < coordinates.length; i += 2) {
            out.add(new Point(coordinates[i], coordinates[i + 1]));
        }
        return out;
    }

    /** A star-shaped ring about the origin: its corners lie at growing angles, some far out and some near. */
    static List<Point> star(Random random, double size) {
        int corners = 3 + random.nextInt(9);
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
            double radius = size * (0.25 + 0.75 * random.nextDouble());
            out.add(new Point(radius * Math.cos(angle), radius * Math.sin(angle)));
        }
        if (random.nextBoolean()) {
            java.util.Collections.reverse(out);
        }
        return out;
    }

    /** A few pieces: stars and rectangles, some on a rail or a lattice, with and without a gap. */
    static Strip random(long seed) {
        Random random = new Random(seed);
        double width = 20 + random.nextInt(80);
        List<Item> items = new ArrayList<>();
        int kinds = 1 + random.nextInt(4);
        for (int i = 0; i < kinds; i++) {
            double size = width * (0.08 + 0.3 * random.nextDouble());
            List<Point> ring = random.nextInt(3) == 0
                    ? rectangle(Math.rint(size) + 1, Math.rint(size / 2) + 1)
                    : star(random, size);
            List<Orientation> turns = switch (random.nextInt(4)) {
                case 0 -> List.of(Orientation.AS_GIVEN);
                case 1 -> HALF_TURNS;
                case 2 -> QUARTER_TURNS;
                default -> List.of(new Orientation(0, true), Orientation.turned(3), Orientation.turned(180));
            };
            Rail rail = switch (random.nextInt(6)) {
                case 0 -> Rail.free().withAlong(new Lattice(random.nextInt(3), 1 + random.nextInt(7)));
                case 1 -> Rail.free().withAcross(new Lattice(0, 2.5));
                case 2 -> Rail.within(-1, width * 0.9);
                default -> Rail.free();
            };
            items.add(new Item("piece " + i, ring, 1 + random.nextInt(4), turns, rail));
        }
        return new Strip(width, items, random.nextInt(3) == 0 ? 0.5 : 0);
    }
}
