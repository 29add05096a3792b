package org.gusset.core.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.gusset.core.geometry.ArcSegment;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.LineSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.jts.JtsForms;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Corners that stand for curves hold all of the curve, and lie beyond it by the tolerance at most; JTS measures both. */
class SafeRingTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private static void holds(Path closed, double tolerance) {
        Polygon ring = SafeRing.polygon(SafeRing.of(closed, tolerance));
        assertThat(ring.isValid()).isTrue();
        Geometry inside = ring.buffer(1e-6);
        for (Point p : closed.flatten(0.001)) {
            assertThat(inside.covers(FACTORY.createPoint(new Coordinate(p.x(), p.y()))))
                    .as("%s", p)
                    .isTrue();
        }
        Polygon fine = JtsForms.polygon(closed, 0.001, FACTORY);
        for (Coordinate corner : ring.getCoordinates()) {
            assertThat(fine.distance(FACTORY.createPoint(corner))).isLessThanOrEqualTo(tolerance + 0.002);
        }
        assertThat(ring.getArea()).isGreaterThanOrEqualTo(fine.getArea() - 0.01 * closed.length());
    }

    @Test
    void aCircleIsHeldByItsTangents() {
        Path circle = Path.arc(new Point(0, 0), 100, 0, 360);
        holds(circle, 0.5);
        List<Point> corners = SafeRing.of(circle, 0.5);
        assertThat(corners.size()).isLessThan(70);
        assertThat(corners)
                .allSatisfy(p -> assertThat(p.distance(new Point(0, 0))).isGreaterThanOrEqualTo(100 - 1e-6));
        holds(circle.reversed(), 0.5);
    }

    /** A hollow is cut off by its chord, whichever way the line runs. */
    @Test
    void aHollowIsHeldByItsChords() {
        Path hollow = Path.of(List.<Segment>of(
                new LineSegment(new Point(-100, 0), new Point(-50, 0)),
                new ArcSegment(new Point(0, 0), 50, 180, 180),
                new LineSegment(new Point(50, 0), new Point(100, 0)),
                new LineSegment(new Point(100, 0), new Point(100, -100)),
                new LineSegment(new Point(100, -100), new Point(-100, -100)),
                new LineSegment(new Point(-100, -100), new Point(-100, 0))));
        holds(hollow, 0.5);
        holds(hollow.reversed(), 0.5);
    }

    @Test
    void straightLinesStayAsTheyAre() {
        Path oblong = Path.line(
                new Point(0, 0),
                new Point(300, 0),
                new Point(600, 0),
                new Point(600, 400),
                new Point(0, 400),
                new Point(0, 0));
        assertThat(SafeRing.of(oblong, 0.5)).hasSize(4);
        assertThat(SafeRing.polygon(SafeRing.of(oblong, 0.5)).getArea()).isCloseTo(240_000, within(1e-9));
    }

    @Test
    void curvesOfEveryKindAreHeld() {
        Random random = new Random(20260801);
        int tried = 0;
        while (tried < 300) {
            Point a = new Point(0, 0);
            Point b = new Point(200 + 200 * random.nextDouble(), 0);
            CubicSegment curve = new CubicSegment(
                    a,
                    new Point(300 * random.nextDouble() - 50, 300 * random.nextDouble() - 150),
                    new Point(300 * random.nextDouble() + 50, 300 * random.nextDouble() - 150),
                    b);
            Path closed = Path.of(List.<Segment>of(
                    curve,
                    new LineSegment(b, new Point(b.x(), 400)),
                    new LineSegment(new Point(b.x(), 400), new Point(0, 400)),
                    new LineSegment(new Point(0, 400), a)));
            if (closed.selfMeetings().isEmpty()) {
                holds(closed, 0.1 + random.nextDouble());
                tried++;
            }
        }
    }

    /** Common practice, no source: by 10 cm, or by the eighth of a yard (4 1/2 in). */
    @Test
    void clothIsSoldInSteps() {
        assertThat(Sale.METRIC.roundedUp(1437)).isCloseTo(1500, within(1e-9));
        assertThat(Sale.METRIC.roundedUp(1500)).isCloseTo(1500, within(1e-9));
        assertThat(Sale.METRIC.roundedUp(1500.3)).isCloseTo(1500, within(1e-9));
        assertThat(Sale.METRIC.roundedUp(1500.6)).isCloseTo(1600, within(1e-9));
        assertThat(Sale.YARDS.roundedUp(914.4)).isCloseTo(914.4, within(1e-9));
        assertThat(Sale.YARDS.roundedUp(920) / 25.4).isCloseTo(40.5, within(1e-9));
        assertThatThrownBy(() -> new Sale(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LayCloth.of("shell", 1400).withSelvage(700))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
