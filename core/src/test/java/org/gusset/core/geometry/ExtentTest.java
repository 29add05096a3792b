package org.gusset.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.gusset.core.diagnostic.Fault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class ExtentTest {
    private static GeometryCode refused(Object value) {
        List<GeometryCode> codes = new java.util.ArrayList<>();
        assertThatExceptionOfType(Fault.class)
                .isThrownBy(() -> Extent.check(value))
                .satisfies(f -> codes.add((GeometryCode) f.diagnostic().code()));
        return codes.get(0);
    }

    private static void passes(Object value) {
        assertThatCode(() -> Extent.check(value)).doesNotThrowAnyException();
    }

    @Test
    void numbersUpToTheBoundPassAndWhatIsNoneIsRefused() {
        passes(-1e15);
        passes(1e15);
        passes(Double.MIN_VALUE);
        for (double value : new double[] {1.0000001e15, -1e300, Double.POSITIVE_INFINITY, Double.NaN}) {
            assertThat(refused(value)).as("%s", value).isEqualTo(GeometryCode.TOO_LARGE);
        }
    }

    @Test
    void shapesMayReachAKilometreEachWay() {
        passes(new Point(-1e6, 1e6));
        assertThat(refused(new Point(0, 1.0000001e6))).isEqualTo(GeometryCode.TOO_FAR);
        assertThat(refused(new Point(Double.NaN, 0))).isEqualTo(GeometryCode.TOO_FAR);
        Point far = new Point(2e6, 0);
        Point end = new Point(100, 0);
        assertThat(refused(Path.of(new CubicSegment(Point.ORIGIN, far, end, end))))
                .as("a handle counts")
                .isEqualTo(GeometryCode.TOO_FAR);
        assertThat(refused(Path.of(new ArcSegment(new Point(0, 2e6), 2e6, 90, 1e-3))))
                .as("a centre counts")
                .isEqualTo(GeometryCode.TOO_FAR);
        assertThat(refused(Path.of(new ArcSegment(Point.ORIGIN, 10, 0, 1e6))))
                .as("so do turns")
                .isEqualTo(GeometryCode.TOO_LARGE);
        passes("a word");
    }

    @Test
    void aParallelCopyBeyondTheBoundIsRefusedBeforeItIsFitted() {
        Path curve = Path.of(new CubicSegment(Point.ORIGIN, new Point(0, -80), new Point(60, -80), new Point(60, 0)));
        assertThatExceptionOfType(Fault.class)
                .isThrownBy(() -> curve.parallel(1e15))
                .satisfies(f -> assertThat(f.diagnostic().code()).isEqualTo(GeometryCode.TOO_FAR));
    }

    /** By Bezout's theorem two cubics that do not run on one another meet in nine places at most. */
    @Test
    @Timeout(value = 20, unit = TimeUnit.SECONDS)
    void curvesThatRunOnOneAnotherAreSearchedInBoundedTimeHoweverLarge() {
        for (double size : new double[] {1, 1000, 1e5, 1e6}) {
            Path curve = Path.of(new CubicSegment(
                    Point.ORIGIN, new Point(0, -size), new Point(size, -size), new Point(size, size / 3)));
            assertThat(curve.meetings(curve).size()).as("itself, %s mm", size).isLessThan(300);
            Path near = curve.transformed(Transform.shift(new Vector(1e-7 * size, 0)));
            assertThat(curve.meetings(near).size())
                    .as("a hair aside, %s mm", size)
                    .isLessThan(300);
        }
    }
}
