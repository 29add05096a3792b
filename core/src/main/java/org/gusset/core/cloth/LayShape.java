package org.gusset.core.cloth;

import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.pattern.JoinPlan;
import org.gusset.core.pattern.Piece;

/**
 * A shape that is cut, in the frame of the cloth: its warp along x, its origin at the point at which it is matched, if it is.
 *
 * @param piece the piece
 * @param toLay from the piece's own frame to this one
 * @param ring the corners, as wide as the cutting line or wider
 * @param half the half that lies at a fold of the cloth, its fold on y = 0 and the rest above; empty for what has no fold along the warp
 * @param opened the whole of a piece with a fold
 * @param alikeWithNap true if the mirror image is the same piece without turning it
 * @param alike true if the mirror image is the same piece, turned or not
 * @param bias true if the warp runs at 45 degrees through it
 * @param oneHand true if its mirror image is of no use even where both hands are alike: lengths of a bias strip, which are joined
 * @param join how it is joined of lengths, of which this is one
 * @param matched true if its pattern is to be the same at its origin as at others'
 * @param fold how far the matched point lies from the fold, if both are there
 */
record LayShape(
        Piece piece,
        Transform toLay,
        List<Point> ring,
        Optional<Half> half,
        Optional<List<Point>> opened,
        boolean alikeWithNap,
        boolean alike,
        boolean bias,
        boolean oneHand,
        Optional<JoinPlan> join,
        boolean matched,
        Optional<Double> fold) {
    /** The half at the fold, with the motion from the piece's own frame to its own. */
    record Half(Transform toLay, List<Point> ring) {}

    boolean alike(boolean oneWay) {
        return !oneHand && (oneWay ? alikeWithNap : alike);
    }

    /** The area of one copy, of a piece on a fold that of the whole. */
    double area() {
        return SafeRing.polygon(opened.orElse(ring)).getArea();
    }
}
