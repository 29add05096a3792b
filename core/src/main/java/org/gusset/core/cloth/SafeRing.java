package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.LineSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.geometry.Vector;
import org.gusset.core.jts.JtsForms;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * A closed line as a polygon that holds all of it: straight lines stay as they are, a curve that bulges outward becomes its tangents, one
 * that bulges inward its chords. What lies in the polygon's place cannot reach into the piece, and the polygon lies beyond the line by the
 * tolerance at most. (Geometry: an arc that turns one way lies in the triangle of its chord and its end tangents.)
 */
final class SafeRing {
    private static final int DEEPEST = 18;
    private static final double MOST_TURN = 60;
    private static final double SAME = 1e-7;

    private final double tolerance;
    private final boolean anticlockwise;
    private final List<Point> out = new ArrayList<>();

    private SafeRing(double tolerance, boolean anticlockwise) {
        this.tolerance = tolerance;
        this.anticlockwise = anticlockwise;
    }

    /** The corners in the order of the line, the first not repeated at the end. */
    static List<Point> of(Path closed, double tolerance) {
        SafeRing ring = new SafeRing(tolerance, closed.signedArea() > 0);
        for (Segment segment : closed.segments()) {
            if (segment instanceof LineSegment) {
                ring.add(segment.start());
                ring.add(segment.end());
            } else {
                ring.curve(segment, 0, 1, 0);
            }
        }
        List<Point> corners = cleaned(ring.out);
        return corners.size() >= 3 && polygon(corners).isValid() ? corners : grown(closed, tolerance);
    }

    /** A closed JTS polygon of corners. */
    static Polygon polygon(List<Point> corners) {
        Coordinate[] all = new Coordinate[corners.size() + 1];
        for (int i = 0; i < corners.size(); i++) {
            all[i] = new Coordinate(corners.get(i).x(), corners.get(i).y());
        }
        all[corners.size()] = all[0].copy();
        return new GeometryFactory().createPolygon(all);
    }

    /** The corners of the outer line of what JTS made, the largest part if it fell apart. */
    static List<Point> corners(Geometry made) {
        Polygon largest = null;
        for (int i = 0; i < made.getNumGeometries(); i++) {
            if (made.getGeometryN(i) instanceof Polygon part
                    && (largest == null || part.getArea() > largest.getArea())) {
                largest = part;
            }
        }
        List<Point> corners = new ArrayList<>();
        if (largest != null) {
            Coordinate[] all = largest.getExteriorRing().getCoordinates();
            for (int i = 0; i + 1 < all.length; i++) {
                corners.add(new Point(all[i].x, all[i].y));
            }
        }
        return cleaned(corners);
    }

    private static List<Point> grown(Path closed, double tolerance) {
        Polygon rough = JtsForms.polygon(closed, tolerance / 4, new GeometryFactory());
        BufferParameters mitred = new BufferParameters(
                BufferParameters.DEFAULT_QUADRANT_SEGMENTS,
                BufferParameters.CAP_FLAT,
                BufferParameters.JOIN_MITRE,
                BufferParameters.DEFAULT_MITRE_LIMIT);
        return corners(org.locationtech.jts.operation.buffer.BufferOp.bufferOp(rough, tolerance / 2, mitred));
    }

    private void add(Point p) {
        if (out.isEmpty() || out.get(out.size() - 1).distance(p) > SAME) {
            out.add(p);
        }
    }

    private void curve(Segment segment, double from, double to, int depth) {
        Point p = segment.at(from);
        Point q = segment.at(to);
        Vector a = segment.tangent(from);
        Vector m = segment.tangent((from + to) / 2);
        Vector b = segment.tangent(to);
        Vector chord = q.minus(p);
        double turn = turn(a, m) + turn(m, b);
        boolean oneWay = turnsOneWay(segment, from, to)
                && turn(a, m) * turn(m, b) >= 0
                && a.cross(chord) * turn >= 0
                && chord.cross(b) * turn >= 0
                && Math.abs(turn) < MOST_TURN;
        double height = oneWay ? apexHeight(a, b, chord) : Double.POSITIVE_INFINITY;
        if (oneWay && height <= tolerance) {
            add(p);
            boolean outward = turn > 0 == anticlockwise;
            if (outward && height > SAME) {
                add(apex(p, a, b, chord));
            }
            add(q);
        } else if (depth < DEEPEST) {
            double middle = (from + to) / 2;
            curve(segment, from, middle, depth + 1);
            curve(segment, middle, to, depth + 1);
        } else {
            add(p);
            add(q);
        }
    }

    /** True of an arc; of a cubic if its control points turn one way, since its curvature then has one sign. */
    private static boolean turnsOneWay(Segment segment, double from, double to) {
        if (!(segment instanceof CubicSegment whole)) {
            return true;
        }
        CubicSegment cubic = from == 0 && to == 1 ? whole : whole.part(from, to);
        Vector first = cubic.control1().minus(cubic.start());
        Vector second = cubic.control2().minus(cubic.control1());
        Vector third = cubic.end().minus(cubic.control2());
        return first.cross(second) * second.cross(third) >= 0 && first.cross(third) * first.cross(second) >= 0;
    }

    /** How far one way turns to the other, in degrees, positive anticlockwise as seen. */
    private static double turn(Vector from, Vector to) {
        return StrictMath.toDegrees(StrictMath.atan2(from.cross(to), from.dot(to)));
    }

    /** How far the meeting of the end tangents lies from the chord. */
    private static double apexHeight(Vector a, Vector b, Vector chord) {
        double length = chord.length();
        double sine = Math.abs(a.cross(b));
        if (length <= SAME || sine < 1e-12) {
            return 0;
        }
        double alpha = Math.abs(a.cross(chord)) / length;
        double beta = Math.abs(chord.cross(b)) / length;
        return length * alpha * beta / sine;
    }

    private static Point apex(Point p, Vector a, Vector b, Vector chord) {
        return p.plus(a.times(chord.cross(b) / a.cross(b)));
    }

    /** Without corners that coincide or lie on the line between their neighbours. */
    private static List<Point> cleaned(List<Point> corners) {
        List<Point> kept = new ArrayList<>(corners);
        boolean again = true;
        while (again && kept.size() > 3) {
            again = false;
            for (int i = 0; i < kept.size() && kept.size() > 3; i++) {
                Point before = kept.get((i + kept.size() - 1) % kept.size());
                Point at = kept.get(i);
                Point after = kept.get((i + 1) % kept.size());
                Vector way = after.minus(before);
                double length = way.length();
                boolean same = at.distance(after) <= SAME;
                boolean between = length > SAME
                        && Math.abs(way.cross(at.minus(before))) / length <= SAME
                        && way.dot(at.minus(before)) >= 0
                        && way.dot(after.minus(at)) >= 0;
                if (same || between) {
                    kept.remove(i);
                    i--;
                    again = true;
                }
            }
        }
        return List.copyOf(kept);
    }
}
