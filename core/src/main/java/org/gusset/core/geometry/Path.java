package org.gusset.core.geometry;

import java.util.List;

/**
 * An analytic path: one or more segments that meet end to end (within {@link #COINCIDE}). Immutable. Positions on it are arc
 * lengths s from its start, in millimetres.
 */
public final class Path {
    /** Ends closer than this coincide, in mm. */
    public static final double COINCIDE = 1e-6;

    private final List<Segment> segments;
    private final boolean endless;

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
        return new Path(List.copyOf(segments), false);
    }

    public static Path of(Segment... segments) {
        return of(List.of(segments));
    }

    /** A straight or bent line through two or more points; stretches shorter than {@link #COINCIDE} are kept. */
    public static Path line(Point... points) {
        throw new UnsupportedOperationException();
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

    /** True if every segment is straight and all lie on one line. */
    public boolean straight() {
        throw new UnsupportedOperationException();
    }

    public boolean closed() {
        throw new UnsupportedOperationException();
    }

    public Point start() {
        return segments.get(0).start();
    }

    public Point end() {
        return segments.get(segments.size() - 1).end();
    }

    /** The arc length in mm, to 1e-10 relative. */
    public double length() {
        throw new UnsupportedOperationException();
    }

    /** The point at arc length s; s is clamped to the path (not clamped on an endless path). */
    public Point at(double s) {
        throw new UnsupportedOperationException();
    }

    /** The unit way of travel at s; at a corner that of the stretch that begins there, at the end that of the last. */
    public Vector tangent(double s) {
        throw new UnsupportedOperationException();
    }

    /** The unit way of travel at s; at a corner that of the stretch that ends there. */
    public Vector tangentBefore(double s) {
        throw new UnsupportedOperationException();
    }

    /** Signed curvature in 1/mm at s, positive where the path turns left as seen. */
    public double curvature(double s) {
        throw new UnsupportedOperationException();
    }

    public Path reversed() {
        throw new UnsupportedOperationException();
    }

    public Path transformed(Transform by) {
        throw new UnsupportedOperationException();
    }

    /** The stretch from arc length {@code from} to {@code to}; turned round if {@code from} is greater. */
    public Path part(double from, double to) {
        throw new UnsupportedOperationException();
    }

    /** The nearest place to a point; the first one along the path if several are equally near. */
    public Position nearest(Point to) {
        throw new UnsupportedOperationException();
    }

    /** Every place where this path meets another, in the order along this path. Stretches in common give their two ends. */
    public List<Meeting> meetings(Path other) {
        throw new UnsupportedOperationException();
    }

    /** Every place where this path crosses or touches itself, but for neighbours that meet end to end and a closed path's ends. */
    public List<Meeting> selfMeetings() {
        throw new UnsupportedOperationException();
    }

    /**
     * The parallel copy at a distance in mm, positive to the left of travel as seen. Lines and arcs stay exact; cubics are
     * fitted within 0.001 mm. At corners the neighbours are prolonged (outside) or cut (inside) until they meet; an arc or curve
     * too tight for the distance is cut where the copy crosses itself.
     */
    public Path parallel(double distance) {
        throw new UnsupportedOperationException();
    }

    /** This path and then the others, which must each start where the one before ends. */
    public static Path joined(List<Path> paths) {
        throw new UnsupportedOperationException();
    }

    /** Points along the path, both ends among them, such that the straight lines between stray at most {@code tolerance} mm. */
    public List<Point> flatten(double tolerance) {
        throw new UnsupportedOperationException();
    }

    public Box bounds() {
        throw new UnsupportedOperationException();
    }

    /** The area in square mm that a closed path encloses: positive if it runs anticlockwise as seen. */
    public double signedArea() {
        throw new UnsupportedOperationException();
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
