package org.gusset.core.construct;

import org.gusset.core.diagnostic.Fault;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.graph.Values;

/** The way that a curve heads at a point. */
public sealed interface Heading {
    /**
     * The angle in degrees.
     *
     * @param at the point
     * @param onward the way that the curve takes there roughly: from the point before to the point after
     */
    double degrees(Values in, Point at, Vector onward);

    /** An angle. */
    record Angle(Formula formula) implements Heading {
        @Override
        public double degrees(Values in, Point at, Vector onward) {
            return formula.number(in);
        }
    }

    /** A side of the page. */
    record To(Compass compass) implements Heading {
        @Override
        public double degrees(Values in, Point at, Vector onward) {
            return compass.degrees;
        }
    }

    /** Toward a point. */
    record Toward(int point) implements Heading {
        @Override
        public double degrees(Values in, Point at, Vector onward) {
            Vector way = in.point(point).minus(at);
            if (way.length() < Path.COINCIDE) {
                throw Fault.of(ConstructCode.SAME_POINT);
            }
            return way.degrees();
        }
    }

    /** Along a path, at the place on it that is nearest. */
    record Along(int path) implements Heading {
        @Override
        public double degrees(Values in, Point at, Vector onward) {
            return lesser(tangent(in.path(path), at), onward, "along the path");
        }
    }

    /** Square to a path, at the place on it that is nearest. */
    record SquareTo(int path) implements Heading {
        @Override
        public double degrees(Values in, Point at, Vector onward) {
            return lesser(tangent(in.path(path), at).left(), onward, "square to the path");
        }
    }

    /** One of two by a condition. */
    record Choice(Condition condition, Heading then, Heading otherwise) implements Heading {
        @Override
        public double degrees(Values in, Point at, Vector onward) {
            return (condition.holds(in) ? then : otherwise).degrees(in, at, onward);
        }
    }

    /** The four sides of the page. */
    enum Compass {
        RIGHT(0, "right", Vector.RIGHT),
        UP(90, "up", Vector.UP),
        LEFT(180, "left", Vector.LEFT),
        DOWN(270, "down", Vector.DOWN);

        private final double degrees;
        private final String word;
        private final Vector vector;

        Compass(double degrees, String word, Vector vector) {
            this.degrees = degrees;
            this.word = word;
            this.vector = vector;
        }

        public String word() {
            return word;
        }

        public Vector vector() {
            return vector;
        }
    }

    private static Vector tangent(Path path, Point at) {
        return path.tangent(path.nearest(at).s());
    }

    private static double lesser(Vector way, Vector onward, String words) {
        double share = way.unit().dot(onward.unit());
        if (Math.abs(share) < 1e-6) {
            throw Fault.of(ConstructCode.WAY_TIE, "words", words);
        }
        return (share > 0 ? way : way.opposite()).degrees();
    }
}
