package org.gusset.core.chalk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.PieceValues;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.pattern.Piece;

/**
 * The pieces of a drawing as marks for chalk, in the order in which they are cut: each piece that is cut out of another comes after it.
 *
 * @param line which line is chalked
 * @param tape what distances are rounded to
 * @param pieces the pieces
 */
public record ChalkList(ChalkLine line, Tape tape, List<ChalkPiece> pieces) {
    public ChalkList {
        pieces = List.copyOf(pieces);
    }

    /** The list of a drawing's sound pieces; marks bear the names of the draft's points. */
    public static ChalkList of(Drawing drawing, ChalkLine line, Tape tape) {
        Map<String, Map<String, Point>> points = new LinkedHashMap<>();
        for (PieceValues values : drawing.pieceValues()) {
            Map<String, Point> own = new LinkedHashMap<>();
            values.points().forEach(p -> own.put(p.name(), p.point()));
            points.put(values.piece(), own);
        }
        return of(drawing.pieces(), points, line, tape);
    }

    /**
     * The list of pieces.
     *
     * @param points the named points of each piece, by the piece's name
     */
    public static ChalkList of(List<Piece> pieces, Map<String, Map<String, Point>> points, ChalkLine line, Tape tape) {
        Map<String, String> within = Layers.of(pieces);
        List<ChalkPiece> chalked = new ArrayList<>();
        for (Piece piece : pieces) {
            if (within.containsKey(piece.name())) {
                continue;
            }
            List<Piece> trimmed = pieces.stream()
                    .filter(p -> piece.name().equals(within.get(p.name())))
                    .toList();
            ChalkFrame frame = new Bases(piece, line).frame();
            Chalking chalking = new Chalking(line, tape, frame);
            chalked.add(chalking.of(
                    piece,
                    points.getOrDefault(piece.name(), Map.of()),
                    trimmed.stream().map(Piece::name).toList()));
            for (Piece other : trimmed) {
                chalked.add(chalking.outOf(piece, other, points.getOrDefault(other.name(), Map.of())));
            }
        }
        return new ChalkList(line, tape, chalked);
    }

    /** The line of a piece that is chalked. */
    static Path line(Piece piece, ChalkLine line) {
        return line == ChalkLine.STITCHING ? piece.stitching() : piece.cutting();
    }
}
