package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.LineSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.geometry.Vector;

/**
 * A smooth stretch of an edge and its parallel copy outside, both in outline order. Edges are split into bands at their own
 * corners.
 *
 * @param edge the edge's number in the outline
 * @param seam the stitching line
 * @param width the allowance in mm
 * @param cut the parallel copy; the stitching line itself where the width is 0
 * @param tight the tightest place of a hollow that cannot bear the width
 */
record Band(int edge, Path seam, double width, Path cut, Optional<Tight> tight) {
    /** Turns below this, in radians, count as smooth: with 10 cm of allowance the copies' ends still coincide. */
    private static final double SMOOTH = 1e-8;

    /** Segments shorter than this carry no direction worth keeping, in mm. */
    private static final double SPECK = 1e-7;

    /** A place on a hollow curve, with the greatest allowance that it bears in mm. */
    record Tight(Point at, double most) {}

    /** The bands of one edge; {@code path} has a segment longer than a speck. */
    static List<Band> of(int edge, Path path, double width, Side side) {
        List<Band> bands = new ArrayList<>();
        List<Segment> run = new ArrayList<>();
        for (Segment segment : path.segments()) {
            if (segment.length() < SPECK) {
                continue;
            }
            if (!run.isEmpty()) {
                Vector before = run.get(run.size() - 1).tangent(1);
                if (Math.abs(side.turn(before, segment.tangent(0))) > SMOOTH) {
                    bands.add(smooth(edge, run, width, side));
                    run = new ArrayList<>();
                }
            }
            run.add(segment);
        }
        bands.add(smooth(edge, run, width, side));
        return bands;
    }

    private static Band smooth(int edge, List<Segment> run, double width, Side side) {
        Path seam = Path.of(run);
        if (width == 0) {
            return new Band(edge, seam, 0, seam, Optional.empty());
        }
        Chain copy = new Chain();
        Optional<Tight> tightest = Optional.empty();
        for (Segment segment : run) {
            OutsideCopy outside = new OutsideCopy(segment, width, side);
            Optional<Tight> tight = outside.tight();
            if (tight.isPresent()
                    && (tightest.isEmpty()
                            || tight.get().most() < tightest.get().most())) {
                tightest = tight;
            }
            copy.add(outside.segments());
        }
        return new Band(edge, seam, width, copy.path(), tightest);
    }

    Vector startWay() {
        return seam.segments().get(0).tangent(0);
    }

    Vector endWay() {
        return seam.segments().get(seam.segments().size() - 1).tangent(1);
    }

    /**
     * The cutting line between two places, counted in mm from its start; before the start and beyond the end it is prolonged
     * straight. Turned round if {@code from} is greater; without segments if there is no length.
     */
    List<Segment> stretch(double from, double to) {
        if (from > to) {
            List<Segment> back = stretch(to, from);
            return back.isEmpty() ? back : Path.of(back).reversed().segments();
        } else if (to - from <= SPECK) {
            return List.of();
        }
        double length = cut.length();
        if (to <= 0 || from >= length) {
            return List.of(new LineSegment(place(from), place(to)));
        }
        List<Segment> out = new ArrayList<>(
                cut.part(Math.max(0, from), Math.min(length, to)).segments());
        if (from < 0) {
            Segment first = out.get(0);
            if (first instanceof LineSegment) {
                out.set(0, new LineSegment(place(from), first.end()));
            } else {
                out.add(0, new LineSegment(place(from), first.start()));
            }
        }
        if (to > length) {
            Segment last = out.get(out.size() - 1);
            if (last instanceof LineSegment) {
                out.set(out.size() - 1, new LineSegment(last.start(), place(to)));
            } else {
                out.add(new LineSegment(last.end(), place(to)));
            }
        }
        return out;
    }

    private Point place(double s) {
        double length = cut.length();
        if (s < 0) {
            return cut.start().plus(startWay().times(s));
        }
        return s > length ? cut.end().plus(endWay().times(s - length)) : cut.at(s);
    }
}
