package org.gusset.core.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The spline rule of John D. Hobby (Smooth, easy to compute interpolating splines, Discrete &amp; Computational Geometry 1,
 * 1986), with the details of its use in mathematical typesetting as published in D. E. Knuth, Computers &amp; Typesetting D
 * (1986), parts 17 and 18: the angle of travel at each open knot is such that the mock curvature is the same before and after
 * it; the lengths of the handles follow from the angles.
 *
 * <p>Angles here are radians, anticlockwise as seen.
 */
final class HobbySpline {
    /** What is known of one side of a knot. */
    enum Kind {
        OPEN,
        HEADING,
        CURL
    }

    /**
     * One side of a knot.
     *
     * @param kind what is known
     * @param value the heading in degrees, the curl, or nothing
     * @param tension of the stretch at this end of it
     * @param atLeast whether the tension is raised where the handles would leave the triangle of chord and tangents
     */
    record Side(Kind kind, double value, double tension, boolean atLeast) {
        static Side open(double tension) {
            return new Side(Kind.OPEN, 0, tension, false);
        }

        static Side heading(double degrees, double tension) {
            return new Side(Kind.HEADING, degrees, tension, false);
        }

        static Side curl(double curl, double tension) {
            return new Side(Kind.CURL, curl, tension, false);
        }

        Side withAtLeast() {
            return new Side(kind, value, tension, true);
        }

        private Side as(Kind other, double otherValue) {
            return new Side(other, otherValue, tension, atLeast);
        }
    }

    /** A knot with both its sides. */
    record Node(Point point, Side in, Side out) {}

    /** A velocity is at most this many chords. */
    private static final double FASTEST = 4;

    private static final double STEEPEST_CURL = 4;

    /** The margin by which a handle of tension "at least" stays inside its triangle. */
    private static final double INSIDE = 1 + 1.0 / 4096;

    private HobbySpline() {}

    /**
     * The cubics between the knots, in a closed curve also from the last to the first. Neighbours must not coincide; the ends of
     * an open curve count as curl 1 where nothing is known.
     */
    static List<CubicSegment> through(List<Node> knots, boolean closed) {
        List<Node> nodes = agreed(knots, closed);
        int n = nodes.size();
        int first = 0;
        while (first < n && smooth(nodes.get(first))) {
            first++;
        }
        List<CubicSegment> out = new ArrayList<>();
        if (first == n) {
            return new Stretch(nodes, true).cubics();
        }
        // A closed curve with a known place is a round of open stretches that begins there.
        List<Node> round = new ArrayList<>(nodes);
        if (closed) {
            Collections.rotate(round, -first);
            round.add(round.get(0));
        }
        int from = 0;
        for (int i = 1; i < round.size(); i++) {
            if (!smooth(round.get(i))) {
                out.addAll(new Stretch(round.subList(from, i + 1), false).cubics());
                from = i;
            }
        }
        if (closed) {
            Collections.rotate(out, first);
        }
        return out;
    }

    private static boolean smooth(Node node) {
        return node.in().kind() == Kind.OPEN && node.out().kind() == Kind.OPEN;
    }

    /** What is known of one side only holds for the other too. */
    private static List<Node> agreed(List<Node> knots, boolean closed) {
        List<Node> out = new ArrayList<>();
        for (int i = 0; i < knots.size(); i++) {
            Side in = knots.get(i).in();
            Side go = knots.get(i).out();
            if (in.kind() == Kind.OPEN && go.kind() != Kind.OPEN) {
                in = in.as(go.kind(), go.value());
            } else if (go.kind() == Kind.OPEN && in.kind() != Kind.OPEN) {
                go = go.as(in.kind(), in.value());
            }
            if (!closed && (i == 0 || i == knots.size() - 1) && go.kind() == Kind.OPEN) {
                in = in.as(Kind.CURL, 1);
                go = go.as(Kind.CURL, 1);
            }
            out.add(new Node(knots.get(i).point(), in, go));
        }
        return out;
    }

    /** Knots between which the curve is smooth: an open run, or a whole round without a known place. */
    private static final class Stretch {
        private final List<Node> nodes;
        private final boolean round;

        /** The number of chords. */
        private final int chords;

        private final double[] chord;
        private final double[] angle;

        /** The turn from the chord before a knot to the one after it. */
        private final double[] turn;

        /** The angle of travel at a knot against the chord after it. */
        private final double[] theta;

        Stretch(List<Node> nodes, boolean round) {
            this.nodes = nodes;
            this.round = round;
            this.chords = round ? nodes.size() : nodes.size() - 1;
            this.chord = new double[chords];
            this.angle = new double[chords];
            this.turn = new double[chords + 1];
            this.theta = new double[chords + 1];
            for (int k = 0; k < chords; k++) {
                Vector way = node(k + 1).point().minus(node(k).point());
                chord[k] = way.length();
                angle[k] = StrictMath.atan2(-way.dy(), way.dx());
                if (k > 0) {
                    turn[k] = reduced(angle[k] - angle[k - 1]);
                }
            }
            if (round) {
                turn[0] = reduced(angle[0] - angle[chords - 1]);
                turn[chords] = turn[0];
            }
        }

        private Node node(int k) {
            return nodes.get(k % nodes.size());
        }

        /** Reciprocal of the tension after knot k. */
        private double alpha(int k) {
            return 1 / node(k).out().tension();
        }

        /** Reciprocal of the tension before knot k. */
        private double beta(int k) {
            return 1 / node(k).in().tension();
        }

        List<CubicSegment> cubics() {
            boolean straight = !round
                    && chords == 1
                    && node(0).out().kind() == Kind.CURL
                    && node(1).in().kind() == Kind.CURL;
            if (straight) {
                Point p = node(0).point();
                Point q = node(1).point();
                return List.of(new CubicSegment(p, p.toward(q, alpha(0) / 3), q.toward(p, beta(1) / 3), q));
            }
            if (round) {
                solveRound();
            } else {
                solveRun();
            }
            List<CubicSegment> out = new ArrayList<>();
            for (int k = 0; k < chords; k++) {
                double phi = k + 1 == chords && !round ? -theta[chords] : -turn[k + 1] - theta[k + 1];
                out.add(cubic(k, theta[k], phi));
            }
            return out;
        }

        /** The angle at the end is kept in theta as the negative of phi, as if the chord went straight on. */
        private void solveRun() {
            double[] share = new double[chords + 1];
            double[] rest = new double[chords + 1];
            Side out = node(0).out();
            if (out.kind() == Kind.HEADING) {
                rest[0] = reduced(StrictMath.toRadians(out.value()) - angle[0]);
            } else {
                double ratio = curlRatio(out.value(), alpha(0), beta(1));
                share[0] = ratio;
                rest[0] = -ratio * turn[1];
            }
            for (int k = 1; k < chords; k++) {
                double a = before(k);
                double b = beforeOwn(k);
                double c = afterOwn(k);
                double d = after(k);
                double pivot = b + c - a * share[k - 1];
                share[k] = d / pivot;
                rest[k] = (-b * turn[k] - d * turn[k + 1] - a * rest[k - 1]) / pivot;
            }
            Side in = node(chords).in();
            if (in.kind() == Kind.HEADING) {
                theta[chords] = reduced(StrictMath.toRadians(in.value()) - angle[chords - 1]);
            } else {
                double ratio = curlRatio(in.value(), beta(chords), alpha(chords - 1));
                theta[chords] = -ratio * rest[chords - 1] / (1 - ratio * share[chords - 1]);
            }
            for (int k = chords - 1; k >= 0; k--) {
                theta[k] = rest[k] - share[k] * theta[k + 1];
            }
        }

        /** The same elimination with the angle at the first knot carried along. */
        private void solveRound() {
            double[] share = new double[chords + 1];
            double[] rest = new double[chords + 1];
            double[] ofFirst = new double[chords + 1];
            ofFirst[0] = 1;
            for (int k = 1; k <= chords; k++) {
                double a = before(k);
                double b = beforeOwn(k);
                double c = afterOwn(k);
                double d = after(k);
                double pivot = b + c - a * share[k - 1];
                double nextTurn = turn[k == chords ? 1 : k + 1];
                share[k] = d / pivot;
                rest[k] = (-b * turn[k] - d * nextTurn - a * rest[k - 1]) / pivot;
                ofFirst[k] = -a * ofFirst[k - 1] / pivot;
            }
            // Each theta as a plus b times the first one, from the last knot (which is the first) backwards.
            double[] plain = new double[chords + 1];
            double[] times = new double[chords + 1];
            times[chords] = 1;
            for (int k = chords - 1; k >= 1; k--) {
                plain[k] = rest[k] - share[k] * plain[k + 1];
                times[k] = ofFirst[k] - share[k] * times[k + 1];
            }
            double nextPlain = chords == 1 ? 0 : plain[1];
            double nextTimes = chords == 1 ? 1 : times[1];
            double first =
                    (rest[chords] - share[chords] * nextPlain) / (1 - ofFirst[chords] + share[chords] * nextTimes);
            for (int k = 1; k < chords; k++) {
                theta[k] = plain[k] + times[k] * first;
            }
            theta[0] = first;
            theta[chords] = first;
        }

        private double before(int k) {
            return alpha(k - 1) / (beta(k) * beta(k) * chord[k - 1]);
        }

        private double beforeOwn(int k) {
            return (3 - alpha(k - 1)) / (beta(k) * beta(k) * chord[k - 1]);
        }

        private double afterOwn(int k) {
            return (3 - beta(k + 1)) / (alpha(k) * alpha(k) * chord[k % chords]);
        }

        private double after(int k) {
            return beta(k + 1) / (alpha(k) * alpha(k) * chord[k % chords]);
        }

        /** The cubic over chord k whose travel makes the angle th with the chord at its start and -ph at its end. */
        private CubicSegment cubic(int k, double th, double ph) {
            Side out = node(k).out();
            Side in = node(k + 1).in();
            double st = StrictMath.sin(th);
            double ct = StrictMath.cos(th);
            double sf = StrictMath.sin(ph);
            double cf = StrictMath.cos(ph);
            double leave = velocity(st, ct, sf, cf, out.tension());
            double arrive = velocity(sf, cf, st, ct, in.tension());
            if (out.atLeast() || in.atLeast()) {
                if ((st >= 0 && sf >= 0) || (st <= 0 && sf <= 0)) {
                    double sine = (Math.abs(st) * cf + Math.abs(sf) * ct) * INSIDE;
                    if (sine > 0) {
                        leave = out.atLeast() ? Math.min(leave, Math.abs(sf) / sine) : leave;
                        arrive = in.atLeast() ? Math.min(arrive, Math.abs(st) / sine) : arrive;
                    }
                }
            }
            Point p = node(k).point();
            Point q = node(k + 1).point();
            Vector way = q.minus(p);
            Vector start = heading(out, way, ct, st);
            Vector end = heading(in, way, cf, -sf);
            return new CubicSegment(p, p.plus(start.times(leave * chord[k])), q.plus(end.times(-arrive * chord[k])), q);
        }

        /** The unit way of travel, exact where it was given. */
        private static Vector heading(Side side, Vector way, double cos, double sin) {
            if (side.kind() == Kind.HEADING) {
                return Vector.atAngle(side.value());
            }
            return way.times(cos).plus(way.left().times(sin)).unit();
        }
    }

    /** The angle at an end with a curl, as a share of the angle at the other end of its chord. */
    private static double curlRatio(double curl, double own, double other) {
        double numerator = (3 - own) * own * own * curl + other * other * other;
        double denominator = own * own * own * curl + (3 - other) * other * other;
        return Math.min(STEEPEST_CURL, numerator / denominator);
    }

    /** Hobby's velocity function: the handle's length as a share of the chord. */
    private static double velocity(double st, double ct, double sf, double cf, double tension) {
        double root5 = Math.sqrt(5);
        double numerator = 2 + Math.sqrt(2) * (st - sf / 16) * (sf - st / 16) * (ct - cf);
        double denominator = 3 * (1 + 0.5 * (root5 - 1) * ct + 0.5 * (3 - root5) * cf);
        return Math.min(FASTEST, numerator / (tension * denominator));
    }

    /** The same angle, more than minus half a turn and at most half a turn. */
    private static double reduced(double angle) {
        double turn = 2 * StrictMath.PI;
        double out = angle % turn;
        if (out > StrictMath.PI) {
            return out - turn;
        }
        return out <= -StrictMath.PI ? out + turn : out;
    }
}
