package org.gusset.benchmarks.curve;

import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.Point;
import org.hipparchus.analysis.differentiation.Derivative;
import org.hipparchus.analysis.differentiation.UnivariateDifferentiableFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.analysis.solvers.LaguerreSolver;
import org.hipparchus.analysis.solvers.NewtonRaphsonSolver;
import org.hipparchus.complex.Complex;

/** A cubic curve whose lengths, places and nearest points are found with Hipparchus. */
public final class GeneralCubic {
    private static final int MOST = 100_000;

    private final double x0;
    private final double x1;
    private final double x2;
    private final double x3;
    private final double y0;
    private final double y1;
    private final double y2;
    private final double y3;

    /** As accurate as the library promises of its own arc lengths. */
    private final IterativeLegendreGaussIntegrator integrator = new IterativeLegendreGaussIntegrator(16, 1e-10, 1e-10);

    private final NewtonRaphsonSolver newton = new NewtonRaphsonSolver(1e-10);
    private final LaguerreSolver laguerre = new LaguerreSolver();

    /** The curve in powers of t. */
    public GeneralCubic(CubicSegment c) {
        x0 = c.start().x();
        x1 = 3 * (c.control1().x() - c.start().x());
        x2 = 3 * (c.start().x() - 2 * c.control1().x() + c.control2().x());
        x3 = c.end().x()
                - 3 * c.control2().x()
                + 3 * c.control1().x()
                - c.start().x();
        y0 = c.start().y();
        y1 = 3 * (c.control1().y() - c.start().y());
        y2 = 3 * (c.start().y() - 2 * c.control1().y() + c.control2().y());
        y3 = c.end().y()
                - 3 * c.control2().y()
                + 3 * c.control1().y()
                - c.start().y();
    }

    private double speed(double t) {
        double dx = x1 + t * (2 * x2 + 3 * t * x3);
        double dy = y1 + t * (2 * y2 + 3 * t * y3);
        return Math.sqrt(dx * dx + dy * dy);
    }

    private Point at(double t) {
        return new Point(x0 + t * (x1 + t * (x2 + t * x3)), y0 + t * (y1 + t * (y2 + t * y3)));
    }

    /** The arc length in mm. */
    public double length() {
        return lengthTo(1);
    }

    private double lengthTo(double t) {
        return integrator.integrate(MOST, this::speed, 0, t);
    }

    /** The parameter at an arc length, by Newton's rule on the integral. */
    public double parameterAt(double s) {
        UnivariateDifferentiableFunction miss = new UnivariateDifferentiableFunction() {
            @Override
            public double value(double t) {
                return t <= 0 ? -s : lengthTo(t) - s;
            }

            @Override
            public <T extends Derivative<T>> T value(T t) {
                double at = t.getValue();
                return t.compose(value(at), speed(at));
            }
        };
        return newton.solve(100, miss, 0, 1);
    }

    /** The nearest point of the curve: of its ends and the places where it stands square to the way there, all roots of a quintic. */
    public Point nearest(Point to) {
        double px = x0 - to.x();
        double py = y0 - to.y();
        double[] square = {
            px * x1 + py * y1,
            x1 * x1 + y1 * y1 + 2 * (px * x2 + py * y2),
            3 * (x1 * x2 + y1 * y2 + px * x3 + py * y3),
            2 * (x2 * x2 + y2 * y2) + 4 * (x1 * x3 + y1 * y3),
            5 * (x2 * x3 + y2 * y3),
            3 * (x3 * x3 + y3 * y3)
        };
        Point best = at(0).distance(to) <= at(1).distance(to) ? at(0) : at(1);
        for (Complex root : laguerre.solveAllComplex(square, 0.5)) {
            double t = root.getReal();
            if (Math.abs(root.getImaginary()) < 1e-9 && t > 0 && t < 1 && at(t).distance(to) < best.distance(to)) {
                best = at(t);
            }
        }
        return best;
    }
}
