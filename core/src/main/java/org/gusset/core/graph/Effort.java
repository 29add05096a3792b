package org.gusset.core.graph;

import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.ArcSegment;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;

/**
 * What one evaluation has spent of the steps that it may take, those of its solves among them. Steps are counted, never timed: the same
 * inputs take the same steps everywhere. One stands for about 50 ns of an ordinary machine of 2025; how many a thing counts was measured
 * on its worst case. For use by one thread.
 */
public final class Effort {
    /** A node. */
    private static final int NODE = 10;

    /** A segment, point or mark that is made: it takes memory too. */
    private static final int MAKING = 40;

    /** A line or an arc that is looked at. */
    private static final int PLAIN = 3;

    /** A cubic that is looked at. */
    private static final int CUBIC = 20;

    /** A place on a path with cubics, whose arc lengths have no closed form. */
    private static final int PLACE = 200;

    /** A cubic whose parallel copy is fitted. */
    private static final int FITTED = 2000;

    /** Pairs of segments that count one step, where their boxes are apart. */
    private static final int APART = 10;

    /** Two segments whose boxes overlap. */
    private static final int NEAR = 20;

    /** Two cubics whose boxes overlap. */
    private static final int CUBICS = 1000;

    /** Pairs of meetings that count one step. */
    private static final int MEETINGS = 4;

    private final Bounds bounds;
    private long spent;
    private boolean exhausted;

    private Effort(Bounds bounds) {
        this.bounds = bounds;
    }

    public static Effort within(Bounds bounds) {
        return new Effort(bounds);
    }

    public Bounds bounds() {
        return bounds;
    }

    public long spent() {
        return spent;
    }

    /** True if more was asked for than there is; nothing can be worked out any more. */
    public boolean exhausted() {
        return exhausted;
    }

    /** True if so much is left. */
    public boolean has(long steps) {
        return !exhausted && steps <= bounds.steps() - spent;
    }

    /**
     * Takes steps.
     *
     * @throws Fault if that is more than is left
     */
    public void spend(long steps) {
        if (!has(steps)) {
            exhausted = true;
            throw new Fault(
                    Diagnostic.of(EffortCode.TOO_MANY_STEPS, Place.nowhere(), "most", Fact.number(bounds.steps()))
                            .with(
                                    Hint.of(
                                            "steps.fewer",
                                            "Look for solves within solves, for paths that are joined of many copies, and for pieces with very many edges.")));
        }
        spent += steps;
    }

    /** Takes the steps of looking at a value: finding a place on it, going along it. */
    public void look(Object value) {
        if (value instanceof Path path) {
            spend(looking(path));
        } else {
            spend(value instanceof Sized sized ? PLAIN * sized.size() : 1);
        }
    }

    /** The steps of looking at a path. */
    public static long looking(Path path) {
        long cubics = cubics(path);
        return PLAIN * (path.segments().size() - cubics) + (cubics == 0 ? 0 : PLACE + CUBIC * cubics);
    }

    /**
     * Takes the steps of having made a value.
     *
     * @throws Fault if that is more than is left, or if the value has too many segments or lies too far out
     */
    public void make(Object value) {
        long size = 0;
        if (value instanceof Path path) {
            size = path.segments().size();
            checkSegments(size);
            checkReach(path);
        } else if (value instanceof Point point) {
            checkReach(point);
        } else if (value instanceof Sized sized) {
            size = sized.size();
        }
        spend(NODE + MAKING * size);
    }

    /** Takes the steps of finding points along a path. */
    public void places(Path path, long count) {
        spend(count * (cubics(path) == 0 ? NODE : 2 * PLACE));
    }

    /** Takes the steps of drawing a parallel copy, which is fitted and cleared of its loops. */
    public void copy(Path path) {
        spend(FITTED * cubics(path) + NODE * (long) path.segments().size());
    }

    /**
     * Takes the steps of looking for the meetings of two paths, or of one with itself: few for segments that are apart, more for those
     * whose boxes overlap, most for two cubics; and since every meeting is held against every other, their pairs.
     */
    public void compare(Path one, Path other) {
        List<Segment> first = one.segments();
        List<Segment> second = other.segments();
        spend((long) first.size() * second.size() / APART);
        Box[] boxes = new Box[second.size()];
        for (int i = 0; i < boxes.length; i++) {
            boxes[i] = second.get(i).bounds();
        }
        boolean endless = one.endless() || other.endless();
        boolean own = one.equals(other);
        long near = 0;
        for (int i = 0; i < first.size(); i++) {
            Box box = first.get(i).bounds().grown(Path.COINCIDE);
            // Neighbours on one path meet where they join, which is no meeting.
            for (int j = own ? i + 2 : 0; j < boxes.length; j++) {
                if (endless || box.meets(boxes[j])) {
                    near++;
                    boolean both = first.get(i) instanceof CubicSegment && second.get(j) instanceof CubicSegment;
                    spend(both ? CUBICS : NEAR);
                }
            }
        }
        spend(near * near / MEETINGS);
    }

    /**
     * Refuses a path before it is made.
     *
     * @throws Fault if it would have too many segments
     */
    public void checkSegments(long count) {
        if (count > bounds.segments()) {
            throw Fault.of(
                    EffortCode.TOO_MANY_SEGMENTS, "count", Fact.number(count), "most", Fact.number(bounds.segments()));
        }
    }

    /**
     * Refuses a path that lies too far out; an endless one is measured by the two points through which it was drawn.
     *
     * @throws Fault if a point of it, or one from which it is drawn, lies beyond the reach
     */
    public void checkReach(Path path) {
        for (Segment segment : path.segments()) {
            if (segment instanceof ArcSegment arc) {
                checkReach(arc.centre());
                checkReach(new Point(arc.radius(), 0));
            } else {
                checkReach(segment.start());
                checkReach(segment.end());
            }
            if (segment instanceof CubicSegment cubic) {
                checkReach(cubic.control1());
                checkReach(cubic.control2());
            }
        }
    }

    /**
     * Refuses a distance at which something is to be drawn.
     *
     * @throws Fault if it is beyond the reach
     */
    public void checkReach(double distance) {
        checkReach(new Point(distance, 0));
    }

    private void checkReach(Point point) {
        if (!(Math.abs(point.x()) <= bounds.reach() && Math.abs(point.y()) <= bounds.reach())) {
            throw new Fault(Diagnostic.of(EffortCode.OUT_OF_REACH, Place.nowhere(), "most", Fact.length(bounds.reach()))
                    .with(Hint.of("reach.unit", "Look for digits too many, or for a wrong unit.")));
        }
    }

    private static long cubics(Path path) {
        long cubics = 0;
        for (Segment segment : path.segments()) {
            cubics += segment instanceof CubicSegment ? 1 : 0;
        }
        return cubics;
    }
}
