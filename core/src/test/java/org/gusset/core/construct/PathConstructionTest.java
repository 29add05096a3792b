package org.gusset.core.construct;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.junit.jupiter.api.Test;

class PathConstructionTest {
    /** A quarter of a circle of radius r is pi r / 2 long, whichever way its ends are named. */
    @Test
    void anArcBetweenTwoPointsGoesTheShorterWay() {
        Point o = new Point(0, 0);
        Path arc = Bench.path(new PathConstruction.ArcBetween(), new Point(100, 0), new Point(0, 100), o);
        assertThat(arc.length()).isCloseTo(Math.PI * 50, within(1e-9));
        assertThat(arc.at(arc.length() / 2).x()).isPositive();
        assertThat(Bench.fault(new PathConstruction.ArcBetween(), new Point(100, 0), new Point(0, 101), o))
                .isEqualTo(ConstructCode.ARC_RADII);
        assertThat(Bench.fault(new PathConstruction.ArcBetween(), new Point(100, 0), new Point(-100, 0), o))
                .isEqualTo(ConstructCode.FULL_CIRCLE);
    }

    /** A half-circle skirt for a waist of 70 cm: 70 / pi = 22.2817 cm (closed form), and the edge measures the waist. */
    @Test
    void aHalfCircleSkirtHasItsWaist() {
        double radius = 700 / Math.PI;
        Path quarter = Bench.path(new PathConstruction.ArcSwung(), new Point(0, radius), Point.ORIGIN, 90.0);
        assertThat(radius).isCloseTo(222.817, within(5e-4));
        assertThat(2 * quarter.length()).isCloseTo(700, within(1e-6));
        assertThat(quarter.end().distance(new Point(radius, 0))).isLessThan(1e-9);
    }

    @Test
    void joinsTurnTheirPartsRoundAndTellOfGaps() {
        Path ab = Path.line(new Point(0, 0), new Point(10, 0));
        Path cb = Path.line(new Point(10, 20), new Point(10, 0));
        Path joined = Bench.path(new PathConstruction.Join(List.of("ab", "cb")), ab, cb);
        assertThat(joined.start()).isEqualTo(new Point(0, 0));
        assertThat(joined.end()).isEqualTo(new Point(10, 20));
        Path first = Bench.path(new PathConstruction.Join(List.of("ba", "bc")), ab.reversed(), cb.reversed());
        assertThat(first.length()).isCloseTo(30, within(1e-9));
        assertThat(Bench.fault(
                        new PathConstruction.Join(List.of("ab", "far")),
                        ab,
                        Path.line(new Point(11, 0), new Point(11, 9))))
                .isEqualTo(ConstructCode.JOIN_GAP);
    }

    @Test
    void aCurveHeadsWhereItIsTold() {
        Path shoulder = Path.line(new Point(0, 0), new Point(120, 30));
        Path curve = Bench.path(
                new CurveConstruction.Spline(
                        List.of(
                                Optional.of(new Heading.SquareTo(2)),
                                Optional.of(new Heading.To(Heading.Compass.RIGHT))),
                        Optional.empty()),
                new Point(120, 30),
                new Point(190, 240),
                shoulder);
        Vector start = curve.tangent(0);
        assertThat(start.dot(new Vector(120, 30).unit())).isCloseTo(0, within(1e-9));
        assertThat(start.dy())
                .as("of the two ways square to the shoulder, down turns the curve least")
                .isPositive();
        assertThat(curve.tangent(curve.length()).degrees()).isCloseTo(0, within(1e-6));
    }

    @Test
    void aWayThatIsATieAsksForASide() {
        Path level = Path.line(new Point(0, 0), new Point(100, 0));
        assertThat(Bench.fault(
                        new CurveConstruction.Spline(
                                List.of(Optional.of(new Heading.SquareTo(2)), Optional.empty()), Optional.empty()),
                        new Point(50, 0),
                        new Point(90, 0),
                        level))
                .isEqualTo(ConstructCode.WAY_TIE);
    }

    @Test
    void aHollowedLineIsBentByWhatIsSaid() {
        Path hollow = Bench.path(
                new CurveConstruction.Hollowed(new Side.Page(Heading.Compass.UP)),
                new Point(0, 0),
                new Point(300, 0),
                5.0,
                1 / 3.0);
        assertThat(hollow.nearest(new Point(100, -5)).distance()).isCloseTo(0, within(1e-9));
        assertThat(hollow.bounds().top()).isCloseTo(-5, within(0.02));
    }

    @Test
    void aParallelLiesOnTheSideThatIsAskedFor() {
        Path line = Path.line(new Point(0, 0), new Point(100, 0));
        Path up = Bench.path(new PathConstruction.Parallel(new Side.Page(Heading.Compass.UP)), line, 20.0);
        Path down = Bench.path(new PathConstruction.Parallel(new Side.Toward(2)), line, 20.0, new Point(5, 40));
        assertThat(up.start().y()).isCloseTo(-20, within(1e-9));
        assertThat(down.start().y()).isCloseTo(20, within(1e-9));
    }

    @Test
    void aStretchOfAPathRunsFromTheFirstPointToTheSecond() {
        Path line = Path.line(new Point(0, 0), new Point(100, 0));
        PathConstruction.Part part = new PathConstruction.Part(
                new PlaceOnPath.AtPoint(1, "a", "line"), new PlaceOnPath.AtPoint(2, "b", "line"));
        Path back = Bench.path(part, line, new Point(80, 0), new Point(30, 0));
        assertThat(back.start().x()).isCloseTo(80, within(1e-9));
        assertThat(back.end().x()).isCloseTo(30, within(1e-9));
    }
}
