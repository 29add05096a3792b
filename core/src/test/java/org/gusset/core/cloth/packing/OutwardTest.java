package org.gusset.core.cloth.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.gusset.core.geometry.Point;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** JTS says whether what the search packs holds what is cut. */
class OutwardTest {
    @Test
    void partsHoldTheRingAndLittleMore() {
        Random random = new Random(3);
        int fewer = 0;
        for (int i = 0; i < 400; i++) {
            List<Point> ring = wavy(random, 15 + random.nextInt(120));
            Item item = Item.of("piece " + i, ring, 1, List.of(Orientation.turned(random.nextInt(8) * 45)));
            Turned turned = Turned.of(item, 0, item.orientations().get(0));
            List<Convex> parts = Outward.parts(turned);
            Geometry held =
                    UnaryUnionOp.union(parts.stream().map(OutwardTest::polygon).toList());
            Polygon cut = polygon(new Convex(turned.xs, turned.ys));
            // The overlay itself rounds; what is left over is a splinter if anything.
            assertThat(cut.difference(held).getArea()).as("ring %d", i).isLessThan(1e-9 * cut.getArea());
            assertThat(held.getArea()).isLessThan(cut.getArea() * 1.0031);
            assertThat(held.getEnvelopeInternal().equals(cut.getEnvelopeInternal()))
                    .isTrue();
            fewer += held.getNumPoints() < cut.getNumPoints() ? 1 : 0;
        }
        assertThat(fewer).isGreaterThan(200);
    }

    @Test
    void curvedPiecesArePackedSoundly() {
        Random random = new Random(4);
        for (int i = 0; i < 8; i++) {
            List<Item> items = new ArrayList<>();
            for (int k = 0; k < 3; k++) {
                items.add(Item.of("piece " + k, wavy(random, 20 + random.nextInt(60)), 2, StripBox.HALF_TURNS));
            }
            Strip strip = new Strip(150, items, i % 4 == 0 ? 1 : 0);
            Packing first = Packer.first(strip).orElseThrow();
            Packing packing = Packer.improve(strip, first, new Search(i, 1, 1), () -> true, Runnable::run, p -> {});
            assertThat(PackingCheck.flaws(strip, first)).isEmpty();
            assertThat(PackingCheck.flaws(strip, packing)).isEmpty();
        }
    }

    /** A closed curve with waves: hollow and round by turns, with many corners. */
    private static List<Point> wavy(Random random, int corners) {
        double stretch = 0.4 + random.nextDouble();
        double waves = 2 + random.nextInt(4);
        double depth = 0.35 * random.nextDouble();
        double phase = 6 * random.nextDouble();
        List<Point> out = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            double radius = 40 * (1 + depth * Math.sin(waves * angle + phase));
            out.add(new Point(radius * Math.cos(angle), stretch * radius * Math.sin(angle)));
        }
        return out;
    }

    private static Polygon polygon(Convex part) {
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i < part.size(); i++) {
            ring.add(new Point(part.xs()[i], part.ys()[i]));
        }
        return Rings.polygon(ring);
    }
}
