package org.gusset.core.construct;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.junit.jupiter.api.Test;

/** Points against school geometry: right angles, the 3-4-5 triangle, circles. */
class PointConstructionTest {
    private static final double HAIR = 1e-9;
    private final Point a = new Point(10, 20);

    private static void at(Point point, double x, double y) {
        assertThat(point.x()).isCloseTo(x, within(HAIR));
        assertThat(point.y()).isCloseTo(y, within(HAIR));
    }

    @Test
    void squaredGoesTheFourWays() {
        at(Bench.point(new PointConstruction.Squared(Heading.Compass.RIGHT), a, 3.0), 13, 20);
        at(Bench.point(new PointConstruction.Squared(Heading.Compass.LEFT), a, 3.0), 7, 20);
        at(Bench.point(new PointConstruction.Squared(Heading.Compass.UP), a, 3.0), 10, 17);
        at(Bench.point(new PointConstruction.Squared(Heading.Compass.DOWN), a, 3.0), 10, 23);
    }

    @Test
    void levelPointsAreLevelToTheLastBit() {
        Point level = new Point(0.1 + 0.2, 1e6 / 3);
        assertThat(Bench.point(new PointConstruction.SquaredToPoint(Heading.Compass.DOWN, "b"), a, level)
                        .y())
                .isEqualTo(level.y());
    }

    @Test
    void squaringTheWrongWayIsToldWithTheAmount() {
        assertThat(Bench.fault(new PointConstruction.SquaredToPoint(Heading.Compass.UP, "hem"), a, new Point(0, 500)))
                .isEqualTo(ConstructCode.WRONG_WAY);
        assertThat(Bench.fault(
                        new PointConstruction.SquaredToPath(Heading.Compass.UP, "hem"),
                        a,
                        Path.line(new Point(0, 500), new Point(100, 500))))
                .isEqualTo(ConstructCode.WRONG_WAY);
        assertThat(Bench.fault(
                        new PointConstruction.SquaredToPath(Heading.Compass.UP, "side"),
                        a,
                        Path.line(new Point(50, 0), new Point(50, 500))))
                .isEqualTo(ConstructCode.NOT_MET);
    }

    @Test
    void towardPastAndAngledFollowTheThreeFourFiveTriangle() {
        Point b = new Point(40, 60);
        at(Bench.point(new PointConstruction.Toward(), a, b, 5.0), 13, 24);
        at(Bench.point(new PointConstruction.Past(), a, b, 5.0), 43, 64);
        at(Bench.point(new PointConstruction.Angled(), a, 90.0, 5.0), 10, 15);
        at(Bench.point(new PointConstruction.Angled(), a, -90.0, 5.0), 10, 25);
        assertThat(Bench.fault(new PointConstruction.Toward(), a, a, 5.0)).isEqualTo(ConstructCode.SAME_POINT);
    }

    @Test
    void aSweepMeetsAPathAtItsRadius() {
        Path level = Path.line(new Point(0, 50), new Point(200, 50));
        Point from = new Point(100, 20);
        at(Bench.point(new PointConstruction.Swept("level", true), from, 50.0, level, new Point(200, 50)), 140, 50);
        at(Bench.point(new PointConstruction.Swept("level", true), from, 50.0, level, new Point(0, 50)), 60, 50);
        assertThat(Bench.fault(new PointConstruction.Swept("level", false), from, 50.0, level))
                .isEqualTo(ConstructCode.MANY_MEETINGS);
        assertThat(Bench.fault(new PointConstruction.Swept("level", false), from, 29.0, level))
                .isEqualTo(ConstructCode.OUT_OF_REACH);
        assertThat(Bench.fault(new PointConstruction.Swept("level", false), from, 500.0, level))
                .isEqualTo(ConstructCode.TOO_FAR_INSIDE);
    }

    @Test
    void twoSweepsMeetWhereTheTriangleCloses() {
        Point p = Bench.point(
                new PointConstruction.TwoSweeps(), 30.0, new Point(0, 0), 40.0, new Point(50, 0), new Point(20, 100));
        at(p, 18, 24);
        assertThat(Bench.fault(new PointConstruction.TwoSweeps(), 10.0, new Point(0, 0), 20.0, new Point(50, 0), a))
                .isEqualTo(ConstructCode.SWEEPS_SHORT);
        assertThat(Bench.fault(new PointConstruction.TwoSweeps(), 10.0, new Point(0, 0), 90.0, new Point(50, 0), a))
                .isEqualTo(ConstructCode.SWEEPS_INSIDE);
    }

    @Test
    void squareToALineTakesTheSideThatIsAskedFor() {
        Path slope = Path.line(new Point(0, 0), new Point(40, 30));
        Point on = new Point(20, 15);
        at(Bench.point(new PointConstruction.SquareTo(new Side.Page(Heading.Compass.UP)), on, slope, 5.0), 23, 11);
        at(Bench.point(new PointConstruction.SquareTo(new Side.Page(Heading.Compass.LEFT)), on, slope, 5.0), 17, 19);
        Path level = Path.line(new Point(0, 0), new Point(40, 0));
        assertThat(Bench.fault(
                        new PointConstruction.SquareTo(new Side.Page(Heading.Compass.LEFT)),
                        new Point(5, 0),
                        level,
                        5.0))
                .isEqualTo(ConstructCode.SIDE_UNKNOWN);
    }

    @Test
    void mirrorsAndTurns() {
        Path upright = Path.guide(new Point(100, 0), new Point(100, 1));
        at(Bench.point(new PointConstruction.Mirrored("axis"), a, upright), 190, 20);
        at(Bench.point(new PointConstruction.Turned(), new Point(10, 0), 90.0, new Point(0, 0)), 0, -10);
        Path bent = Path.line(new Point(0, 0), new Point(10, 0), new Point(10, 10));
        assertThat(Bench.fault(new PointConstruction.Mirrored("bent"), a, bent)).isEqualTo(ConstructCode.BENT_MIRROR);
    }

    @Test
    void meetingsAreOneOrPickedOrListed() {
        Path level = Path.line(new Point(-50, 0), new Point(50, 0));
        Path circle = Path.arc(new Point(0, 0), 30, 10, 355);
        at(Bench.point(new PointConstruction.Meets("level", "circle", true), level, circle, new Point(-90, 0)), -30, 0);
        assertThat(Bench.fault(
                        new PointConstruction.Meets("level", "far", false),
                        level,
                        Path.line(new Point(0, 10), new Point(50, 10))))
                .isEqualTo(ConstructCode.NO_MEETING);
    }

    @Test
    void placesOnAPathCountFromWhereTheySay() {
        Path path = Path.line(new Point(0, 0), new Point(30, 0), new Point(30, 70));
        Formula three = new Formula.Input(1, "", org.gusset.core.measure.Dimension.LENGTH);
        at(Bench.point(new PointConstruction.On(new PlaceOnPath.Share(three)), path, 0.5), 30, 20);
        at(Bench.point(new PointConstruction.On(new PlaceOnPath.FromEnd(three, true, "p")), path, 40.0), 30, 10);
        at(Bench.point(new PointConstruction.On(new PlaceOnPath.FromEnd(three, false, "p")), path, 80.0), 20, 0);
        PlaceOnPath fromEnd = new PlaceOnPath.FromPoint(three, 2, "b", "p");
        at(Bench.point(new PointConstruction.On(fromEnd), path, 10.0, new Point(30, 70)), 30, 60);
        at(Bench.point(new PointConstruction.On(fromEnd), path, 10.0, new Point(30, 10)), 30, 20);
        assertThat(Bench.fault(new PointConstruction.On(fromEnd), path, 10.0, new Point(31, 10)))
                .isEqualTo(ConstructCode.OFF_PATH);
        assertThat(Bench.fault(new PointConstruction.On(new PlaceOnPath.FromEnd(three, true, "p")), path, 101.0))
                .isEqualTo(ConstructCode.BEYOND_PATH);
    }
}
