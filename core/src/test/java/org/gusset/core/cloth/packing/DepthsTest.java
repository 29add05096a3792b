package org.gusset.core.cloth.packing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DepthsTest {
    /** However little is kept, every depth is the same to the last bit; tables are only made again. */
    @Test
    void whatIsDroppedIsMadeAgainAsItWas() {
        for (long seed = 1; seed <= 10; seed++) {
            Strip strip = StripBox.random(seed);
            Shapes shapes = new Shapes(strip, 0);
            Depths all = new Depths(shapes);
            Depths few = new Depths(shapes, 40_000);
            Depths none = new Depths(shapes, 0);
            Layout plan = FirstFit.plan(shapes);
            Crowding roomy = new Crowding(shapes, all, plan);
            Crowding narrow = new Crowding(shapes, few, plan);
            Crowding bare = new Crowding(shapes, none, plan);
            Chance chance = new Chance(seed, 0);
            for (int k = 0; k < 200; k++) {
                int piece = chance.below(roomy.pieces);
                int as = roomy.shape[piece];
                double x = chance.share() * plan.length();
                double y = chance.share() * strip.width();
                double cost = roomy.cost(piece, shapes.turned.get(as), as, x, y, Double.POSITIVE_INFINITY);
                assertThat(narrow.cost(piece, shapes.turned.get(as), as, x, y, Double.POSITIVE_INFINITY))
                        .isEqualTo(cost);
                assertThat(bare.cost(piece, shapes.turned.get(as), as, x, y, Double.POSITIVE_INFINITY))
                        .isEqualTo(cost);
                for (Crowding crowd : new Crowding[] {roomy, narrow, bare}) {
                    crowd.put(piece, as, x, y);
                    crowd.measure(piece);
                    crowd.weigh();
                }
            }
            assertThat(all.generation()).isZero();
            assertThat(none.generation()).isPositive();
            assertThat(narrow.total()).isEqualTo(roomy.total());
            assertThat(bare.total()).isEqualTo(roomy.total());
        }
    }
}
