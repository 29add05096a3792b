package org.gusset.core.seam;

import java.util.List;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Position;
import org.jspecify.annotations.Nullable;

/**
 * One edge, or a stretch of one, that a seam names.
 *
 * @param words as the draft names it: {@code all Front.neck_edge}
 * @param piece the piece on which it lies; empty if it lies on none
 * @param edge the edge's name in the outline; empty if it is no whole edge
 * @param path the edge as drawn, in the way in which it was written, in the frame of the finished piece
 * @param taken what darts, gathers and pleats take up on it, none overlapping another, in order along the path
 * @param copies how many copies of it the seam takes in: 1, or all that are worn
 * @param turned true if the next copy is the mirror image of the one before: of a pair, or beyond a fold
 * @param place where the seam names it
 */
public record Run(
        String words,
        String piece,
        String edge,
        Path path,
        List<Taken> taken,
        int copies,
        boolean turned,
        Place place) {
    /** A point farther from the path than this does not lie on it, in mm. */
    static final double OFF = 1e-2;

    /**
     * A stretch that is brought to less.
     *
     * @param from the arc length along the path at which it begins, in mm
     * @param to where it ends
     * @param finished what is left of it, 0 for a dart
     */
    public record Taken(double from, double to, double finished) {}

    public Run {
        taken = List.copyOf(taken);
    }

    /** The length of one copy at the stitching line with darts and pleats closed, in mm. */
    public double sewn() {
        return sewnAt(path.length());
    }

    /** How far a place is from the start of the path when darts and pleats are closed; {@code s} is its arc length as drawn. */
    public double sewnAt(double s) {
        double sewn = s;
        for (Taken one : taken) {
            double within = Math.min(Math.max(s - one.from(), 0), one.to() - one.from());
            double share = one.to() > one.from() ? one.finished() / (one.to() - one.from()) : 1;
            sewn -= within * (1 - share);
        }
        return sewn;
    }

    /** Where a point lies along one copy when darts and pleats are closed, in mm; NaN if it does not lie on the path. */
    public double sewnAt(Point point) {
        Position at = path.nearest(point);
        return at.distance() <= OFF ? sewnAt(at.s()) : Double.NaN;
    }

    /** True if a place as drawn lies in the mouth of a dart, or where a dart, gathers or pleats begin or end. */
    boolean isTaken(double s) {
        for (Taken one : taken) {
            boolean end = Math.abs(s - one.from()) <= OFF || Math.abs(s - one.to()) <= OFF;
            if (end || (one.finished() == 0 && s > one.from() && s < one.to())) {
                return true;
            }
        }
        return false;
    }

    /** Written out for the start of short runs, see docs/decisions/0034. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof Run that
                        && words.equals(that.words)
                        && piece.equals(that.piece)
                        && edge.equals(that.edge)
                        && copies == that.copies
                        && turned == that.turned
                        && path.equals(that.path)
                        && taken.equals(that.taken)
                        && place.equals(that.place));
    }

    @Override
    public int hashCode() {
        return 31 * (31 * (31 * words.hashCode() + piece.hashCode()) + edge.hashCode()) + copies;
    }
}
