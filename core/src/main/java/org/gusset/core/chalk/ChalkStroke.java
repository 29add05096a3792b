package org.gusset.core.chalk;

import java.util.List;

/** One stroke of the chalk from a mark to the next. */
public sealed interface ChalkStroke {
    /** The edge or line that it belongs to. */
    String name();

    ChalkMark from();

    ChalkMark to();

    /** A straight stroke. */
    record Straight(String name, ChalkMark from, ChalkMark to) implements ChalkStroke {}

    /** Lies on the fold: nothing to chalk or cut. */
    record OnFold(String name, ChalkMark from, ChalkMark to) implements ChalkStroke {}

    /** Lies on the line or fold of another piece, out of which this one is cut. */
    record AsOther(String name, ChalkMark from, ChalkMark to, String piece) implements ChalkStroke {}

    /**
     * A curve, set off from the straight line between its rounded marks.
     *
     * @param length the straight line between the rounded marks, in mm
     * @param offsets the offsets, in order
     * @param off how far the line through the rounded marks and offsets, joined by straight strokes, strays from the curve as drafted, in mm
     */
    record Curved(String name, ChalkMark from, ChalkMark to, double length, List<Offset> offsets, double off)
            implements ChalkStroke {
        public Curved {
            offsets = List.copyOf(offsets);
        }
    }

    /**
     * One offset of a curve.
     *
     * @param along how far along the straight line, in mm, a multiple of the step
     * @param by how far square off it, rounded to the tape: positive into the piece for an outline, to the left for other lines as one looks from the
     *     first mark to the last
     * @param error how far it was rounded
     */
    record Offset(double along, double by, double error) {}
}
