package org.gusset.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

class MeetingsTest {
    private static final Offset<Double> MM = within(1e-9);

    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    private static void onBoth(Path a, Path b, Meeting m) {
        assertThat(a.at(m.s()).distance(m.point())).isCloseTo(0, MM);
        assertThat(b.at(m.otherS()).distance(m.point())).as("%s %s %s", a, b, m).isLessThanOrEqualTo(1.5e-6);
    }

    @Test
    void twoLinesCrossOnceWithTheirArcLengths() {
        Path a = Path.line(p(0, 0), p(100, 0));
        Path b = Path.line(p(30, -40), p(30, 10));
        List<Meeting> found = a.meetings(b);
        assertThat(found).hasSize(1);
        assertThat(found.get(0).s()).isCloseTo(30, MM);
        assertThat(found.get(0).otherS()).isCloseTo(40, MM);
        assertThat(found.get(0).point()).isEqualTo(p(30, 0));
    }

    @Test
    void linesThatStopShortDoNotMeetButGuidesDo() {
        Path line = Path.line(p(0, 0), p(10, 0));
        assertThat(line.meetings(Path.line(p(30, -5), p(30, 5)))).isEmpty();
        Path guide = Path.guide(p(0, 0), p(10, 0));
        List<Meeting> ahead = guide.meetings(Path.line(p(30, -5), p(30, 5)));
        assertThat(ahead).hasSize(1);
        assertThat(ahead.get(0).s()).isCloseTo(30, MM);
        List<Meeting> behind = guide.meetings(Path.guide(p(-20, 5), p(-20, 6)));
        assertThat(behind).hasSize(1);
        assertThat(behind.get(0).s()).isCloseTo(-20, MM);
        assertThat(behind.get(0).otherS()).isCloseTo(-5, MM);
        assertThat(guide.meetings(Path.guide(p(3, 0), p(4, 0)))).isEmpty();
    }

    @Test
    void aLineCutsACircleAtTheClosedForm() {
        // Circle of radius 5 about the origin, line y = 3: x = -4 and 4 (3-4-5 triangle).
        Path circle = Path.arc(Point.ORIGIN, 5, 0, 360);
        List<Meeting> found = Path.line(p(-10, -3), p(10, -3)).meetings(circle);
        assertThat(found).hasSize(2);
        assertThat(found.get(0).s()).isCloseTo(6, MM);
        assertThat(found.get(1).s()).isCloseTo(14, MM);
        assertThat(found.get(1).otherS()).isCloseTo(5 * StrictMath.atan2(3, 4), MM);
    }

    @Test
    void aTouchCountsOnce() {
        Path circle = Path.arc(Point.ORIGIN, 5, 0, 360);
        List<Meeting> line = Path.line(p(-10, -5), p(10, -5)).meetings(circle);
        assertThat(line).hasSize(1);
        assertThat(line.get(0).s()).isCloseTo(10, MM);
        List<Meeting> outside = circle.meetings(Path.arc(p(12, 0), 7, 190, 340));
        assertThat(outside).isEmpty();
        outside = circle.meetings(Path.arc(p(12, 0), 7, 90, 180));
        assertThat(outside).hasSize(1);
        assertThat(outside.get(0).s()).isCloseTo(0, MM);
        List<Meeting> inside = circle.meetings(Path.arc(p(0, 2), 3, 0, 360));
        assertThat(inside).hasSize(1);
        assertThat(inside.get(0).point().distance(p(0, 5))).isCloseTo(0, MM);
    }

    @Test
    void aTouchOfCurvesCountsOnce() {
        Path arch = Path.of(RandomPaths.cubic(0, 0, 0, -40, 100, -40, 100, 0));
        List<Meeting> line = arch.meetings(Path.line(p(-10, -30), p(110, -30)));
        assertThat(line).hasSize(1);
        assertThat(line.get(0).s()).isCloseTo(arch.length() / 2, within(1e-6));
        Path bowl = Path.of(RandomPaths.cubic(0, -60, 0, -20, 100, -20, 100, -60));
        List<Meeting> curve = arch.meetings(bowl);
        assertThat(curve).hasSize(1);
        assertThat(curve.get(0).point().distance(p(50, -30))).isCloseTo(0, within(1e-6));
        List<Meeting> arc = arch.meetings(Path.arc(p(50, -50), 20, 180, 180));
        assertThat(arc).hasSize(1);
        assertThat(arc.get(0).point().distance(p(50, -30))).isCloseTo(0, within(1e-6));
    }

    @Test
    void aLineThroughACubicFindsAllThreeRoots() {
        // y(t) of the controls 0, 3c, -3c, 0 vanishes at 0, 1/2 and 1.
        Path wave = Path.of(RandomPaths.cubic(0, 0, 30, -60, 60, 60, 90, 0));
        List<Meeting> found = wave.meetings(Path.guide(p(0, 0), p(1, 0)));
        assertThat(found).extracting(Meeting::otherS).hasSize(3);
        assertThat(found.get(0).otherS()).isCloseTo(0, MM);
        assertThat(found.get(1).otherS()).isCloseTo(45, MM);
        assertThat(found.get(2).otherS()).isCloseTo(90, MM);
        assertThat(found.get(2).s()).isCloseTo(wave.length(), MM);
    }

    @Test
    void twoCubicsCanMeetNineTimes() {
        // y = T3(x) and x = T3(y), T3 being Chebyshev's 4 x^3 - 3 x, meet where T9(x) = x, that is at the cosines of
        // multiples of a quarter and of a fifth of a half turn (closed form); here 100 times as large.
        double third = 100.0 / 3;
        Path a = Path.of(RandomPaths.cubic(-100, -100, -third, 500, third, -500, 100, 100));
        Path b = Path.of(RandomPaths.cubic(-100, -100, 500, -third, -500, third, 100, 100));
        List<Meeting> found = a.meetings(b);
        assertThat(found).hasSize(9);
        List<Double> expected = new ArrayList<>();
        for (int k = 0; k <= 4; k++) {
            expected.add(100 * StrictMath.cos(k * StrictMath.PI / 4));
        }
        for (int k = 1; k <= 4; k++) {
            expected.add(100 * StrictMath.cos(k * StrictMath.PI / 5));
        }
        expected.sort(null);
        List<Double> xs = found.stream().map(m -> m.point().x()).sorted().toList();
        for (int k = 0; k < 9; k++) {
            assertThat(xs.get(k)).isCloseTo(expected.get(k), MM);
        }
        found.forEach(m -> assertThat(b.at(m.otherS()).distance(m.point())).isCloseTo(0, MM));
    }

    /** Second opinion: proper crossings of the flattened paths by JTS. */
    private static int counted(Path a, Path b) {
        Geometry common = jts(a).intersection(jts(b));
        return common.isEmpty() ? 0 : common.getNumGeometries();
    }

    private static LineString jts(Path path) {
        Coordinate[] coordinates = path.flatten(1e-4).stream()
                .map(q -> new Coordinate(q.x(), q.y()))
                .toArray(Coordinate[]::new);
        return new GeometryFactory().createLineString(coordinates);
    }

    @Test
    void meetingAtAJointOfBothCountsOnce() {
        Path a = Path.line(p(0, 0), p(10, 0), p(20, 5));
        Path b = Path.line(p(10, -10), p(10, 0), p(5, 8));
        List<Meeting> found = a.meetings(b);
        assertThat(found).hasSize(1);
        assertThat(found.get(0).s()).isEqualTo(10.0);
        assertThat(found.get(0).otherS()).isEqualTo(10.0);
    }

    @Test
    void theStartOfAClosedPathIsMetOnce() {
        Path square = Path.line(p(0, 0), p(10, 0), p(10, 10), p(0, 10), p(0, 0));
        List<Meeting> found = square.meetings(Path.line(p(-5, -5), p(5, 5)));
        assertThat(found).hasSize(1);
        assertThat(found.get(0).s()).isEqualTo(0.0);
        assertThat(found.get(0).otherS()).isCloseTo(Math.sqrt(50), MM);
        assertThat(Path.line(p(-5, -5), p(5, 5)).meetings(square)).hasSize(1);
    }

    @Test
    void stretchesInCommonGiveTheirTwoEnds() {
        Path a = Path.line(p(0, 0), p(50, 0), p(100, 0));
        List<Meeting> lines = a.meetings(Path.line(p(130, 0), p(70, 0), p(20, 0)));
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0).s()).isCloseTo(20, MM);
        assertThat(lines.get(0).otherS()).isCloseTo(110, MM);
        assertThat(lines.get(1).s()).isCloseTo(100, MM);

        Path arc = Path.arc(Point.ORIGIN, 100, 0, 120);
        List<Meeting> arcs = arc.meetings(Path.arc(Point.ORIGIN, 100, 90, 120));
        assertThat(arcs).hasSize(2);
        assertThat(arcs.get(0).s()).isCloseTo(100 * StrictMath.PI / 2, MM);
        assertThat(arcs.get(1).s()).isCloseTo(arc.length(), MM);

        Path curve = Path.of(RandomPaths.cubic(0, 0, 40, -90, 160, -60, 200, 30));
        List<Meeting> curves = curve.part(20, 120).meetings(curve.part(70, 200).reversed());
        assertThat(curves).hasSize(2);
        assertThat(curves.get(0).s()).isCloseTo(50, within(1e-6));
        assertThat(curves.get(1).s()).isCloseTo(100, within(1e-6));
    }

    @Test
    void aLineThatEndsOnACurveMeetsItThere() {
        RandomPaths random = new RandomPaths(11);
        for (int i = 0; i < 300; i++) {
            Path curve = Path.of(random.segment(100));
            double s = random.between(0, curve.length());
            Point end = curve.at(s);
            Path line = Path.line(random.point(150), end);
            List<Meeting> found = line.meetings(curve);
            assertThat(found).as("seed 11, round %d", i).isNotEmpty();
            Meeting last = found.get(found.size() - 1);
            assertThat(last.point().distance(end)).as("seed 11, round %d", i).isLessThan(2e-6);
        }
    }

    @Test
    void randomPathsMeetWhereJtsSaysTheirFlattenedFormsCross() {
        int rounds = 400;
        int equal = 0;
        for (int i = 0; i < rounds; i++) {
            RandomPaths random = new RandomPaths(4000 + i);
            Path a = random.path(1 + random.count(4), 100);
            Path b = random.path(1 + random.count(4), 100);
            List<Meeting> found = a.meetings(b);
            for (Meeting m : found) {
                onBoth(a, b, m);
            }
            assertThat(found).isSortedAccordingTo((m, n) -> Double.compare(m.s(), n.s()));
            assertThat(b.meetings(a)).as("seed %d", 4000 + i).hasSameSizeAs(found);
            equal += found.size() == counted(a, b) ? 1 : 0;
            for (Coordinate c : jts(a).intersection(jts(b)).getCoordinates()) {
                Point q = p(c.x, c.y);
                assertThat(found)
                        .as("seed %d at %s", 4000 + i, q)
                        .anyMatch(m -> m.point().distance(q) < 0.2);
            }
        }
        // Flattening makes or loses a crossing only where paths all but touch.
        assertThat(equal).isGreaterThan(rounds - 5);
    }

    @Test
    void rigidMotionLeavesMeetingsAsTheyAre() {
        for (int i = 0; i < 100; i++) {
            RandomPaths random = new RandomPaths(77 + i);
            Path a = random.path(3, 100);
            Path b = random.path(3, 100);
            Transform motion = random.motion();
            List<Meeting> before = a.meetings(b);
            List<Meeting> after = a.transformed(motion).meetings(b.transformed(motion));
            assertThat(after).as("seed %d", 77 + i).hasSameSizeAs(before);
            for (int k = 0; k < before.size(); k++) {
                assertThat(after.get(k).s())
                        .as("seed %d", 77 + i)
                        .isCloseTo(before.get(k).s(), within(1e-6));
            }
        }
    }

    @Test
    void aLoopInOneCubicIsFound() {
        Path loop = Path.of(RandomPaths.cubic(0, 0, 150, -100, -50, -100, 100, 0));
        List<Meeting> found = loop.selfMeetings();
        assertThat(found).hasSize(1);
        assertThat(found.get(0).point().x()).isCloseTo(50, MM);
        assertThat(found.get(0).s() + found.get(0).otherS()).isCloseTo(loop.length(), MM);
        assertThat(loop.at(found.get(0).otherS()).distance(found.get(0).point()))
                .isCloseTo(0, MM);
    }

    @Test
    void soundOutlinesDoNotMeetThemselves() {
        assertThat(Path.line(p(0, 0), p(10, 0), p(10, 10), p(0, 10), p(0, 0)).selfMeetings())
                .isEmpty();
        assertThat(Path.arc(p(3, 3), 10, 0, 360).selfMeetings()).isEmpty();
        // A line that runs smoothly into an arc and on into a line.
        Path rounded = Path.of(
                new LineSegment(p(0, 0), p(50, 0)),
                new ArcSegment(p(50, 10), 10, 90, -90),
                new LineSegment(p(60, 10), p(60, 50)));
        assertThat(rounded.selfMeetings()).isEmpty();
        Path smooth = SmoothCurve.through(
                List.of(Knot.at(p(0, 0)), Knot.at(p(60, -40)), Knot.at(p(40, -90)), Knot.at(p(10, -70))), 1);
        assertThat(smooth.selfMeetings()).isEmpty();
        Path egg = SmoothCurve.closedThrough(
                List.of(Knot.at(p(50, 0)), Knot.at(p(0, -50)), Knot.at(p(-50, 0)), Knot.at(p(0, 50))), 1);
        assertThat(egg.selfMeetings()).isEmpty();
    }

    @Test
    void crossingOfNeighboursAndOthersIsFound() {
        Path eight = Path.line(p(0, 0), p(10, 10), p(10, 0), p(0, 10), p(0, 0));
        List<Meeting> found = eight.selfMeetings();
        assertThat(found).hasSize(1);
        assertThat(found.get(0).point().distance(p(5, 5))).isCloseTo(0, MM);
        Path hooked = Path.of(new LineSegment(p(0, 0), p(100, 0)), RandomPaths.cubic(100, 0, 140, 60, 60, 60, 60, -60));
        List<Meeting> neighbours = hooked.selfMeetings();
        assertThat(neighbours).hasSize(1);
        assertThat(neighbours.get(0).point().y()).isCloseTo(0, MM);
        assertThat(neighbours.get(0).s()).isBetween(50.0, 99.0);
    }

    @Test
    void aPathThatDoublesBackMeetsItself() {
        List<Meeting> spike = Path.line(p(0, 0), p(100, 0), p(40, 0)).selfMeetings();
        assertThat(spike).hasSize(1);
        assertThat(spike.get(0).s()).isCloseTo(40, MM);
        assertThat(spike.get(0).otherS()).isCloseTo(160, MM);
        List<Meeting> folded =
                Path.of(RandomPaths.cubic(0, 0, -400, 0, 500, 0, 100, 0)).selfMeetings();
        assertThat(folded).isNotEmpty();
    }

    @Test
    void randomPathsMeetThemselvesWhereJtsSaysSo() {
        for (int i = 0; i < 200; i++) {
            RandomPaths random = new RandomPaths(900 + i);
            Path path = random.path(1 + random.count(5), 100);
            boolean simple = jts(path).isSimple();
            assertThat(path.selfMeetings().isEmpty())
                    .as("seed %d %s", 900 + i, path)
                    .isEqualTo(simple);
        }
    }

    @Test
    void aLongOutlineIsCheckedSegmentBySegment() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= 400; i++) {
            points.add(Point.ORIGIN.plus(Vector.atAngle(i % 400 * 0.9).times(i % 2 == 0 ? 300 : 320)));
        }
        Path star = Path.line(points.toArray(new Point[0]));
        assertThat(star.closed()).isTrue();
        assertThat(star.selfMeetings()).isEmpty();
    }
}
