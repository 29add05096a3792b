package org.gusset.core.cloth.packing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.gusset.core.geometry.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Polygon;

class PackingCheckTest {
    static List<String> names() {
        return PublishedSets.NAMES;
    }

    /** Outside source: the best published layouts; their pieces lie from 5e-7 to 8e-3 apart. */
    @ParameterizedTest
    @MethodSource("names")
    void publishedLayoutsAreSound(String name) {
        assumeTrue(PublishedSets.present(), "the folder of facts is absent");
        Strip strip = PublishedSets.strip(name);
        Packing packing = PublishedSets.record(name, strip);
        assertThat(PackingCheck.flaws(strip, packing)).isEmpty();
        // Rings begin a hair after x = 0 in some, so that they end a hair before the length.
        assertThat(packing.length()).isCloseTo(PublishedSets.recordedLength(name), within(2e-4 * packing.length()));
    }

    @ParameterizedTest
    @MethodSource("names")
    void aPieceMovedByAHundredthOfTheWidthIsFoundByBothMethods(String name) {
        assumeTrue(PublishedSets.present(), "the folder of facts is absent");
        Strip strip = PublishedSets.strip(name);
        Packing sound = PublishedSets.record(name, strip);
        int middle = sound.placements().size() / 2;
        List<Placement> moved = new ArrayList<>(sound.placements());
        Placement p = moved.get(middle);
        moved.set(middle, new Placement(p.item(), p.orientation(), p.x() - strip.width() / 100, p.y()));
        List<Flaw> flaws = PackingCheck.flaws(strip, new Packing(sound.length(), moved));
        if (flaws.stream().noneMatch(f -> f.kind() == Flaw.Kind.OUTSIDE)) {
            assertThat(flaws)
                    .extracting(Flaw::kind)
                    .contains(Flaw.Kind.OVERLAP_BY_EDGES, Flaw.Kind.OVERLAP_BY_RELATION);
            assertThat(flaws).allMatch(f -> f.first() == middle || f.second() == middle);
        }
    }

    @Test
    void everythingElseThatCanBeWrongIsTold() {
        Item square = new Item(
                "square",
                StripBox.rectangle(10, 10),
                2,
                List.of(Orientation.AS_GIVEN),
                Rail.within(5, 40).withAlong(new Lattice(0, 5)));
        Strip strip = new Strip(50, List.of(square), 2);
        Placement sound = new Placement(0, Orientation.AS_GIVEN, 0, 5);
        assertThat(kinds(strip, 30, sound, new Placement(0, Orientation.AS_GIVEN, 0, 17)))
                .isEmpty();
        assertThat(kinds(strip, 30, sound, new Placement(0, Orientation.AS_GIVEN, 0, 16)))
                .containsExactly(Flaw.Kind.GAP);
        assertThat(kinds(strip, 30, sound)).containsExactly(Flaw.Kind.DEMAND);
        assertThat(kinds(strip, 30, sound, new Placement(1, Orientation.AS_GIVEN, 0, 17)))
                .containsExactlyInAnyOrder(Flaw.Kind.DEMAND, Flaw.Kind.DEMAND);
        assertThat(kinds(strip, 30, sound, new Placement(0, Orientation.turned(90), 20, 17)))
                .containsExactly(Flaw.Kind.ORIENTATION);
        assertThat(kinds(strip, 30, sound, new Placement(0, Orientation.AS_GIVEN, 0, 31)))
                .containsExactly(Flaw.Kind.OUTSIDE);
        assertThat(kinds(strip, 30, sound, new Placement(0, Orientation.AS_GIVEN, 25, 17)))
                .containsExactly(Flaw.Kind.OUTSIDE, Flaw.Kind.LENGTH);
        assertThat(kinds(strip, 30, sound, new Placement(0, Orientation.AS_GIVEN, 1, 17)))
                .containsExactly(Flaw.Kind.LATTICE);
        assertThat(kinds(strip, 30, sound, sound)).contains(Flaw.Kind.OVERLAP_BY_EDGES, Flaw.Kind.OVERLAP_BY_RELATION);
        assertThatThrownBy(() -> new Placement(0, Orientation.AS_GIVEN, Double.NaN, 17))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** JTS says of thousands of pairs, many of them touching along edges or at corners, whether their insides meet. */
    @Test
    void edgesAgreeWithJts() {
        Random random = new Random(7);
        int met = 0;
        int touched = 0;
        for (int i = 0; i < 20_000; i++) {
            List<Point> a = i % 2 == 0 ? onGrid(random) : StripBox.star(random, 4);
            List<Point> b =
                    moved(i % 2 == 0 ? onGrid(random) : StripBox.star(random, 4), random.nextInt(5), random.nextInt(5));
            Polygon p = Rings.polygon(a);
            Polygon q = Rings.polygon(b);
            boolean meet = org.locationtech.jts.operation.relateng.RelateNG.relate(p, q)
                    .matches("T********");
            assertThat(EdgeOverlap.overlap(EdgeRing.of(a), EdgeRing.of(b)))
                    .as("pair %d: %s %s", i, p, q)
                    .isEqualTo(meet);
            met += meet ? 1 : 0;
            touched += p.touches(q) ? 1 : 0;
        }
        assertThat(met).isBetween(4000, 19_000);
        assertThat(touched).isGreaterThan(500);
    }

    /** A star with whole coordinates, as often as not with corners on one line. */
    private static List<Point> onGrid(Random random) {
        while (true) {
            List<Point> ring = StripBox.star(random, 4).stream()
                    .map(p -> new Point(Math.rint(p.x()), Math.rint(p.y())))
                    .toList();
            if (Rings.polygon(ring).isValid() && Rings.signedArea(ring) != 0) {
                return ring;
            }
        }
    }

    private static List<Point> moved(List<Point> ring, double dx, double dy) {
        return ring.stream().map(p -> new Point(p.x() + dx, p.y() + dy)).toList();
    }

    private static List<Flaw.Kind> kinds(Strip strip, double length, Placement... placements) {
        return PackingCheck.flaws(strip, new Packing(length, List.of(placements))).stream()
                .map(Flaw::kind)
                .toList();
    }
}
