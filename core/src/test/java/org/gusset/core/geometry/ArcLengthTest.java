package org.gusset.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.analysis.integration.RombergIntegrator;
import org.junit.jupiter.api.Test;

/** Arc lengths against the quadratures of Hipparchus 4.0.3 and against closed forms. */
class ArcLengthTest {
    private static UnivariateFunction speed(CubicSegment cubic) {
        // Written out on its own, from the power form of the curve.
        double[] x = {
            cubic.start().x(),
            cubic.control1().x(),
            cubic.control2().x(),
            cubic.end().x()
        };
        double[] y = {
            cubic.start().y(),
            cubic.control1().y(),
            cubic.control2().y(),
            cubic.end().y()
        };
        return t -> StrictMath.hypot(slope(x, t), slope(y, t));
    }

    private static double slope(double[] c, double t) {
        double a = c[3] - 3 * c[2] + 3 * c[1] - c[0];
        double b = 3 * (c[2] - 2 * c[1] + c[0]);
        return 3 * a * t * t + 2 * b * t + 3 * (c[1] - c[0]);
    }

    /** Cubics as drafts have them: tame, 5 to 60 cm long. */
    private static CubicSegment tame(RandomPaths random) {
        return RandomPaths.cubic(
                0,
                0,
                random.between(10, 150),
                random.between(-100, 50),
                random.between(160, 300),
                random.between(-200, 50),
                random.between(200, 400),
                random.between(-100, 100));
    }

    @Test
    void lengthsAgreeWithIterativeLegendreGauss() {
        double worst = 0;
        for (int i = 0; i < 200; i++) {
            CubicSegment cubic = tame(new RandomPaths(100 + i));
            double other = new IterativeLegendreGaussIntegrator(20, 1e-14, 1e-13, 2, 60)
                    .integrate(10_000_000, speed(cubic), 0, 1);
            worst = Math.max(worst, Math.abs(cubic.length() - other));
        }
        assertThat(worst).isLessThan(1e-9);
    }

    @Test
    void lengthsAgreeWithRomberg() {
        double worst = 0;
        for (int i = 0; i < 50; i++) {
            CubicSegment cubic = tame(new RandomPaths(100 + i));
            double other = new RombergIntegrator(1e-13, 1e-12, 6, 30).integrate(100_000_000, speed(cubic), 0, 1);
            worst = Math.max(worst, Math.abs(cubic.length() - other));
        }
        assertThat(worst).isLessThan(1e-9);
    }

    @Test
    void lengthOfAParabolaIsTheClosedForm() {
        // y = x^2 from 0 to 1 has the length sqrt(5)/2 + asinh(2)/4 (school geometry); here 100 times as large.
        double third = 100.0 / 3;
        CubicSegment parabola = RandomPaths.cubic(0, 0, third, 0, 2 * third, -third, 100, -100);
        double asinh = StrictMath.log(2 + Math.sqrt(5));
        assertThat(parabola.length()).isCloseTo(100 * (Math.sqrt(5) / 2 + asinh / 4), within(1e-10));
    }

    @Test
    void lengthOfACuspIsTheClosedForm() {
        // x = t^3, y = t^2 (semicubical parabola) between -1 and 1: 2 (13 sqrt(13) - 8) / 27.
        // Controls of (t^3, t^2) on [-1, 1] by blossoming.
        CubicSegment cusp = RandomPaths.cubic(-1, 1, 1, -1.0 / 3, -1, -1.0 / 3, 1, 1);
        assertThat(cusp.length()).isCloseTo(2 * (13 * Math.sqrt(13) - 8) / 27, within(1e-10));
        assertThat(cusp.lengthTo(0.5)).isCloseTo(cusp.length() / 2, within(1e-10));
        assertThat(cusp.parameterAt(cusp.length() / 2)).isCloseTo(0.5, within(1e-4));
    }

    @Test
    void parameterAtTurnsLengthToBack() {
        double worst = 0;
        for (int i = 0; i < 300; i++) {
            RandomPaths random = new RandomPaths(2000 + i);
            CubicSegment cubic = random.cubic(200);
            for (int k = 0; k <= 20; k++) {
                double length = cubic.length() * k / 20;
                worst = Math.max(worst, Math.abs(cubic.lengthTo(cubic.parameterAt(length)) - length) / cubic.length());
            }
        }
        assertThat(worst).isLessThan(1e-12);
    }

    @Test
    void theLengthIsSmoothInTheControls() {
        // Central differences of the length over steps of 1e-3 and 2e-3 mm agree: no jumps where the quadrature goes
        // deeper.
        double worst = 0;
        for (int i = 0; i < 200; i++) {
            CubicSegment c = new RandomPaths(3000 + i).cubic(200);
            double near = slopeOfLength(c, 1e-3);
            double wide = slopeOfLength(c, 2e-3);
            worst = Math.max(worst, Math.abs(near - wide));
        }
        assertThat(worst).isLessThan(1e-6);
    }

    private static double slopeOfLength(CubicSegment c, double step) {
        Vector by = new Vector(step, step / 2);
        CubicSegment more = new CubicSegment(c.start(), c.control1().plus(by), c.control2(), c.end());
        CubicSegment less = new CubicSegment(c.start(), c.control1().plus(by.opposite()), c.control2(), c.end());
        return (more.length() - less.length()) / (2 * step);
    }

    @Test
    void halfCircleSkirtWaistHasTheSchoolRadius() {
        // A waist of 70 cm on a half circle: r = 70 / pi = 22.2817 cm.
        double radius = 700 / StrictMath.PI;
        assertThat(radius / 10).isCloseTo(22.2817, within(5e-5));
        Path waist = Path.arc(Point.ORIGIN, radius, 180, 180);
        assertThat(waist.length()).isCloseTo(700, within(1e-6));
        double cubicCircle = 4 * (Math.sqrt(2) - 1) / 3;
        // The usual cubic for a quarter circle is 0.027 percent off at most (closed form), its length less.
        CubicSegment quarter = RandomPaths.cubic(100, 0, 100, -100 * cubicCircle, 100 * cubicCircle, -100, 0, -100);
        assertThat(quarter.length()).isCloseTo(50 * StrictMath.PI, within(0.04));
    }

    @Test
    void degenerateCubicsHaveALengthAndATangent() {
        Point p = new Point(3, 4);
        CubicSegment dot = new CubicSegment(p, p, p, p);
        assertThat(dot.length()).isZero();
        assertThat(dot.tangent(0.5)).isEqualTo(new Vector(0, 0));
        assertThat(dot.curvature(0.5)).isZero();
        assertThat(dot.parameterAt(1)).isBetween(0.0, 1.0);

        CubicSegment bare = RandomPaths.cubic(0, 0, 0, 0, 100, 0, 100, 0);
        assertThat(bare.length()).isCloseTo(100, within(1e-10));
        assertThat(bare.tangent(0)).isEqualTo(Vector.RIGHT);
        assertThat(bare.tangent(1)).isEqualTo(Vector.RIGHT);
        assertThat(bare.parameterAt(50)).isCloseTo(0.5, within(1e-12));

        CubicSegment oneControl = RandomPaths.cubic(0, 0, 0, 0, 50, -50, 100, 0);
        assertThat(oneControl.tangent(0).degrees()).isCloseTo(45, within(1e-12));
        assertThat(oneControl.curvature(0)).isFinite();

        CubicSegment straight = RandomPaths.cubic(0, 0, 0, 0, 0, 0, 100, -100);
        assertThat(straight.tangent(0).degrees()).isCloseTo(45, within(1e-12));
        assertThat(straight.tangent(1).degrees()).isCloseTo(45, within(1e-12));
        assertThat(straight.length()).isCloseTo(100 * Math.sqrt(2), within(1e-10));

        CubicSegment lateControl = RandomPaths.cubic(0, 0, 100, 0, 100, 100, 100, 100);
        assertThat(lateControl.tangent(1).degrees()).isCloseTo(270, within(1e-12));
    }
}
