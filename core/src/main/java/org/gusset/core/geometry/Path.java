package org.gusset.core.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;
import org.jspecify.annotations.Nullable;

/**
 * An analytic path: one or more segments that meet end to end (within {@link #COINCIDE}). Immutable. Positions on it are arc
 * lengths s from its start, in millimetres.
 */
public final class Path {
    /** Ends closer than this coincide, in mm. */
    public static final double COINCIDE = 1e-6;

    /** Arc lengths closer than this to a joint are at the joint, in mm. */
    static final double JOINT = 1e-9;

    private final List<Segment> segments;
    private final boolean endless;

    /** Made when first asked for; two threads may both make it and get the same. */
    private @Nullable Stations stations;

    private @Nullable Boxes boxes;

    private Path(List<Segment> segments, boolean endless) {
        this.segments = List.copyOf(segments);
        this.endless = endless;
    }

    /**
     * A path of segments that meet end to end.
     *
     * @throws IllegalArgumentException if there is none, or two neighbours do not meet
     */
    public static Path of(List<? extends Segment> segments) {
        if (segments.isEmpty()) {
            throw new IllegalArgumentException("a path needs a segment");
        }
        for (int i = 1; i < segments.size(); i++) {
            double gap = segments.get(i).start().distance(segments.get(i - 1).end());
            if (!(gap <= COINCIDE)) {
                throw new IllegalArgumentException(
                        "segment " + i + " starts " + gap + " mm from the end of the one before");
            }
        }
        return new Path(List.copyOf(segments), false);
    }

    public static Path of(Segment... segments) {
        return of(List.of(segments));
    }

    /** A straight or bent line through two or more points; stretches shorter than {@link #COINCIDE} are kept. */
    public static Path line(Point... points) {
        List<Segment> segments = new ArrayList<>();
        for (int i = 1; i < points.length; i++) {
            segments.add(new LineSegment(points[i - 1], points[i]));
        }
        return of(segments);
    }

    /**
     * A construction line: a straight path that has no ends for meeting other paths and mirroring.
     * Its start and end are the two points it was drawn through.
     */
    public static Path guide(Point from, Point to) {
        return new Path(List.of(new LineSegment(from, to)), true);
    }

    /** A full circle or a part of one. */
    public static Path arc(Point centre, double radius, double fromDegrees, double sweepDegrees) {
        return of(new ArcSegment(centre, radius, fromDegrees, sweepDegrees));
    }

    public List<Segment> segments() {
        return segments;
    }

    /** True for a construction line without ends. */
    public boolean endless() {
        return endless;
    }

    /** True if every segment is straight and all lie on one line (within {@link #COINCIDE}); false without length. */
    public boolean straight() {
        List<Point> points = new ArrayList<>();
        for (Segment segment : segments) {
            points.add(segment.start());
            if (segment instanceof CubicSegment cubic) {
                points.add(cubic.control1());
                points.add(cubic.control2());
            } else if (segment instanceof ArcSegment && segment.length() > COINCIDE) {
                return false;
            }
            points.add(segment.end());
        }
        Point from = start();
        Point furthest = from;
        for (Point p : points) {
            if (p.distance(from) > furthest.distance(from)) {
                furthest = p;
            }
        }
        Vector way = furthest.minus(from).unit();
        for (Point p : points) {
            if (!(Math.abs(way.cross(p.minus(from))) <= COINCIDE)) {
                return false;
            }
        }
        return furthest.distance(from) > COINCIDE;
    }

    /** True if the end coincides with the start, for a path that has length. */
    public boolean closed() {
        return !endless && start().distance(end()) <= COINCIDE && longerThan(COINCIDE);
    }

    /** True if the path is longer than this; mostly seen without its length. */
    private boolean longerThan(double least) {
        for (Segment segment : segments) {
            if (segment.start().distance(segment.end()) > least) {
                return true;
            }
        }
        return length() > least;
    }

    public Point start() {
        return segments.get(0).start();
    }

    public Point end() {
        return segments.get(segments.size() - 1).end();
    }

    /** The arc length in mm, to 1e-10 relative. */
    public double length() {
        return stations().length();
    }

    /** The point at arc length s; s is clamped to the path (not clamped on an endless path). */
    public Point at(double s) {
        if (endless) {
            return start().plus(tangent(0).times(s));
        }
        Stations.Place place = stations().after(s);
        return segments.get(place.index()).at(place.t());
    }

    /** The unit way of travel at s; at a corner that of the stretch that begins there, at the end that of the last. */
    public Vector tangent(double s) {
        Stations.Place place = stations().after(s);
        return segments.get(place.index()).tangent(place.t());
    }

    /** The unit way of travel at s; at a corner that of the stretch that ends there. */
    public Vector tangentBefore(double s) {
        Stations.Place place = stations().before(s);
        return segments.get(place.index()).tangent(place.t());
    }

    /** Signed curvature in 1/mm at s, positive where the path turns left as seen; at a joint that of what begins there. */
    public double curvature(double s) {
        Stations.Place place = stations().after(s);
        return segments.get(place.index()).curvature(place.t());
    }

    public Path reversed() {
        List<Segment> out = new ArrayList<>();
        for (Segment segment : segments) {
            out.add(segment.reversed());
        }
        Collections.reverse(out);
        return new Path(out, endless);
    }

    public Path transformed(Transform by) {
        List<Segment> out = new ArrayList<>();
        for (Segment segment : segments) {
            out.add(segment.transformed(by));
        }
        return new Path(out, endless);
    }

    /**
     * The stretch from arc length {@code from} to {@code to}; turned round if {@code from} is greater. Both are clamped to the
     * path, but not on an endless one, whose part has ends. Within 1e-9 mm of a joint the cut is made at the joint. A stretch
     * without length is a line without length.
     */
    public Path part(double from, double to) {
        if (endless) {
            return line(at(from), at(to));
        } else if (from > to) {
            return part(to, from).reversed();
        }
        Stations.Place first = stations().after(from);
        Stations.Place last = stations().before(to);
        boolean nothing = first.index() > last.index() || (first.index() == last.index() && first.t() >= last.t());
        if (nothing || Math.min(to, length()) - Math.max(from, 0) <= JOINT) {
            return line(at(from), at(from));
        }
        List<Segment> out = new ArrayList<>();
        for (int i = first.index(); i <= last.index(); i++) {
            double t0 = i == first.index() ? first.t() : 0;
            double t1 = i == last.index() ? last.t() : 1;
            Segment segment = segments.get(i);
            out.add(t0 == 0 && t1 == 1 ? segment : segment.part(t0, t1));
        }
        return new Path(out, false);
    }

    /** The nearest place to a point; the first one along the path if several are equally near. */
    public Position nearest(Point to) {
        return NearestOnPath.of(this, to);
    }

    /**
     * Every place where this path meets another, in the order along this path. What comes within {@link #COINCIDE} meets; a touch
     * and a meeting at a joint count once, stretches in common give their two ends. On endless paths s may be negative or beyond
     * the length; two endless paths on one line meet nowhere.
     */
    public List<Meeting> meetings(Path other) {
        return PathMeetings.of(this, other);
    }

    /**
     * Every place where this path crosses or touches itself, but for neighbours that meet end to end and a closed path's ends;
     * s is less than otherS. Loops shorter than 0.05 mm do not count.
     */
    public List<Meeting> selfMeetings() {
        return endless ? List.of() : PathMeetings.withItself(this, PathMeetings.STRETCH);
    }

    /**
     * The parallel copy at a distance in mm, positive to the left of travel as seen. Lines and arcs stay exact; cubics are
     * fitted within 0.001 mm. At corners the neighbours are prolonged straight until they meet, at most by 4 times the distance
     * and then bevelled (outside), or cut (inside) where they meet; an arc or curve too tight for the distance is cut where the
     * copy crosses itself. The copy of a closed path is closed, that of an endless one endless; distance 0 gives this path.
     *
     * @throws Fault if nothing is left of the copy, or no single path
     */
    public Path parallel(double distance) {
        return ParallelPath.of(this, distance);
    }

    /**
     * This path and then the others, which must each start where the one before ends.
     *
     * @throws Fault if there is a gap between two
     * @throws IllegalArgumentException if there is no path
     */
    public static Path joined(List<Path> paths) {
        List<Segment> out = new ArrayList<>();
        for (int i = 0; i < paths.size(); i++) {
            if (i > 0) {
                double gap = paths.get(i).start().distance(paths.get(i - 1).end());
                if (!(gap <= COINCIDE)) {
                    throw Fault.of(GeometryCode.GAP, "first", i, "second", i + 1, "width", Fact.length(gap));
                }
            }
            out.addAll(paths.get(i).segments);
        }
        return of(out);
    }

    /** Points along the path, both ends among them, such that the straight lines between stray at most {@code tolerance} mm. */
    public List<Point> flatten(double tolerance) {
        return Flattening.of(segments, tolerance);
    }

    public Box bounds() {
        return boxes().bounds();
    }

    /**
     * The area in square mm that a closed path encloses: positive if it runs anticlockwise as seen. An open path is closed by its
     * chord.
     */
    public double signedArea() {
        return EnclosedArea.of(segments);
    }

    /** Where the segments begin and end along this path. */
    Stations stations() {
        Stations made = stations;
        if (made == null) {
            made = new Stations(segments);
            stations = made;
        }
        return made;
    }

    /** The boxes of the segments; many paths are only measured and never need them. */
    Boxes boxes() {
        Boxes made = boxes;
        if (made == null) {
            made = new Boxes(segments);
            boxes = made;
        }
        return made;
    }

    /** Segments equal, and both endless or not. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Path path && endless == path.endless && segments.equals(path.segments);
    }

    @Override
    public int hashCode() {
        return segments.hashCode();
    }

    @Override
    public String toString() {
        return (endless ? "guide " : "path ") + segments;
    }
}
