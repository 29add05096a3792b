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
        /** Both cutting lines run on until they meet; very long ones are cut blunt. */
        MITRED,
        /** The cut runs square off the stitching line of the edge {@code to}, at the corner. */
        SQUARED,
        /** The neighbour's cutting line is mirrored over the edge {@code to}, so that it lies flat when turned. */
        MIRRORED,
        /** Cut square to the bisector where the wider allowance ends. */
        BLUNT
    }
}
