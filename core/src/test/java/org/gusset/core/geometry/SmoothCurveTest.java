package org.gusset.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Fault;
import org.junit.jupiter.api.Test;

class SmoothCurveTest {
    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    private static void isANumber(Path path) {
        for (Segment segment : path.segments()) {
            CubicSegment cubic = (CubicSegment) segment;
            for (Point q : List.of(cubic.start(), cubic.control1(), cubic.control2(), cubic.end())) {
                assertThat(q.x()).as("%s", path).isFinite();
                assertThat(q.y()).as("%s", path).isFinite();
            }
        }
        assertThat(path.length()).isFinite();
    }

    @Test
    void aQuarterCircleIsAllButRound() {
        // MetaPost 2.02 draws the same quarter within 0.03 percent of a circle.
        Path quarter = SmoothCurve.through(List.of(Knot.at(p(100, 0), 90), Knot.at(p(0, -100), 180)), 1);
        assertThat(quarter.tangent(0)).isEqualTo(Vector.UP);
        for (int i = 0; i <= 100; i++) {
            assertThat(quarter.at(quarter.length() * i / 100).distance(Point.ORIGIN))
                    .isCloseTo(100, within(0.03));
        }
    }

    @Test
    void aTensionBelowThreeQuartersIsRefused() {
        assertThatThrownBy(() -> SmoothCurve.through(List.of(Knot.at(p(0, 0)), Knot.at(p(100, 0))), 0.7))
                .isInstanceOfSatisfying(
                        Fault.class,
                        fault -> assertThat(fault.diagnostic().code().id()).isEqualTo("GEO002"));
    }

    @Test
    void headingsHoldExactlyAndFreeKnotsAreSmooth() {
        List<Knot> knots =
                List.of(Knot.at(p(0, 0), 0), Knot.at(p(40, -60)), Knot.at(p(90, -80)), Knot.at(p(160, -20), 270));
        Path curve = SmoothCurve.through(knots, 1.2);
        assertThat(curve.tangent(0)).isEqualTo(Vector.RIGHT);
        assertThat(curve.tangent(curve.length())).isEqualTo(Vector.DOWN);
        double s = 0;
        for (int i = 0; i + 1 < curve.segments().size(); i++) {
            s += curve.segments().get(i).length();
            assertThat(curve.at(s).distance(knots.get(i + 1).point())).isLessThan(1e-12);
            assertThat(curve.tangent(s).dot(curve.tangentBefore(s))).isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void aClosedCurveIsSmoothAtItsStart() {
        List<Knot> knots = List.of(Knot.at(p(60, 0)), Knot.at(p(0, -40)), Knot.at(p(-50, 10)), Knot.at(p(0, 70)));
        Path curve = SmoothCurve.closedThrough(knots, 1);
        assertThat(curve.closed()).isTrue();
        assertThat(curve.segments()).hasSize(4);
        assertThat(curve.tangent(0).dot(curve.tangent(curve.length()))).isCloseTo(1, within(1e-12));
        List<Knot> headed = List.of(Knot.at(p(60, 0)), Knot.at(p(0, -40), 170), Knot.at(p(-50, 10)), Knot.at(p(0, 70)));
        Path given = SmoothCurve.closedThrough(headed, 1);
        assertThat(given.start()).isEqualTo(p(60, 0));
        assertThat(given.tangent(given.segments().get(0).length()).degrees()).isCloseTo(170, within(1e-9));
        assertThat(given.tangent(0).dot(given.tangent(given.length()))).isCloseTo(1, within(1e-12));
        assertThat(SmoothCurve.closedThrough(knots.subList(0, 2), 1).closed()).isTrue();
    }

    @Test
    void mirroredKnotsGiveTheMirroredCurve() {
        Transform mirror = Transform.mirror(p(20, 5), Vector.atAngle(33));
        List<Knot> knots = List.of(Knot.at(p(0, 0), 80), Knot.at(p(30, -40)), Knot.at(p(70, -35), -20));
        List<Knot> mirrored = new ArrayList<>();
        for (Knot k : knots) {
            Point q = mirror.apply(k.point());
            mirrored.add(
                    k.heading().isPresent()
                            ? Knot.at(
                                    q,
                                    mirror.apply(Vector.atAngle(k.heading().getAsDouble()))
                                            .degrees())
                            : Knot.at(q));
        }
        Path a = SmoothCurve.through(knots, 1).transformed(mirror);
        Path b = SmoothCurve.through(mirrored, 1);
        for (int i = 0; i <= 10; i++) {
            assertThat(a.at(a.length() * i / 10).distance(b.at(b.length() * i / 10)))
                    .isLessThan(1e-9);
        }
    }

    @Test
    void coincidentAndCollinearKnotsGiveNumbers() {
        Path merged = SmoothCurve.through(
                List.of(Knot.at(p(0, 0)), Knot.at(p(50, -20)), Knot.at(p(50, -20), 10), Knot.at(p(90, 0))), 1);
        assertThat(merged)
                .isEqualTo(SmoothCurve.through(
                        List.of(Knot.at(p(0, 0)), Knot.at(p(50, -20), 10), Knot.at(p(90, 0))), 1));
        Path dot = SmoothCurve.through(List.of(Knot.at(p(5, 5), 0), Knot.at(p(5, 5), 90)), 1);
        assertThat(dot.length()).isZero();
        isANumber(dot);
        isANumber(SmoothCurve.closedThrough(List.of(Knot.at(p(5, 5)), Knot.at(p(5, 5)), Knot.at(p(5, 5))), 1));
        isANumber(SmoothCurve.through(
                List.of(Knot.at(p(0, 0)), Knot.at(p(10, 0)), Knot.at(p(5, 0)), Knot.at(p(40, 0))), 1));
        isANumber(SmoothCurve.closedThrough(List.of(Knot.at(p(0, 0)), Knot.at(p(10, 0)), Knot.at(p(40, 0))), 1));
        isANumber(SmoothCurve.closedThrough(List.of(Knot.at(p(0, 0)), Knot.at(p(40, 0))), 1));
        isANumber(SmoothCurve.through(List.of(Knot.at(p(0, 0), 180), Knot.at(p(40, 0), 180)), 0.75));
        Path line = SmoothCurve.through(List.of(Knot.at(p(0, 0)), Knot.at(p(10, 0)), Knot.at(p(90, 0))), 1);
        assertThat(line.straight()).isTrue();
        assertThat(line.length()).isCloseTo(90, within(1e-9));
    }

    @Test
    void randomKnotsGiveNumbers() {
        for (int i = 0; i < 500; i++) {
            RandomPaths random = new RandomPaths(400 + i);
            List<Knot> knots = new ArrayList<>();
            int count = 2 + random.count(6);
            for (int k = 0; k < count; k++) {
                Point q = p(random.count(4) * 10, random.count(4) * 10);
                knots.add(random.count(3) == 0 ? Knot.at(q, 45 * random.count(8)) : Knot.at(q));
            }
            double tension = random.between(0.75, 3);
            isANumber(SmoothCurve.through(knots, tension));
            isANumber(SmoothCurve.closedThrough(knots, tension));
        }
    }

    @Test
    void aTensionTooSmallIsAFault() {
        List<Knot> knots = List.of(Knot.at(p(0, 0)), Knot.at(p(90, 0)));
        assertThatThrownBy(() -> SmoothCurve.through(knots, 0.5))
                .isInstanceOfSatisfying(
                        Fault.class,
                        f -> assertThat(f.diagnostic().message())
                                .isEqualTo("A tension of 0.5 is too small: a smooth curve needs at least 0.75."));
        assertThatThrownBy(() -> SmoothCurve.through(knots.subList(0, 1), 1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
