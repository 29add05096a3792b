package org.gusset.core.construct;

import org.gusset.core.diagnostic.Fault;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;

/** Numbers taken off shapes: lengths in mm, angles in degrees. */
public sealed interface Measuring extends Operation<Double> {
    /** The lengths of paths added up. Inputs: the paths. */
    record LengthOf(int paths) implements Measuring {
        @Override
        public Double apply(Values in) {
            double sum = 0;
            for (int i = 0; i < paths; i++) {
                sum += in.path(i).length();
            }
            return sum;
        }
    }

    /** Inputs: two points. */
    record Distance() implements Measuring {
        @Override
        public Double apply(Values in) {
            return in.point(0).distance(in.point(1));
        }
    }

    /** How much higher or lower one point is, never negative. Inputs: two points. */
    record Height() implements Measuring {
        @Override
        public Double apply(Values in) {
            return Math.abs(in.point(0).y() - in.point(1).y());
        }
    }

    /** How far apart two points are across, never negative. Inputs: two points. */
    record Width() implements Measuring {
        @Override
        public Double apply(Values in) {
            return Math.abs(in.point(0).x() - in.point(1).x());
        }
    }

    /** The angle at the second of three points, from 0 to 180 degrees. Inputs: the points. */
    record AngleAt() implements Measuring {
        @Override
        public Double apply(Values in) {
            Point at = in.point(1);
            Vector a = in.point(0).minus(at);
            Vector b = in.point(2).minus(at);
            if (a.length() < Path.COINCIDE || b.length() < Path.COINCIDE) {
                throw Fault.of(ConstructCode.SAME_POINT);
            }
            return Math.abs(StrictMath.toDegrees(StrictMath.atan2(a.cross(b), a.dot(b))));
        }
    }
}
