package org.gusset.core.stress;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class HaltonTest {
    private static final Offset<Double> EXACT = Offset.offset(1e-15);

    /** The radical inverse by its definition (Halton 1960): in base 2 the digits of 1, 10, 11, 100 mirrored at the point, and so on. */
    @Test
    void theFirstPointsAreThePublishedOnes() {
        Halton halton = Halton.plain(3);
        double[][] wanted = {
            {0, 0, 0},
            {1 / 2.0, 1 / 3.0, 1 / 5.0},
            {1 / 4.0, 2 / 3.0, 2 / 5.0},
            {3 / 4.0, 1 / 9.0, 3 / 5.0},
            {1 / 8.0, 4 / 9.0, 4 / 5.0},
            {5 / 8.0, 7 / 9.0, 1 / 25.0},
            {3 / 8.0, 2 / 9.0, 6 / 25.0},
            {7 / 8.0, 5 / 9.0, 11 / 25.0},
            {1 / 16.0, 8 / 9.0, 16 / 25.0}
        };
        for (int n = 0; n < wanted.length; n++) {
            for (int d = 0; d < 3; d++) {
                assertThat(halton.at(n, d)).as("point %d, coordinate %d", n, d).isCloseTo(wanted[n][d], EXACT);
            }
        }
    }

    /** Permuting digits keeps what makes the sequence even: of the first b^k points one lies in each stretch of b^-k. */
    @Test
    void scrambledPointsStillFillEveryStretchOnce() {
        int[] bases = {2, 3, 5, 7, 11, 13};
        Halton halton = Halton.scrambled(bases.length, 42);
        for (int d = 0; d < bases.length; d++) {
            int cells = bases[d] * bases[d];
            BitSet met = new BitSet();
            for (int n = 0; n < cells; n++) {
                met.set((int) (halton.at(n, d) * cells));
            }
            assertThat(met.cardinality()).as("base %d", bases[d]).isEqualTo(cells);
        }
    }

    @Test
    void anotherSeedGivesOtherPointsAndTheSameSeedTheSame() {
        assertThat(Halton.scrambled(4, 1).at(17, 3))
                .isEqualTo(Halton.scrambled(4, 1).at(17, 3));
        assertThat(Halton.scrambled(4, 1).at(17, 3))
                .isNotEqualTo(Halton.scrambled(4, 2).at(17, 3));
        assertThat(Halton.scrambled(4, 1).at(17, 3)).isBetween(0.0, 1.0).isNotEqualTo(1.0);
    }

    @Test
    void evenInManyDimensionsTwoCoordinatesDoNotRunTogether() {
        // The plain sequence in bases 89 and 97 is one stripe for the first 80 points: their correlation is 1.
        assertThat(correlation(Halton.plain(25))).isGreaterThan(0.99);
        assertThat(Math.abs(correlation(Halton.scrambled(25, 1)))).isLessThan(0.3);
    }

    private static double correlation(Halton halton) {
        double xy = 0;
        double xx = 0;
        double yy = 0;
        double meanX = 0;
        double meanY = 0;
        int points = 80;
        for (int n = 0; n < points; n++) {
            meanX += halton.at(n, 23) / points;
            meanY += halton.at(n, 24) / points;
        }
        for (int n = 0; n < points; n++) {
            double x = halton.at(n, 23) - meanX;
            double y = halton.at(n, 24) - meanY;
            xy += x * y;
            xx += x * x;
            yy += y * y;
        }
        return xy / Math.sqrt(xx * yy);
    }
}
