package org.gusset.core.chalk;

/** Which line of a piece is chalked. */
public enum ChalkLine {
    /** Where the seam is sewn; allowances are added outside it. */
    STITCHING,
    /** Where the cloth is cut; allowances are within it. */
    CUTTING
}
