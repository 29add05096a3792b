package org.gusset.core.seam;

/**
 * A mark along one side of a seam.
 *
 * @param at how far from the start of the seam it lies, in mm
 * @param strokes the strokes of a notch; 0 where two edges, or two copies of one, are joined
 * @param piece its piece
 * @param edge its edge, as the seam names it
 */
public record SeamMark(double at, int strokes, String piece, String edge) {
    boolean joint() {
        return strokes == 0;
    }
}
