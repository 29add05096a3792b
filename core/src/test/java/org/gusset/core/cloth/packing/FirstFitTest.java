package org.gusset.core.cloth.packing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.gusset.core.geometry.Point;
import org.junit.jupiter.api.Test;

class FirstFitTest {
    /** Counted by hand: on 150 two pieces of 75 lie side by side, on 110 they do not, although the area would ask for 1.36 lengths only. */
    @Test
    void narrowerClothTakesTwiceTheLength() {
        Item piece = Item.of("back", StripBox.rectangle(100, 75), 2, List.of(Orientation.AS_GIVEN));
        assertThat(first(new Strip(150, List.of(piece), 0)).length()).isEqualTo(100);
        assertThat(first(new Strip(110, List.of(piece), 0)).length()).isEqualTo(200);
    }

    /** Counted by hand: 12 rectangles of 10 x 20 and 8 of 15 x 10 cover 60 x 60 without a hole: 2400 + 1200 = 3600. */
    @Test
    void rectanglesFillExactly() {
        Strip strip = new Strip(
                60,
                List.of(
                        Item.of("long", StripBox.rectangle(10, 20), 12, List.of(Orientation.AS_GIVEN)),
                        Item.of("low", StripBox.rectangle(10, 15), 8, List.of(Orientation.AS_GIVEN))),
                0);
        Packing packing = first(strip);
        assertThat(packing.length()).isEqualTo(60);
        assertThat(packing.share(strip)).isEqualTo(1);
    }

    /** The same with sides that no double holds: three times 0.1 is not 0.3. */
    @Test
    void rectanglesOfTenthsFillButForRounding() {
        Strip strip = new Strip(
                0.3, List.of(Item.of("tenth", StripBox.rectangle(0.7, 0.1), 9, List.of(Orientation.AS_GIVEN))), 0);
        assertThat(first(strip).length()).isBetween(2.1 - 1e-9, 2.1 + 1e-9);
    }

    /** A gap stands between pieces, not along the edges of the strip: 20 + 1 + 20 + 1 + 20. */
    @Test
    void gapsStandBetweenPieces() {
        Strip strip = new Strip(
                62, List.of(Item.of("square", StripBox.rectangle(20, 20), 6, List.of(Orientation.AS_GIVEN))), 1);
        assertThat(first(strip).length()).isBetween(41.0, 41.0001);
    }

    /** Two right triangles of 40 x 30 make a rectangle of that size once one of them is turned. */
    @Test
    void trianglesMeetAlongTheirSlant() {
        List<Point> triangle = StripBox.ring(0, 0, 40, 0, 0, 30);
        Strip strip = new Strip(30.001, List.of(Item.of("gore", triangle, 2, StripBox.HALF_TURNS)), 0);
        assertThat(first(strip).length()).isBetween(40.0, 40.1);
    }

    @Test
    void aPieceOnTheFoldLiesAtTheFold() {
        Item back = new Item("back", StripBox.rectangle(40, 20), 2, StripBox.HALF_TURNS, Rail.at(0));
        Item sleeve = Item.of("sleeve", StripBox.rectangle(30, 20), 2, StripBox.HALF_TURNS);
        Packing packing = first(new Strip(50, List.of(sleeve, back), 0));
        assertThat(packing.placements().stream().filter(p -> p.item() == 1))
                .hasSize(2)
                .allSatisfy(p -> assertThat(p.y()).isZero())
                .allSatisfy(p -> assertThat(p.orientation()).isEqualTo(Orientation.AS_GIVEN));
        assertThat(packing.length()).isEqualTo(80);
    }

    /** Stripes of 12: pieces of 30 begin at 0 and 36, the first whole stripe after the end of the one before. */
    @Test
    void piecesBeginOnStripes() {
        Item piece = new Item(
                "front",
                StripBox.rectangle(30, 10),
                2,
                List.of(Orientation.AS_GIVEN),
                Rail.free().withAlong(new Lattice(0, 12)));
        assertThat(first(new Strip(10, List.of(piece), 0)).length()).isEqualTo(66);
    }

    @Test
    void whatIsWiderThanTheStripIsToldBeforehand() {
        Item wide = Item.of("cape", StripBox.rectangle(200, 160), 1, StripBox.QUARTER_TURNS);
        Strip strip = new Strip(150, List.of(wide), 0);
        assertThat(strip.misfits()).containsExactly(new Misfit(0, 160, 150));
        assertThat(Packer.first(strip)).isEmpty();
        assertThat(new Strip(160, List.of(wide), 0).misfits()).isEmpty();
    }

    @Test
    void aLatticeMayLeaveNoRoom() {
        Item item = new Item(
                "band",
                StripBox.rectangle(10, 10),
                1,
                List.of(Orientation.AS_GIVEN),
                Rail.free().withAcross(new Lattice(7, 20)));
        assertThat(new Strip(16, List.of(item), 0).misfits()).containsExactly(new Misfit(0, 10, 16));
        assertThat(new Strip(17, List.of(item), 0).misfits()).isEmpty();
    }

    @Test
    void soundOnHundredsOfRandomStrips() {
        for (long seed = 1; seed <= 500; seed++) {
            Strip strip = StripBox.random(seed);
            assertThat(PackingCheck.flaws(strip, first(strip)))
                    .as("seed %d: %s", seed, strip)
                    .isEmpty();
        }
    }

    @Test
    void ringsThatAreNotSimpleAreRefused() {
        assertThatThrownBy(() -> Item.of("bow", StripBox.ring(0, 0, 10, 10, 10, 0, 0, 10), 1, StripBox.HALF_TURNS))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("bow");
        assertThatThrownBy(() -> Item.of("line", StripBox.ring(0, 0, 10, 0, 20, 0), 1, StripBox.HALF_TURNS))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Item.of("none", StripBox.ring(0, 0, Double.NaN, 0, 20, 5), 1, StripBox.HALF_TURNS))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Packing first(Strip strip) {
        Packing packing = Packer.first(strip).orElseThrow(() -> new AssertionError("no plan for " + strip));
        assertThat(PackingCheck.flaws(strip, packing)).isEmpty();
        return packing;
    }
}
