package org.gusset.benchmarks.nesting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.gusset.core.cloth.packing.Item;
import org.gusset.core.cloth.packing.Lattice;
import org.gusset.core.cloth.packing.Orientation;
import org.gusset.core.cloth.packing.Rail;
import org.gusset.core.cloth.packing.Strip;
import org.gusset.core.geometry.Point;

/** Small sets of pieces by chance: spiky and blunt shapes, rectangles that touch exactly, rails, stripes, gaps, odd turns. */
final class SmallSets {
    private SmallSets() {}

    static Strip of(long seed) {
        Random random = new Random(seed);
        double width = random.nextBoolean() ? 10 * (2 + random.nextInt(14)) : 20 + 120 * random.nextDouble();
        int kinds = 1 + random.nextInt(5);
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < kinds; i++) {
            items.add(new Item(
                    "piece " + i, ring(random, width), 1 + random.nextInt(4), turns(random), rail(random, width)));
        }
        return new Strip(width, items, random.nextInt(4) == 0 ? random.nextInt(3) * 0.5 : 0);
    }

    private static List<Point> ring(Random random, double width) {
        double size = width * (0.06 + 0.34 * random.nextDouble());
        if (random.nextInt(4) == 0) {
            double length = random.nextBoolean() ? width / 2 : Math.rint(size) + 1;
            double height = random.nextBoolean() ? width / (1 + random.nextInt(4)) : Math.rint(size / 2) + 1;
            return List.of(new Point(0, 0), new Point(length, 0), new Point(length, height), new Point(0, height));
        }
        int corners = 3 + random.nextInt(10);
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.85 * random.nextDouble()) / corners;
            double radius = size * (0.2 + 0.8 * random.nextDouble());
            double x = radius * Math.cos(angle);
            double y = radius * Math.sin(angle);
            out.add(new Point(x, y));
        }
        if (random.nextBoolean()) {
            Collections.reverse(out);
        }
        return out;
    }

    private static List<Orientation> turns(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> List.of(Orientation.AS_GIVEN);
            case 1 -> List.of(Orientation.AS_GIVEN, Orientation.turned(180));
            case 2 ->
                List.of(Orientation.AS_GIVEN, Orientation.turned(90), Orientation.turned(180), Orientation.turned(270));
            default -> List.of(new Orientation(0, true), Orientation.turned(-2.5), Orientation.turned(45));
        };
    }

    private static Rail rail(Random random, double width) {
        return switch (random.nextInt(8)) {
            case 0 -> Rail.free().withAlong(new Lattice(random.nextInt(5), 1 + random.nextInt(12)));
            case 1 -> Rail.free().withAcross(new Lattice(0, 0.5 + random.nextInt(5)));
            case 2 -> Rail.within(width * 0.1, width);
            case 3 -> Rail.at(0);
            default -> Rail.free();
        };
    }
}
