package org.gusset.core.pattern;

/**
 * How the allowances of two neighbouring edges meet.
 *
 * @param first the edge before the corner, in outline order
 * @param second the edge after it
 * @param form the form; {@code SQUARED} and {@code MIRRORED} are said of one of the two edges
 * @param to the edge to which the corner is squared or mirrored; empty for the other forms
 */
public record Corner(String first, String second, Form form, String to) {
    /** The forms of a corner. */
    public enum Form {
        /**
         * Both cutting lines run on straight until they meet. A mitre longer than twice the wider allowance is cut off there, square
         * to the line from the corner to its point: the bisector, where both allowances are as wide.
         */
        MITRED,
        /**
         * The allowance of the edge {@code to} ends square to its stitching line, where that line prolonged straight meets the
         * neighbour's cutting line. So the seam along {@code to} can be sewn and pressed first, and its end lies on the neighbour's
         * cut edge.
         */
        SQUARED,
        /**
         * The neighbour's cutting line is mirrored over the tangent of the edge {@code to} at the corner, so that the allowance lies
         * on the neighbour's own cut edge when turned.
         */
        MIRRORED,
        /** Cut off like a long mitre, but where the wider allowance ends. */
        BLUNT,
        /** The piece is meant to make a point or a dip there when it is opened out of the fold; the cutting lines are mitred. */
        POINTED
    }
}
