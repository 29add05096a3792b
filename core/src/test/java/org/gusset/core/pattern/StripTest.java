package org.gusset.core.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Joins of strips and bias strips against printed cases and an independent geometry library. */
class StripTest {
    private static final double ROOT = Math.sqrt(2);

    /** 4 cm from a square of 90 cm: whole steps of 4 sqrt(2) along the edge, each strip a diagonal long. */
    @Test
    void biasStripsOfFourFromASquareOfNinety() {
        BiasStrips plain = BiasStrips.of(900, 900, 40, 0);
        assertThat(plain.count()).isEqualTo(15);
        assertThat(plain.each()).isCloseTo(900 * ROOT, within(1e-9));
        assertThat(plain.total()).isCloseTo(19_091.883, within(1e-3));
        // Area by width, which is never reached: 2025 cm.
        assertThat(plain.total()).isLessThan(900 * 900 / 40.0);
        BiasStrips joined = BiasStrips.of(900, 900, 40, 10);
        assertThat(joined.count()).isEqualTo(15);
        assertThat(joined.total()).isCloseTo(15 * 880 * ROOT, within(1e-9));
    }

    /** trade-facts.md D8: a square of n w sqrt(2) gives 2 n n w exactly. */
    @ParameterizedTest
    @CsvSource({"1, 40", "7, 10", "15, 40", "23, 25.4"})
    void aSquareOfWholeStepsGivesAllOfItsArea(int n, double strip) {
        double side = n * strip * ROOT;
        BiasStrips strips = BiasStrips.of(side, side, strip, 0);
        assertThat(strips.count()).isEqualTo(n);
        assertThat(strips.total()).isCloseTo(2.0 * n * n * strip, within(1e-6));
    }

    /**
     * Cases told by sewing rooms (pains.md S1 and S2, worked): 2 1/2 in strips from 31 by 20 in are 5 of 43.84 in, 219.2 in; 7 need
     * 24.75 in of selvage; a square of 36 in at 2 in gives 610.9 in, with quarter-inch joins 602.5 in.
     */
    @Test
    void printedCases() {
        double in = 25.4;
        BiasStrips binder = BiasStrips.of(31 * in, 20 * in, 2.5 * in, 0);
        assertThat(binder.count()).isEqualTo(5);
        assertThat(binder.total() / in).isCloseTo(219.2, within(0.05));
        assertThat(binder.step() * 7 / in).isCloseTo(24.75, within(0.005));
        assertThat(BiasStrips.of(36 * in, 36 * in, 2 * in, 0).total() / in).isCloseTo(610.9, within(0.05));
        assertThat(BiasStrips.of(36 * in, 36 * in, 2 * in, 0.25 * in).total() / in)
                .isCloseTo(602.5, within(0.05));
    }

    /** The parallelogram that the cloth becomes holds the strips and no more, by a general-purpose geometry library (JTS). */
    @Test
    void theStripsFitTheParallelogramAndOneMoreDoesNot() {
        Random random = new Random(90);
        GeometryFactory factory = new GeometryFactory();
        for (int i = 0; i < 200; i++) {
            double width = 200 + 1400 * random.nextDouble();
            double depth = 200 + 1400 * random.nextDouble();
            double strip = 10 + 90 * random.nextDouble();
            BiasStrips strips = BiasStrips.of(width, depth, strip, 0);
            Polygon cloth = parallelogram(factory, width, 0, depth);
            int fit = 0;
            while (cloth.covers(parallelogram(factory, width, fit * strip * ROOT, (fit + 1) * strip * ROOT - 1e-6))) {
                fit++;
            }
            assertThat(strips.count()).isEqualTo(fit);
        }
    }

    private static Polygon parallelogram(GeometryFactory factory, double width, double from, double to) {
        return factory.createPolygon(new Coordinate[] {
            new Coordinate(0, from),
            new Coordinate(width, from + width),
            new Coordinate(width, to + width),
            new Coordinate(0, to),
            new Coordinate(0, from)
        });
    }

    /** 215 cm and an allowance at each end from cloth 140 cm wide: two lengths of 109.5 cm, since one join takes 2 cm. */
    @Test
    void aStripLongerThanTheClothIsWideIsCutInEqualLengths() {
        JoinPlan plan = JoinPlan.of(JoinPlan.Lie.ACROSS, 2170, 80, 1400, 10).orElseThrow();
        assertThat(plan.lengths()).isEqualTo(2);
        assertThat(plan.joins()).isEqualTo(1);
        assertThat(plan.each()).isCloseTo(1095, within(1e-9));
        assertThat(JoinPlan.of(JoinPlan.Lie.ACROSS, 1400, 80, 1400, 10)
                        .orElseThrow()
                        .lengths())
                .isEqualTo(1);
    }

    @Test
    void theLengthsJoinedGiveTheStripAndFewerWouldNotReach() {
        Random random = new Random(215);
        for (int i = 0; i < 500; i++) {
            double whole = 100 + 9000 * random.nextDouble();
            double longest = 300 + 1500 * random.nextDouble();
            double allowance = 30 * random.nextDouble();
            for (JoinPlan.Lie lie : JoinPlan.Lie.values()) {
                double loss = lie == JoinPlan.Lie.BIAS ? 2 * allowance * ROOT : 2 * allowance;
                JoinPlan plan = JoinPlan.of(lie, whole, 60, longest, allowance).orElseThrow();
                assertThat(plan.each()).isLessThanOrEqualTo(longest + 1e-6);
                assertThat(plan.lengths() * plan.each() - plan.joins() * loss).isCloseTo(whole, within(1e-6));
                int fewer = plan.lengths() - 1;
                assertThat(fewer * longest - (fewer - 1) * loss).isLessThan(whole + 1e-6);
            }
        }
    }

    @Test
    void aClothThatJoinsWouldTakeUpGivesNoPlan() {
        assertThat(JoinPlan.of(JoinPlan.Lie.ACROSS, 2170, 80, 20, 10)).isEmpty();
        assertThatThrownBy(() -> BiasStrips.of(900, 900, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThat(BiasStrips.of(900, 15, 40, 10).count()).isZero();
    }
}
