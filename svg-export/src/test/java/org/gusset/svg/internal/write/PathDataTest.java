package org.gusset.svg.internal.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.gusset.core.geometry.ArcSegment;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.LineSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PathDataTest {
    /** The largest error that a reader of the file may see, in mm. */
    private static final double TRUE_WITHIN = 0.001;

    @Test
    void aLineIsWrittenWithItsEnds() {
        Path line = Path.of(new LineSegment(new Point(1, 2), new Point(30.5, -4.25)));
        assertThat(PathData.of(line)).isEqualTo("M1 2 L30.5 -4.25");
    }

    @Test
    void aCubicIsWrittenWithItsControlPoints() {
        Path curve =
                Path.of(new CubicSegment(new Point(0, 0), new Point(10, 0), new Point(20, 5), new Point(20, 1.0 / 3)));
        assertThat(PathData.of(curve)).isEqualTo("M0 0 C10 0 20 5 20 0.3333");
    }

    @Test
    void aClosedPathEndsWhereItBegan() {
        Point a = new Point(0, 0);
        Point b = new Point(10, 0);
        Point c = new Point(0, 10);
        Path triangle = Path.of(new LineSegment(a, b), new LineSegment(b, c), new LineSegment(c, a));
        assertThat(PathData.of(triangle)).isEqualTo("M0 0 L10 0 L0 10 L0 0 Z");
    }

    @Test
    void aQuarterArcGoesTheWayItIsSwept() {
        // Anticlockwise as seen from right (10, 0) to up (0, -10): sweep flag 0, since y counts down.
        assertThat(PathData.of(Path.of(new ArcSegment(new Point(0, 0), 10, 0, 90))))
                .isEqualTo("M10 0 A10 10 0 0 0 7.0711 -7.0711 A10 10 0 0 0 0 -10");
        assertThat(PathData.of(Path.of(new ArcSegment(new Point(0, 0), 10, 0, -90))))
                .isEqualTo("M10 0 A10 10 0 0 1 7.0711 7.0711 A10 10 0 0 1 0 10");
    }

    /**
     * A viewer may draw each command as the cubic whose ends and tangents are the arc's and whose middle lies on it, with handles of
     * 4/3 tan(sweep/4) of the radius (school geometry).
     */
    @Test
    void aCommandDrawnAsOneCubicStaysOnTheCircle() {
        double radius = 1200;
        double sweep = 180;
        String data = PathData.of(Path.of(new ArcSegment(new Point(0, 0), radius, 0, sweep)));
        double one = Math.toRadians(sweep / data.chars().filter(c -> c == 'A').count());
        double handle = 4.0 / 3 * Math.tan(one / 4) * radius;
        Point end = new Point(radius * Math.cos(one), radius * Math.sin(one));
        CubicSegment cubic = new CubicSegment(
                new Point(radius, 0),
                new Point(radius, handle),
                new Point(end.x() + handle * Math.sin(one), end.y() - handle * Math.cos(one)),
                end);
        for (int i = 0; i <= 100; i++) {
            assertThat(cubic.at(i / 100.0).distance(new Point(0, 0))).isCloseTo(radius, within(0.01));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "222.8169203, 0, 90",
        "222.8169203, 180, 180",
        "222.8169203, 13, -180",
        "111.4084602, 0, 360",
        "850.123456, 30, -360",
        "50, 10, 270.5",
        "50, 10, -301.25",
        "1200.3, 85, 3.75",
        "0.8, 200, 179.99",
        "40000, 89.9, 0.2"
    })
    void arcsReadBackLieOnTheTrueCircle(double radius, double from, double sweep) {
        Point centre = new Point(31.4159, -27.1828);
        ArcSegment arc = new ArcSegment(centre, radius, from, sweep);
        List<Point> read = PathReader.points(PathData.of(Path.of(arc)));
        assertThat(read)
                .allSatisfy(p -> assertThat(Math.abs(p.distance(centre) - radius))
                        .as("off the circle at %s", p)
                        .isLessThan(TRUE_WITHIN));
        assertThat(read.get(0).distance(arc.start())).isLessThan(TRUE_WITHIN);
        double length = 0;
        for (int i = 1; i < read.size(); i++) {
            length += read.get(i).distance(read.get(i - 1));
        }
        // A chord of 45/64 degrees is shorter than its arc by less than 3e-5 of it.
        assertThat(length).isBetween(arc.length() * (1 - 3e-5) - 0.001, arc.length() + 0.001);
        int middle = (read.size() - 1) / 2;
        if (Math.abs(sweep) <= 90) {
            assertThat(read.get(middle).distance(arc.at(0.5))).isLessThan(TRUE_WITHIN);
        }
    }

    @Test
    void randomCubicsReadBackTrue() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            CubicSegment curve = new CubicSegment(point(random), point(random), point(random), point(random));
            List<Point> read = PathReader.points(PathData.of(Path.of(curve)));
            for (int k = 0; k < read.size(); k++) {
                Segment segment = curve;
                assertThat(read.get(k).distance(segment.at((double) k / (read.size() - 1))))
                        .isLessThan(TRUE_WITHIN);
            }
        }
    }

    private static Point point(Random random) {
        return new Point(random.nextDouble() * 1500 - 200, random.nextDouble() * 1500 - 200);
    }
}
