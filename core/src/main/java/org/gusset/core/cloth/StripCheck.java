package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.JoinPlan;

/**
 * Holds the lengths of which a strip is joined to the strip: each a parallelogram of its width whose sides run along, across or at 45
 * degrees to the warp and whose ends can be joined, and all of them together as long as it, joins taken off.
 */
final class StripCheck {
    /** Distances up to this are rounding, in mm. */
    private static final double NEAR = 1e-3;

    private static final int CORNERS = 4;

    private final LaidPiece laid;
    private final JoinPlan join;
    private final List<String> faults;

    private StripCheck(LaidPiece laid, JoinPlan join, List<String> faults) {
        this.laid = laid;
        this.join = join;
        this.faults = faults;
    }

    /** Adds what is wrong with one length, in English. */
    static void tell(LaidPiece laid, JoinPlan join, List<String> faults) {
        StripCheck check = new StripCheck(laid, join, faults);
        check.shape();
        check.covers();
    }

    private void fault(String what) {
        faults.add("a length of " + laid.piece().name() + " " + what);
    }

    private void shape() {
        List<Point> ring = corners(laid.ring());
        if (ring.size() != CORNERS) {
            fault("has " + ring.size() + " corners");
            return;
        }
        Vector one = ring.get(1).minus(ring.get(0));
        Vector other = ring.get(2).minus(ring.get(1));
        boolean closes = one.plus(ring.get(3).minus(ring.get(2))).length() <= NEAR;
        if (!closes) {
            fault("is no parallelogram");
            return;
        }
        // The ends of a length on the bias run along the warp, and so do the sides of one along it.
        boolean firstAlong = Math.abs(askew(one)) < Math.abs(askew(other));
        Vector along = firstAlong ? one : other;
        Vector aslant = firstAlong ? other : one;
        double root = StrictMath.sqrt(2);
        double each = laid.way() == LaidWay.AT_FOLD ? join.each() / 2 : join.each();
        switch (join.lie()) {
            case ALONG -> sides(along, each, aslant, join.cutWidth(), 90);
            case ACROSS -> sides(along, join.cutWidth(), aslant, each, 90);
            default -> sides(along, join.cutWidth() * root, aslant, each, 45);
        }
    }

    /** A ring without the points in the middle of its sides, as one has at the fold that is opened out. */
    private static List<Point> corners(List<Point> ring) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point at = ring.get(i);
            Vector in = at.minus(ring.get((i + ring.size() - 1) % ring.size()));
            Vector out = ring.get((i + 1) % ring.size()).minus(at);
            if (Math.abs(in.cross(out)) > NEAR * NEAR) {
                corners.add(at);
            }
        }
        return corners;
    }

    /** How far a side runs off the warp, as the sine of the angle. */
    private double askew(Vector side) {
        return laid.warp().left().dot(side) / side.length();
    }

    private void sides(Vector along, double longAlong, Vector aslant, double longAslant, double degrees) {
        double off = StrictMath.toDegrees(StrictMath.asin(Math.min(1, Math.abs(askew(aslant)))));
        if (Math.abs(askew(along)) > 1e-6 || Math.abs(off - degrees) > 1e-4) {
            fault("runs at " + off + " degrees to the warp");
        }
        if (Math.abs(along.length() - longAlong) > NEAR || Math.abs(aslant.length() - longAslant) > NEAR) {
            fault("measures " + along.length() + " by " + aslant.length());
        }
    }

    /** Whether all lengths joined are the strip. */
    private void covers() {
        double loss = 2 * join.allowance() * (join.lie() == JoinPlan.Lie.BIAS ? StrictMath.sqrt(2) : 1);
        double joined = join.lengths() * join.each() - (join.lengths() - 1) * loss;
        Box strip = laid.piece().cutting().bounds();
        if (Math.abs(joined - strip.width()) > NEAR || Math.abs(join.cutWidth() - strip.height()) > NEAR) {
            fault("is one of " + join.lengths() + " that give " + joined + " by " + join.cutWidth() + " in place of "
                    + strip.width() + " by " + strip.height());
        }
    }
}
