package org.gusset.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.gusset.core.diagnostic.Fault;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

class ParallelTest {
    private static final Offset<Double> MM = within(1e-9);

    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    private static Path rectangle() {
        return Path.line(p(0, 0), p(100, 0), p(100, 60), p(0, 60), p(0, 0));
    }

    /** Every place of the copy is at the distance from the original, or further where corners are prolonged. */
    private static void keepsAway(Path original, Path copy, double distance, String note) {
        double step = copy.length() / 400;
        for (int i = 0; i <= 400; i++) {
            double off = original.nearest(copy.at(i * step)).distance();
            assertThat(off).as("%s at %s", note, i * step).isGreaterThan(Math.abs(distance) - 0.001);
        }
    }

    @Test
    void aQuarterCircleGivesTheSchoolFigures() {
        // Closed form: radius 10 cm, allowance 1 cm: pi/2 times 10, 11 and 9 cm.
        Path stitch = Path.arc(Point.ORIGIN, 100, 0, 90);
        assertThat(stitch.length() / 10).isCloseTo(15.708, within(0.0005));
        assertThat(stitch.parallel(-10).length() / 10).isCloseTo(17.279, within(0.0005));
        assertThat(stitch.parallel(10).length() / 10).isCloseTo(14.137, within(0.0005));
        assertThat(stitch.parallel(10)).isEqualTo(Path.arc(Point.ORIGIN, 90, 0, 90));
        assertThat(stitch.reversed().parallel(10)).isEqualTo(Path.arc(Point.ORIGIN, 110, 90, -90));
    }

    @Test
    void leftIsLeftAsSeen() {
        Path right = Path.line(p(0, 0), p(50, 0));
        assertThat(right.parallel(3)).isEqualTo(Path.line(p(0, -3), p(50, -3)));
        assertThat(right.parallel(-3)).isEqualTo(Path.line(p(0, 3), p(50, 3)));
        assertThat(Path.guide(p(0, 0), p(0, 10)).parallel(2)).isEqualTo(Path.guide(p(2, 0), p(2, 10)));
    }

    @Test
    void distanceZeroGivesThePath() {
        Path path = new RandomPaths(5).path(4, 100);
        assertThat(path.parallel(0)).isEqualTo(path);
    }

    @Test
    void aRectangleGrowsAndShrinksWithSquareCorners() {
        // Runs clockwise as seen, so that left is outside.
        Path out = rectangle().parallel(10);
        assertThat(out.closed()).isTrue();
        assertThat(out.segments()).hasSize(4);
        assertThat(Math.abs(out.signedArea())).isCloseTo(120 * 80, within(1e-6));
        assertThat(out.start().distance(p(-10, -10))).isCloseTo(0, MM);
        Path in = rectangle().parallel(-10);
        assertThat(in.closed()).isTrue();
        assertThat(in.segments()).hasSize(4);
        assertThat(Math.abs(in.signedArea())).isCloseTo(80 * 40, within(1e-6));
        assertThat(in.start().distance(p(10, 10))).isCloseTo(0, within(1e-8));
    }

    @Test
    void aRectangleTooNarrowIsAFault() {
        assertThatThrownBy(() -> rectangle().parallel(-31))
                .isInstanceOfSatisfying(
                        Fault.class, f -> assertThat(f.diagnostic().code()).isEqualTo(GeometryCode.NO_PARALLEL));
    }

    @Test
    void anArcTighterThanTheDistanceIsAFaultThatSaysTheRadius() {
        assertThatThrownBy(() -> Path.arc(Point.ORIGIN, 8, 0, 90).parallel(10))
                .isInstanceOfSatisfying(Fault.class, f -> {
                    assertThat(f.diagnostic().code()).isEqualTo(GeometryCode.TOO_TIGHT);
                    assertThat(f.diagnostic().message()).contains("1 cm").contains("0.8 cm");
                });
        assertThatThrownBy(() -> Path.arc(Point.ORIGIN, 8, 0, 90).parallel(8)).isInstanceOf(Fault.class);
    }

    @Test
    void aCornerIsProlongedOutsideAndCutInside() {
        Path corner = Path.line(p(0, 0), p(100, 0), p(100, 100));
        assertThat(corner.parallel(10)).isEqualTo(Path.line(p(0, -10), p(110, -10), p(110, 100)));
        Path inside = corner.parallel(-10);
        assertThat(inside.segments()).hasSize(2);
        assertThat(inside.segments().get(0).end().distance(p(90, 10))).isCloseTo(0, MM);
    }

    @Test
    void aTinyBendIsCutExactly() {
        for (double bend : new double[] {1e-4, 1e-3, 0.01, 0.1, 1}) {
            Path path = Path.line(
                    p(0, 0), p(100, 0), p(100, 0).plus(Vector.atAngle(-bend).times(100)));
            for (double distance : new double[] {10, -10}) {
                Path copy = path.parallel(distance);
                double half = 10 * StrictMath.tan(StrictMath.toRadians(bend / 2));
                assertThat(copy.length())
                        .as("bend %s distance %s", bend, distance)
                        .isCloseTo(200 + (distance > 0 ? 2 : -2) * half, within(3e-6));
            }
        }
    }

    @Test
    void aVerySharpCornerIsBevelledAtFourDistances() {
        Path spike = Path.line(p(0, 0), p(200, 0), p(0, 5));
        Path copy = spike.parallel(10);
        assertThat(copy.segments()).hasSize(3);
        assertThat(copy.segments().get(0).end().distance(p(240, -10))).isCloseTo(0, MM);
        assertThat(copy.length()).isGreaterThan(480);
        keepsAway(spike, copy, 10, "spike");
    }

    @Test
    void aStepShorterThanTheDistanceIsSwallowed() {
        Path bay = Path.line(p(0, 0), p(100, 0), p(105, 5), p(105, 100));
        Path copy = bay.parallel(-20);
        assertThat(copy.segments()).hasSize(2);
        assertThat(copy.segments().get(0).end().distance(p(85, 20))).isCloseTo(0, MM);
        assertThat(copy.end().distance(p(85, 100))).isCloseTo(0, MM);
    }

    @Test
    void aRoundedCornerTooTightIsCutAtTheLines() {
        Path rounded = Path.of(
                new LineSegment(p(0, 0), p(95, 0)),
                new ArcSegment(p(95, 5), 5, 90, -90),
                new LineSegment(p(100, 5), p(100, 100)));
        Path copy = rounded.parallel(-20);
        assertThat(copy.segments()).hasSize(2);
        assertThat(copy.segments().get(0).end().distance(p(80, 20))).isCloseTo(0, MM);
        Path outside = rounded.parallel(20);
        assertThat(outside.segments()).hasSize(3);
        assertThat(outside.length()).isCloseTo(95 + 95 + 25 * StrictMath.PI / 2, MM);
        Path justGone = rounded.parallel(-5);
        assertThat(justGone.length()).isCloseTo(95 + 95, MM);
    }

    @Test
    void aCubicIsWithinAThousandthOfTheDenseTruth() {
        double worst = 0;
        double worstTruth = 0;
        for (int i = 0; i < 100; i++) {
            RandomPaths random = new RandomPaths(31 + i);
            // A gentle arch: its radius of curvature is larger than the distance.
            CubicSegment cubic = RandomPaths.cubic(
                    0,
                    0,
                    random.between(20, 80),
                    random.between(-120, -40),
                    random.between(160, 220),
                    random.between(-120, -40),
                    240,
                    random.between(-40, 40));
            Path original = Path.of(cubic);
            double distance = random.between(-25, 12);
            Path copy = original.parallel(distance);
            for (int k = 0; k <= 1000; k++) {
                double t = k / 1000.0;
                Point truth = cubic.at(t).plus(cubic.tangent(t).left().times(distance));
                worstTruth = Math.max(worstTruth, copy.nearest(truth).distance());
                Point fitted = copy.at(copy.length() * t);
                if (k > 0 && k < 1000) {
                    double off = original.nearest(fitted).distance();
                    worst = Math.max(worst, Math.abs(off - Math.abs(distance)));
                }
            }
        }
        assertThat(worstTruth).isLessThan(0.001);
        assertThat(worst).isLessThan(0.001);
    }

    @Test
    void aCurveTooTightLosesItsLoop() {
        // A hairpin of about 6 mm radius, copied 15 mm inside.
        Path hairpin =
                Path.of(RandomPaths.cubic(0, 0, 140, -60, -40, -60, 100, 0).part(0, 0.45));
        Path bend = Path.of(RandomPaths.cubic(0, 0, 90, -5, 110, -5, 105, 90));
        Path copy = bend.parallel(-40);
        assertThat(copy.selfMeetings()).isEmpty();
        keepsAway(bend, copy, 40, "bend");
        assertThat(copy.start().distance(bend.start())).isCloseTo(40, within(1e-9));
        assertThat(copy.end().distance(bend.end())).isCloseTo(40, within(1e-9));
        assertThat(hairpin.parallel(-3).selfMeetings()).isEmpty();
    }

    @Test
    void theCopyJustTighterThanTheCurveIsStillOnePath() {
        CubicSegment cubic = RandomPaths.cubic(0, 0, 0, -60, 100, -60, 100, 0);
        double radius = 1 / Math.abs(cubic.curvature(0.5));
        for (double tight : new double[] {0.9, 0.99, 0.999, 1, 1.0001, 1.001, 1.01, 1.1}) {
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i <= 1000; i++) {
                least = Math.min(least, 1 / Math.abs(cubic.curvature(i / 1000.0)));
            }
            Path original = Path.of(cubic);
            Path copy = original.parallel(-least * tight);
            keepsAway(original, copy, least * tight, "tight " + tight);
            assertThat(radius).isGreaterThanOrEqualTo(least - 1e-9);
        }
    }

    @Test
    void theCopyOfACurveWithCornersIsOnePath() {
        Path original = Path.of(
                new LineSegment(p(0, 0), p(80, 0)),
                RandomPaths.cubic(80, 0, 90, 40, 130, 60, 180, 50),
                new ArcSegment(p(180, 80), 30, 90, -120));
        for (double distance : new double[] {-15, -8, -1, 1, 8, 15}) {
            Path copy = original.parallel(distance);
            assertThat(copy.selfMeetings()).isEmpty();
            keepsAway(original, copy, distance, "distance " + distance);
        }
    }

    private static Polygon polygon(Path closed) {
        List<Coordinate> ring = new ArrayList<>();
        closed.flatten(1e-4).forEach(q -> ring.add(new Coordinate(q.x(), q.y())));
        ring.set(ring.size() - 1, ring.get(0));
        return new GeometryFactory().createPolygon(ring.toArray(new Coordinate[0]));
    }

    @Test
    void aSmoothOutlineHasTheAreaOfTheJtsBuffer() {
        BufferParameters round = new BufferParameters(200);
        for (int i = 0; i < 40; i++) {
            RandomPaths random = new RandomPaths(700 + i);
            List<Knot> knots = new ArrayList<>();
            int count = 4 + random.count(4);
            for (int k = 0; k < count; k++) {
                double angle = 360.0 * k / count;
                knots.add(Knot.at(Point.ORIGIN.plus(Vector.atAngle(angle).times(random.between(90, 200)))));
            }
            Path outline = SmoothCurve.closedThrough(knots, 1);
            for (double distance : new double[] {-15, 10}) {
                String seed = "seed " + (700 + i) + " distance " + distance;
                Path copy = outline.parallel(distance);
                // The outline runs anticlockwise, so that left is inside.
                double expected =
                        BufferOp.bufferOp(polygon(outline), -distance, round).getArea();
                assertThat(copy.closed()).as(seed).isTrue();
                assertThat(copy.signedArea()).as(seed).isCloseTo(expected, within(2.0));
                assertThat(copy.selfMeetings()).as(seed).isEmpty();
                keepsAway(outline, copy, distance, seed);
            }
        }
    }

    @Test
    void aPolygonHasTheAreaOfTheJtsMitredBuffer() {
        BufferParameters mitred = new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 4.1);
        int tried = 0;
        for (int i = 0; i < 60; i++) {
            RandomPaths random = new RandomPaths(1500 + i);
            int count = 5 + random.count(6);
            Point[] corners = new Point[count + 1];
            for (int k = 0; k < count; k++) {
                corners[k] = Point.ORIGIN.plus(Vector.atAngle(360.0 * k / count).times(random.between(120, 200)));
            }
            corners[count] = corners[0];
            Path outline = Path.line(corners);
            for (double distance : new double[] {-12, 9}) {
                String seed = "seed " + (1500 + i) + " distance " + distance;
                Path copy = outline.parallel(distance);
                double expected =
                        BufferOp.bufferOp(polygon(outline), -distance, mitred).getArea();
                assertThat(copy.closed()).as(seed).isTrue();
                assertThat(copy.signedArea()).as(seed).isCloseTo(expected, within(1e-3 * expected));
                tried++;
            }
        }
        assertThat(tried).isEqualTo(120);
    }

    @Test
    void partsFarAlongThePathButCloseTogetherAreCutWhereTheyMeet() {
        // A keyhole: the mouth is narrower than twice the distance.
        Path keyhole = Path.of(
                new LineSegment(p(-100, 0), p(-10, 0)),
                new LineSegment(p(-10, 0), p(-10, 40)),
                new LineSegment(p(-10, 40), p(-40, 40)),
                new ArcSegment(p(0, 40), 40, 180, 180),
                new LineSegment(p(40, 40), p(10, 40)),
                new LineSegment(p(10, 40), p(10, 0)),
                new LineSegment(p(10, 0), p(100, 0)));
        Path copy = keyhole.parallel(12);
        assertThat(copy.selfMeetings()).isEmpty();
        keepsAway(keyhole, copy, 12, "keyhole");
        assertThat(copy.start().distance(p(-100, -12))).isCloseTo(0, MM);
        assertThat(copy.end().distance(p(100, -12))).isCloseTo(0, MM);
    }

    @Test
    void aPathEitherHasACopyOrAFaultThatSaysWhyNot() {
        int copies = 0;
        for (int i = 0; i < 300; i++) {
            RandomPaths random = new RandomPaths(90_000 + i);
            Path path = random.path(1 + random.count(6), 200);
            double distance = random.between(-30, 30);
            try {
                Path copy = path.parallel(distance);
                assertThat(copy.length()).as("seed %d", 90_000 + i).isFinite().isPositive();
                copies++;
            } catch (Fault fault) {
                assertThat(fault.diagnostic().code())
                        .as("seed %d", 90_000 + i)
                        .isIn(GeometryCode.TOO_TIGHT, GeometryCode.NO_PARALLEL);
            }
        }
        assertThat(copies).isGreaterThan(200);
    }

    @Test
    void theCopyMovesWithTheOriginal() {
        for (int i = 0; i < 30; i++) {
            RandomPaths random = new RandomPaths(61 + i);
            Path path = Path.of(RandomPaths.cubic(
                    0, 0, random.between(30, 60), -random.between(20, 60), 120, -random.between(20, 60), 160, 10));
            Transform motion = random.motion();
            double distance = random.between(-8, 8);
            Path moved = path.transformed(motion).parallel(motion.mirrors() ? -distance : distance);
            assertThat(moved.length())
                    .as("seed %d", 61 + i)
                    .isCloseTo(path.parallel(distance).length(), within(1e-3));
            assertThat(moved.end().distance(motion.apply(path.parallel(distance).end())))
                    .as("seed %d", 61 + i)
                    .isLessThan(1e-9);
        }
    }

    /** The tightest radius passes through the distance: where it is hardly less, the loop of the copy is slimmer than its fit is true. */
    @Test
    void aCurveHardlyTooTightHasAParallel() {
        for (int i = 0; i <= 2000; i++) {
            double x = 267.6 - 0.4 * i / 2000;
            Path armhole = Path.of(new CubicSegment(
                    p(308.6, 30), p(293.977, 98.5585), p(166.5532 + 1.8795 * (x - 267.4785), 198.9), p(x, 198.9)));
            Path copy = armhole.parallel(15);
            for (int k = 0; k <= 50; k++) {
                assertThat(armhole.nearest(copy.at(copy.length() * k / 50)).distance())
                        .as("at %f", x)
                        .isCloseTo(15, within(0.005));
            }
        }
    }
}
