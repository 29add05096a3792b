package org.gusset.batch;

import java.util.List;

/**
 * What a draft gives for one body. Lengths in mm, areas in square mm unless the name says square cm.
 *
 * @param row the number of the body's row
 * @param body its name
 * @param proved true if nothing is wrong: every seam and check holds
 * @param estimated measures that a rule of the draft estimated
 * @param clothMm2 the cloth of all pieces, cut on their cutting lines, all copies and all cloths
 * @param clothCm2 the same in square cm
 * @param pieces each piece as it is cut from each cloth
 * @param cloths the sum for each cloth
 * @param findings every range, seam and check
 * @param seams the figures of every seam
 */
public record BodyResult(
        long row,
        String body,
        boolean proved,
        List<String> estimated,
        double clothMm2,
        double clothCm2,
        List<PieceArea> pieces,
        List<ClothArea> cloths,
        List<FindingResult> findings,
        List<SeamResult> seams)
        implements RowResult {
    public BodyResult {
        estimated = List.copyOf(estimated);
        pieces = List.copyOf(pieces);
        cloths = List.copyOf(cloths);
        findings = List.copyOf(findings);
        seams = List.copyOf(seams);
    }

    /**
     * One line of a piece's cutting list.
     *
     * @param piece the piece
     * @param cloth the cloth; empty if the draft does not say
     * @param copies how many are cut; one on a fold is one
     * @param oneMm2 the area of one, opened out if it is cut on a fold
     * @param allMm2 the area of all copies
     */
    public record PieceArea(String piece, String cloth, int copies, double oneMm2, double allMm2) {}

    /** The area of all that is cut from a cloth. */
    public record ClothArea(String cloth, double mm2) {}

    /**
     * What a range, seam or check found.
     *
     * @param finding its name
     * @param verdict {@code PASSED}, {@code FAILED}, {@code SKIPPED} or {@code UNKNOWN}
     * @param margin how far the worst figure is from failing; NaN if it looks at none
     * @param code the code of the message; empty if it passed
     * @param message the message in words; empty if it passed
     */
    public record FindingResult(String finding, String verdict, double margin, String code, String message) {}

    /**
     * The figures of a seam.
     *
     * @param seam its name
     * @param firstMm the length of the first side
     * @param secondMm that of the second
     * @param easeMm how much longer the first is
     * @param leastMm the least ease that is wanted
     * @param mostMm the most
     * @param toleranceMm how far it may be off
     * @param verdict whether it holds
     */
    public record SeamResult(
            String seam,
            double firstMm,
            double secondMm,
            double easeMm,
            double leastMm,
            double mostMm,
            double toleranceMm,
            String verdict) {}
}
