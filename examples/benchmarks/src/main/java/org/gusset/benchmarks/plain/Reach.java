package org.gusset.benchmarks.plain;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.rootfinder.BrentSolver;
import org.gusset.core.geometry.Knot;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.SmoothCurve;
import org.gusset.core.geometry.Vector;

/**
 * How far the head of the sleeve reaches, so that it is as long as the armholes. The range is looked over in 64 steps, since another
 * answer in it would make the draft ambiguous, and the change of sign closed in on by Brent's method: as the draft's own search does
 * it, with the same bits.
 */
final class Reach {
    private static final double LOW = 80;
    private static final double HIGH = 800;
    private static final int STEPS = 64;
    private static final double TOLERANCE = 1e-9;

    private Reach() {}

    /** The reach in mm with which the head has a length. */
    static double of(double wanted) {
        BrentSolver brent = new BrentSolver(1e-15, 1e-13, TOLERANCE / 1000);
        List<Double> roots = new ArrayList<>();
        double before = 0;
        double missBefore = 0;
        for (int i = 0; i <= STEPS; i++) {
            double at = i == STEPS ? HIGH : LOW + (HIGH - LOW) * i / STEPS;
            double miss = cap(at).length() - wanted;
            if (Math.abs(miss) <= TOLERANCE) {
                roots.add(at);
            } else if (missBefore * miss < 0 && Math.abs(missBefore) > TOLERANCE) {
                roots.add(brent.findRoot(reach -> cap(reach).length() - wanted, before, at));
            }
            before = at;
            missBefore = miss;
        }
        if (roots.size() != 1) {
            throw new IllegalStateException("the head of the sleeve has " + roots.size() + " widths");
        }
        return roots.get(0);
    }

    static Path cap(double reach) {
        return SmoothCurve.through(
                List.of(
                        Knot.at(under(reach, Vector.LEFT), 10),
                        Knot.at(Point.ORIGIN, 0),
                        Knot.at(under(reach, Vector.RIGHT), -10)),
                1);
    }

    /** Where the head ends. */
    static Point under(double reach, Vector way) {
        return Point.ORIGIN.plus(way.times(reach)).plus(Vector.DOWN.times(70));
    }
}
