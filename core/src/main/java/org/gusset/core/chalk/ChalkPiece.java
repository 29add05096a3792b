package org.gusset.core.chalk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.gusset.core.pattern.Piece;

/**
 * One piece as marks.
 *
 * @param piece the piece
 * @param line which of its lines is chalked
 * @param frame what marks are set off from
 * @param within the piece through whose layers it is cut afterwards, in the upper fold only; empty if it is laid for itself
 * @param trimmed the pieces that are cut out of this one's upper fold afterwards
 * @param outline the strokes round the piece, each beginning where the one before ends
 * @param notches the notches
 * @param inner strokes inside the piece
 * @param spots single marks inside the piece
 */
public record ChalkPiece(
        Piece piece,
        ChalkLine line,
        ChalkFrame frame,
        String within,
        List<String> trimmed,
        List<ChalkStroke> outline,
        List<Notched> notches,
        List<ChalkStroke> inner,
        List<ChalkMark> spots) {
    /** A notch and its strokes. */
    public record Notched(ChalkMark mark, String edge, int strokes) {}

    public ChalkPiece {
        trimmed = List.copyOf(trimmed);
        outline = List.copyOf(outline);
        notches = List.copyOf(notches);
        inner = List.copyOf(inner);
        spots = List.copyOf(spots);
    }

    /** Every mark that is set, in working order; corners between two strokes that another piece has already are not. */
    public List<ChalkMark> marks() {
        Set<ChalkMark> marks = new LinkedHashSet<>();
        for (List<ChalkStroke> strokes : List.of(outline, inner)) {
            for (ChalkStroke stroke : strokes) {
                if (!(stroke instanceof ChalkStroke.AsOther)) {
                    marks.add(stroke.from());
                    marks.add(stroke.to());
                }
            }
        }
        notches.forEach(n -> marks.add(n.mark()));
        marks.addAll(spots);
        return new ArrayList<>(marks);
    }

    /** The largest error of rounding a mark, in mm. */
    public double largestError() {
        return marks().stream().mapToDouble(ChalkMark::error).max().orElse(0);
    }

    /** How far the worst curve strays when it is drawn again through its rounded marks, in mm. */
    public double largestStray() {
        return Stream.concat(outline.stream(), inner.stream())
                .filter(s -> s instanceof ChalkStroke.Curved)
                .mapToDouble(s -> ((ChalkStroke.Curved) s).off())
                .max()
                .orElse(0);
    }
}
