package org.gusset.core.seam;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.pattern.Piece;

/**
 * How the pieces of a drawing are sewn together: every seam walked from end to end, what is found about it, and in which order.
 *
 * @param seams the seams, in the order in which they are sewn
 * @param findings one finding a seam, in the same order: whether its sides match
 * @param needs for each seam the names of the seams that must be sewn before it
 * @param diagnostics what else is wrong: corners that do not run on, slips of book-keeping, an order that cannot be sewn
 * @param hems what is turned up when all seams are sewn
 */
public record Sewing(
        List<SewnSeam> seams,
        List<Finding> findings,
        List<List<String>> needs,
        List<Diagnostic> diagnostics,
        List<Hem> hems) {
    /** A line of a piece that is no edge of it. */
    public record Inner(String name, Path path) {}

    /** An edge that is meant to make a point where it meets the fold. */
    public record Pointed(String piece, String edge) {}

    /**
     * What is known of the pieces beside themselves.
     *
     * @param places where the draft begins each piece
     * @param strips the names of those that are strips
     * @param inner the lines of each that are no edges
     * @param pointed edges that are meant to make a point at the fold
     * @param unknown pieces that seams name which could not be walked
     * @param leftOut for each piece the seams that name it and that the choices leave out
     */
    public record Known(
            Map<String, Place> places,
            Set<String> strips,
            Map<String, List<Inner>> inner,
            Set<Pointed> pointed,
            Set<String> unknown,
            Map<String, List<String>> leftOut) {
        public Known {
            places = Map.copyOf(places);
            strips = Set.copyOf(strips);
            inner = Map.copyOf(inner);
            pointed = Set.copyOf(pointed);
            unknown = Set.copyOf(unknown);
            leftOut = Map.copyOf(leftOut);
        }
    }

    public Sewing {
        seams = List.copyOf(seams);
        findings = List.copyOf(findings);
        needs = List.copyOf(needs);
        diagnostics = List.copyOf(diagnostics);
        hems = List.copyOf(hems);
    }

    /** Walks all seams and looks for what is wrong. */
    public static Sewing of(List<Piece> pieces, List<Walk> walks, Known known) {
        return WalkedSeams.of(pieces, walks, known).sewing();
    }
}
