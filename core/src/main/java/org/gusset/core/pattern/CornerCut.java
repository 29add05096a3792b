package org.gusset.core.pattern;

import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;

/**
 * Lays the cutting line round one corner of the stitching line. School geometry: two parallels at d1 and d2 outside an
 * interior angle a meet at the distance sqrt(d1^2 + d2^2 + 2 d1 d2 cos a) / sin a from the corner, d / sin(a/2) for equal
 * widths.
 */
final class CornerCut {
    /** Mitres reach at most this many times the wider allowance. */
    static final double MITRE_LIMIT = 2;

    /** Mirrored and squared corners reach at most this many times the wider allowance. */
    private static final double REACH_LIMIT = 4;

    /** Turns below this, in radians, are smooth joins. */
    private static final double SMOOTH = 1e-7;

    /** How much longer than its limit a mitre may seem, as a share. */
    private static final double SLACK = 1e-9;

    private final Arm before;
    private final Arm after;
    private final double turn;
    private final boolean fold;
    private final double wider;

    /**
     * A corner between two arms.
     *
     * @param turn how far the outline turns there in radians, positive towards the inside
     * @param fold true if one of the two lies on a fold
     */
    CornerCut(Arm before, Arm after, double turn, boolean fold) {
        this.before = before;
        this.after = after;
        this.turn = turn;
        this.fold = fold;
        this.wider = Math.max(before.width(), after.width());
    }

    /** How far the outline turns at the corner from one band to the next, also where both run back along one another. */
    static double turn(Band before, Band after, Side side) {
        double turn = side.turn(before.endWay(), after.startWay());
        if (StrictMath.PI - Math.abs(turn) > 1e-6) {
            return turn;
        }
        // A cusp: which of the two lies outside shows a little way off.
        double step = Math.min(before.seam().length(), after.seam().length()) / 100;
        Point corner = after.seam().start();
        Vector back = before.seam().at(before.seam().length() - step).minus(corner);
        Vector ahead = after.seam().at(step).minus(corner);
        double inside = side.turn(back.opposite(), ahead);
        return inside >= 0 ? Math.abs(turn) : -Math.abs(turn);
    }

    /** Why a form cannot be cut at this corner, in words that end a sentence; empty if it can be. */
    Optional<String> objection(Corner.Form form) {
        if (form == Corner.Form.MITRED) {
            return Optional.empty();
        } else if (fold) {
            return Optional.of("on a fold the cut runs straight on along the fold");
        } else if (turn <= SMOOTH) {
            return Optional.of("it does not point outwards");
        }
        return Optional.empty();
    }

    /** The joint for a form, {@code toBefore} telling of which edge it is said; empty if geometry does not allow it. */
    Optional<Joint> cut(Corner.Form form, boolean toBefore) {
        if (form == Corner.Form.MITRED) {
            return Optional.of(mitred());
        } else if (objection(form).isPresent()) {
            return Optional.empty();
        } else if (form == Corner.Form.BLUNT) {
            return Optional.of(blunt());
        }
        Arm to = toBefore ? before : after;
        Arm neighbour = toBefore ? after : before;
        if (form == Corner.Form.MIRRORED && to.width() == 0) {
            return Optional.of(mitred());
        }
        Optional<Joint> joint = form == Corner.Form.SQUARED ? squared(to, neighbour) : mirrored(to, neighbour);
        // Both are worked out from the neighbour to the edge `to`, which may be against the outline's order.
        return toBefore ? joint.map(Joint::backwards) : joint;
    }

    Joint mitred() {
        if (wider == 0) {
            return new Joint(0, 0, List.of());
        } else if (Math.abs(turn) < SMOOTH) {
            return Joint.step(before, after);
        }
        if (reach() > MITRE_LIMIT * wider * (1 + SLACK)) {
            if (turn >= StrictMath.PI / 2) {
                return bluntAt(MITRE_LIMIT * wider);
            } else if (!fold && turn > -StrictMath.PI / 2) {
                // Nearly smooth with unequal widths: the copies would meet far away.
                return Joint.step(before, after);
            }
        }
        return met().orElseGet(() -> Joint.step(before, after));
    }

    private Optional<Joint> met() {
        double first = prolonged(before.width(), after.width());
        double second = prolonged(after.width(), before.width());
        if (first >= 0 && second >= 0) {
            return Optional.of(Joint.between(-first, -second, before.at(-first), after.at(-second)));
        }
        double beyond = 2 * Math.max(wider, Math.min(Math.max(first, second), 1000 * wider));
        return before.meeting(after, beyond).map(c -> new Joint(c.s(), c.otherS(), List.of()));
    }

    private Joint blunt() {
        return reach() > wider * (1 + SLACK)
                        && prolonged(before.width(), after.width()) > 0
                        && prolonged(after.width(), before.width()) > 0
                ? bluntAt(wider)
                : mitred();
    }

    /** Cut square to the line from the corner to the mitre's point (the bisector if the widths are equal), at a distance from the corner. */
    private Joint bluntAt(double distance) {
        double first = bluntPlace(before.width(), after.width(), distance);
        double second = bluntPlace(after.width(), before.width(), distance);
        return Joint.between(-first, -second, before.at(-first), after.at(-second));
    }

    private double bluntPlace(double own, double other, double distance) {
        double reach = reach();
        // A spike: the cutting lines run side by side and the mitre has no end.
        return reach > 1e6 * wider ? distance : (distance * reach - own * own) / prolonged(own, other);
    }

    /**
     * How far beyond the foot the straight cutting lines meet: (other + own cos a) / sin a with the interior angle a, written
     * with the turn so that equal widths lose no digits at flat corners.
     */
    private double prolonged(double own, double other) {
        double share = own == 0 ? 0 : own * StrictMath.tan(turn / 2);
        return other == own ? share : share + (other - own) / StrictMath.sin(turn);
    }

    /** How far the mitre's point lies from the corner. */
    private double reach() {
        return StrictMath.hypot(before.width(), prolonged(before.width(), after.width()));
    }

    private Optional<Joint> squared(Arm to, Arm neighbour) {
        Optional<Arm.Crossing> crossing = neighbour.meetingLine(to.away(), REACH_LIMIT * wider);
        if (crossing.isEmpty()) {
            return Optional.empty();
        }
        Point point = crossing.get().point();
        double distance = point.distance(to.corner());
        if (distance > REACH_LIMIT * wider) {
            return Optional.empty();
        }
        return Optional.of(Joint.between(crossing.get().s(), -distance, point, to.at(-distance)));
    }

    private Optional<Joint> mirrored(Arm to, Arm neighbour) {
        double limit = REACH_LIMIT * wider;
        Optional<Arm.Crossing> crossing = neighbour.meetingLine(to.away(), limit);
        if (crossing.isEmpty() || crossing.get().point().distance(to.corner()) > limit) {
            return Optional.empty();
        }
        Transform mirror = Transform.mirror(to.corner(), to.away());
        Path image = neighbour.from(crossing.get().s(), limit).transformed(mirror);
        Optional<Arm.Crossing> end = to.firstMeeting(image, limit);
        if (end.isEmpty() || end.get().point().distance(to.corner()) > limit) {
            return Optional.empty();
        }
        List<Segment> link = image.part(0, end.get().otherS()).segments();
        return Optional.of(new Joint(crossing.get().s(), end.get().s(), link));
    }
}
