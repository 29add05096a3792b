package org.gusset.core.geometry;

/**
 * Tells neighbours that meet nowhere but at their joint without a search: from the joint, the control points of the one lie within
 * 45 degrees of the way back, those of the other within 45 degrees of the way on. A Bezier curve lies in the hull of its control
 * points, so that the two are nowhere closer to each other than they are to the joint along that way.
 */
final class RunningOn {
    private RunningOn() {}

    /** True if the segments, the second beginning where the first ends, certainly meet at that joint only; false if it is not known. */
    static boolean apart(Segment first, Segment second) {
        Point joint = first.end();
        if (first instanceof ArcSegment || second instanceof ArcSegment || !joint.equals(second.start())) {
            return false;
        }
        Vector way = first.tangent(1).plus(second.tangent(0));
        return way.length() >= 1 && inCone(first, joint, way.opposite()) && inCone(second, joint, way);
    }

    private static boolean inCone(Segment segment, Point joint, Vector way) {
        boolean within = inCone(segment.start(), joint, way) && inCone(segment.end(), joint, way);
        if (within && segment instanceof CubicSegment cubic) {
            within = inCone(cubic.control1(), joint, way) && inCone(cubic.control2(), joint, way);
        }
        return within;
    }

    private static boolean inCone(Point p, Point joint, Vector way) {
        Vector off = p.minus(joint);
        return off.dot(way) >= Math.abs(off.cross(way));
    }
}
