package org.gusset.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.gusset.core.diagnostic.Fault;
import org.junit.jupiter.api.Test;

class PathTest {
    private static final Offset<Double> MM = within(1e-9);
    private static final int ROUNDS = 200;

    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    private static Path random(long seed) {
        RandomPaths random = new RandomPaths(seed);
        return random.path(1 + random.count(5), 150);
    }

    @Test
    void arcsTurnAnticlockwiseAsSeen() {
        Path quarter = Path.arc(Point.ORIGIN, 10, 0, 90);
        assertThat(quarter.start()).isEqualTo(p(10, 0));
        assertThat(quarter.end()).isEqualTo(p(0, -10));
        assertThat(quarter.tangent(0)).isEqualTo(Vector.UP);
        assertThat(quarter.tangent(quarter.length())).isEqualTo(Vector.LEFT);
        assertThat(quarter.curvature(3)).isCloseTo(0.1, MM);
        assertThat(quarter.reversed().curvature(3)).isCloseTo(-0.1, MM);
        assertThat(quarter.length()).isCloseTo(5 * StrictMath.PI, MM);
    }

    @Test
    void positionsAreArcLengthsAndClamped() {
        Path bent = Path.line(p(0, 0), p(30, 0), p(30, 40));
        assertThat(bent.length()).isEqualTo(70.0);
        assertThat(bent.at(50)).isEqualTo(p(30, 20));
        assertThat(bent.at(-5)).isEqualTo(p(0, 0));
        assertThat(bent.at(1000)).isEqualTo(p(30, 40));
        assertThat(bent.tangent(30)).isEqualTo(Vector.DOWN);
        assertThat(bent.tangentBefore(30)).isEqualTo(Vector.RIGHT);
        assertThat(bent.tangentBefore(0)).isEqualTo(Vector.RIGHT);
        assertThat(bent.tangent(70)).isEqualTo(Vector.DOWN);
    }

    @Test
    void stretchesWithoutLengthDoNotSpoilTangents() {
        Path path = Path.line(p(0, 0), p(0, 0), p(30, 0), p(30, 0), p(30, 40), p(30, 40));
        assertThat(path.tangent(0)).isEqualTo(Vector.RIGHT);
        assertThat(path.tangentBefore(30)).isEqualTo(Vector.RIGHT);
        assertThat(path.tangent(30)).isEqualTo(Vector.DOWN);
        assertThat(path.tangent(70)).isEqualTo(Vector.DOWN);
        assertThat(path.tangentBefore(70)).isEqualTo(Vector.DOWN);
        Path dot = Path.line(p(1, 2), p(1, 2));
        assertThat(dot.length()).isZero();
        assertThat(dot.at(4)).isEqualTo(p(1, 2));
        assertThat(dot.closed()).isFalse();
        assertThat(dot.straight()).isFalse();
    }

    @Test
    void guidesHaveNoEnds() {
        Path guide = Path.guide(p(0, 0), p(10, 0));
        assertThat(guide.at(-25)).isEqualTo(p(-25, 0));
        assertThat(guide.at(25)).isEqualTo(p(25, 0));
        Position foot = guide.nearest(p(-40, 3));
        assertThat(foot.s()).isCloseTo(-40, MM);
        assertThat(foot.distance()).isCloseTo(3, MM);
        assertThat(guide.part(-5, 20)).isEqualTo(Path.line(p(-5, 0), p(20, 0)));
        assertThat(guide.reversed().endless()).isTrue();
        assertThat(guide.transformed(Transform.shift(Vector.DOWN)).endless()).isTrue();
        assertThat(guide).isNotEqualTo(Path.line(p(0, 0), p(10, 0)));
    }

    @Test
    void splittingKeepsTheLength() {
        double worst = 0;
        for (int i = 0; i < ROUNDS; i++) {
            long seed = 5000 + i;
            Path path = random(seed);
            RandomPaths cuts = new RandomPaths(seed);
            double a = cuts.between(0, path.length());
            double b = cuts.between(0, path.length());
            double low = Math.min(a, b);
            double high = Math.max(a, b);
            Path first = path.part(0, low);
            Path middle = path.part(low, high);
            Path last = path.part(high, path.length());
            worst = Math.max(worst, Math.abs(first.length() + middle.length() + last.length() - path.length()));
            assertThat(middle.length()).as("seed %d", seed).isCloseTo(high - low, MM);
            assertThat(first.end().distance(middle.start())).as("seed %d", seed).isLessThan(1e-9);
            assertThat(middle.end().distance(path.at(high))).as("seed %d", seed).isLessThan(1e-9);
            assertThat(path.part(high, low).start().distance(path.at(high))).isLessThan(1e-9);
            assertThat(Path.joined(List.of(first, middle, last)).length())
                    .as("seed %d", seed)
                    .isCloseTo(path.length(), MM);
        }
        assertThat(worst).isLessThan(1e-9);
    }

    @Test
    void aCutNextToAJointIsMadeAtTheJoint() {
        Path path = Path.of(
                new LineSegment(p(0, 0), p(30, 0)),
                new ArcSegment(p(30, 10), 10, 90, -90),
                RandomPaths.cubic(40, 10, 40, 30, 60, 40, 90, 40));
        double joint = 30 + 5 * StrictMath.PI;
        for (double off : new double[] {-9e-10, 0, 9e-10}) {
            Path head = path.part(0, joint + off);
            Path tail = path.part(joint + off, path.length());
            assertThat(head.segments()).isEqualTo(path.segments().subList(0, 2));
            assertThat(tail.segments()).isEqualTo(path.segments().subList(2, 3));
        }
        assertThat(path.part(0, path.length())).isEqualTo(path);
        assertThat(path.part(-5, 1e9)).isEqualTo(path);
        assertThat(path.part(12, 12).length()).isZero();
    }

    @Test
    void rigidMotionChangesNoLengthAreaOrCurvature() {
        for (int i = 0; i < ROUNDS; i++) {
            long seed = 6000 + i;
            Path path = random(seed);
            Transform motion = new RandomPaths(seed).motion();
            Path moved = path.transformed(motion);
            double s = path.length() / 3;
            assertThat(moved.length()).as("seed %d", seed).isCloseTo(path.length(), MM);
            assertThat(moved.at(s).distance(motion.apply(path.at(s))))
                    .as("seed %d", seed)
                    .isLessThan(1e-8);
            double sign = motion.mirrors() ? -1 : 1;
            assertThat(moved.signedArea()).as("seed %d", seed).isCloseTo(sign * path.signedArea(), within(1e-6));
            assertThat(moved.tangent(s).dot(motion.apply(path.tangent(s))))
                    .as("seed %d", seed)
                    .isCloseTo(1, MM);
        }
    }

    @Test
    void reversingKeepsLengthAndTurnsTheRest() {
        for (int i = 0; i < ROUNDS; i++) {
            long seed = 7000 + i;
            Path path = random(seed);
            Path back = path.reversed();
            double s = path.length() * 0.4;
            assertThat(back.length()).as("seed %d", seed).isCloseTo(path.length(), MM);
            assertThat(back.at(path.length() - s).distance(path.at(s)))
                    .as("seed %d", seed)
                    .isLessThan(1e-8);
            assertThat(back.tangent(path.length() - s).dot(path.tangent(s)))
                    .as("seed %d", seed)
                    .isCloseTo(-1, MM);
            assertThat(back.signedArea()).as("seed %d", seed).isCloseTo(-path.signedArea(), within(1e-6));
        }
    }

    @Test
    void scalingScalesLengthsAndAreas() {
        Transform thrice = new Transform(3, 0, 0, 3, 0, 0);
        for (int i = 0; i < ROUNDS; i++) {
            long seed = 8000 + i;
            Path path = random(seed);
            Path large = path.transformed(thrice);
            assertThat(large.length()).as("seed %d", seed).isCloseTo(3 * path.length(), within(1e-8));
            assertThat(large.signedArea()).as("seed %d", seed).isCloseTo(9 * path.signedArea(), within(1e-5));
        }
    }

    @Test
    void theNearestPlaceIsNearerThanAnyOfManyOthers() {
        for (int i = 0; i < ROUNDS; i++) {
            long seed = 9000 + i;
            Path path = random(seed);
            Point to = new RandomPaths(-seed).point(250);
            Position nearest = path.nearest(to);
            assertThat(path.at(nearest.s()).distance(nearest.point()))
                    .as("seed %d", seed)
                    .isLessThan(1e-9);
            assertThat(nearest.point().distance(to)).isCloseTo(nearest.distance(), MM);
            double least = Double.POSITIVE_INFINITY;
            for (int k = 0; k <= 2000; k++) {
                least = Math.min(least, path.at(path.length() * k / 2000).distance(to));
            }
            assertThat(nearest.distance()).as("seed %d", seed).isLessThanOrEqualTo(least + 1e-9);
        }
    }

    @Test
    void ofEquallyNearPlacesTheFirstCounts() {
        assertThat(Path.arc(Point.ORIGIN, 10, 30, 200).nearest(Point.ORIGIN).s())
                .isZero();
        Path vee = Path.line(p(-10, -10), p(0, 0), p(10, -10));
        assertThat(vee.nearest(p(0, -10)).s()).isCloseTo(Math.sqrt(50), MM);
        Path arch = Path.of(RandomPaths.cubic(-50, 0, -50, -100, 50, -100, 50, 0));
        Position side = arch.nearest(p(0, 20));
        assertThat(side.s()).isZero();
        assertThat(Path.line(p(0, 0), p(50, 0), p(50, 50)).nearest(p(60, -10)).s())
                .isEqualTo(50.0);
    }

    @Test
    void theAreaOfACircleIsTheClosedForm() {
        Path circle = Path.arc(p(1000, -2000), 50, 10, 360);
        assertThat(circle.closed()).isTrue();
        assertThat(circle.signedArea()).isCloseTo(2500 * StrictMath.PI, within(1e-8));
        assertThat(circle.reversed().signedArea()).isCloseTo(-2500 * StrictMath.PI, within(1e-8));
    }

    @Test
    void theAreaUnderAParabolaIsTwoThirds() {
        // Archimedes: the segment of a parabola has two thirds of its box; the cubic is y = 4 h x (w - x) / w^2.
        Path cap = Path.of(RandomPaths.cubic(0, 0, 100, -80, 200, -80, 300, 0), new LineSegment(p(300, 0), p(0, 0)));
        assertThat(cap.signedArea()).isCloseTo(-2.0 / 3 * 300 * 60, within(1e-9));
    }

    @Test
    void boundsHoldThePathTightly() {
        assertThat(Path.arc(Point.ORIGIN, 10, 45, 90).bounds().top()).isEqualTo(-10.0);
        for (int i = 0; i < ROUNDS; i++) {
            long seed = 10_000 + i;
            Path path = random(seed);
            Box box = path.bounds();
            Box sampled = new Box(
                    path.start().x(),
                    path.start().y(),
                    path.start().x(),
                    path.start().y());
            for (int k = 0; k <= 3000; k++) {
                Point q = path.at(path.length() * k / 3000);
                sampled = sampled.with(new Box(q.x(), q.y(), q.x(), q.y()));
            }
            assertThat(box.left()).as("seed %d", seed).isBetween(sampled.left() - 0.2, sampled.left() + 1e-9);
            assertThat(box.right()).as("seed %d", seed).isBetween(sampled.right() - 1e-9, sampled.right() + 0.2);
            assertThat(box.top()).as("seed %d", seed).isBetween(sampled.top() - 0.2, sampled.top() + 1e-9);
            assertThat(box.bottom()).as("seed %d", seed).isBetween(sampled.bottom() - 1e-9, sampled.bottom() + 0.2);
        }
    }

    @Test
    void flatteningStraysAtMostTheTolerance() {
        for (int i = 0; i < 50; i++) {
            long seed = 11_000 + i;
            Path path = random(seed);
            for (double tolerance : new double[] {1, 0.01}) {
                List<Point> points = path.flatten(tolerance);
                assertThat(points.get(0)).isEqualTo(path.start());
                assertThat(points.get(points.size() - 1)).isEqualTo(path.end());
                Path flat = Path.line(points.toArray(new Point[0]));
                for (int k = 0; k <= 500; k++) {
                    Point q = path.at(path.length() * k / 500);
                    assertThat(flat.nearest(q).distance()).as("seed %d", seed).isLessThanOrEqualTo(tolerance + 1e-9);
                }
            }
        }
    }

    @Test
    void straightPathsAreKnown() {
        assertThat(Path.line(p(0, 0), p(10, 10), p(30, 30)).straight()).isTrue();
        assertThat(Path.line(p(0, 0), p(10, 10), p(30, 31)).straight()).isFalse();
        assertThat(Path.arc(Point.ORIGIN, 1000, 0, 1).straight()).isFalse();
        assertThat(SmoothCurve.through(List.of(Knot.at(p(0, 0)), Knot.at(p(80, 0))), 1)
                        .straight())
                .isTrue();
    }

    @Test
    void aGapBetweenJoinedPathsIsAFault() {
        Path a = Path.line(p(0, 0), p(10, 0));
        Path b = Path.line(p(10, 5), p(20, 5));
        assertThatThrownBy(() -> Path.joined(List.of(a, b))).isInstanceOfSatisfying(Fault.class, f -> {
            assertThat(f.diagnostic().code()).isEqualTo(GeometryCode.GAP);
            assertThat(f.diagnostic().message())
                    .isEqualTo("Path 2 does not start where path 1 ends: there is a gap of 0.5 cm between them.");
        });
        assertThatThrownBy(() -> Path.of(a.segments().get(0), b.segments().get(0)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Path.of(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThat(Path.joined(List.of(a, Path.line(p(10, 5e-7), p(20, 0)))).segments())
                .hasSize(2);
    }
}
