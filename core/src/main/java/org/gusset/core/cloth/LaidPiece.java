package org.gusset.core.cloth;

import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.JoinPlan;
import org.gusset.core.pattern.Piece;

/**
 * A piece in its place, cut through all layers of its section.
 *
 * @param piece the piece as it is cut, with the allowances of this cut
 * @param way how it lies
 * @param layers through how many layers it is cut
 * @param place from the piece's own frame to the section, where x runs along the cloth and y from the fold; of a strip that is joined from
 *     the frame of one length, whose warp runs along x
 * @param ring its corners in the section: as wide as the cutting line, or wider by the flattening
 * @param gives what comes out of it
 * @param spare what of that is wanted nowhere
 * @param inner the piece that is then cut out of half the layers, if front and back are cut at once
 * @param join how the strip is joined of which this is one length
 */
public record LaidPiece(
        Piece piece,
        LaidWay way,
        int layers,
        Transform place,
        List<Point> ring,
        Copies gives,
        Copies spare,
        Optional<Piece> inner,
        Optional<JoinPlan> join) {
    /** A unit way that leans so little runs across: a piece on the bias that is turned by a right angle. */
    private static final double ACROSS = 1e-9;

    public LaidPiece {
        ring = List.copyOf(ring);
    }

    /** True if the paper lies wrong side up. */
    public boolean mirrored() {
        return place.mirrors();
    }

    /** True if the paper lies the other way up than the piece is drawn: what is below on it points to the start of the cloth. */
    public boolean turned() {
        return join.isEmpty() && warp().dx() < -ACROSS;
    }

    /** The way of the piece's own warp in the section, a unit way. */
    public Vector warp() {
        if (join.isPresent()) {
            return place.apply(Vector.RIGHT).unit();
        }
        Vector own = piece.grain()
                .map(g -> g.to().minus(g.from()).unit())
                .filter(v -> v.length() > 0)
                .orElse(Vector.DOWN);
        boolean up = own.dy() < -1e-9 || (Math.abs(own.dy()) <= 1e-9 && own.dx() < 0);
        return place.apply(up ? own.opposite() : own).unit();
    }

    /** Where along the section it begins. */
    public double from() {
        return ring.stream().mapToDouble(Point::x).min().orElse(0);
    }

    /** Where along the section it ends. */
    public double to() {
        return ring.stream().mapToDouble(Point::x).max().orElse(0);
    }
}
