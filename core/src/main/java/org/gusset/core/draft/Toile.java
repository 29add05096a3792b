package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.geometry.Path;
import org.gusset.core.pattern.BalanceLines;
import org.gusset.core.pattern.Piece;
import org.gusset.core.pattern.Widening;

/**
 * The pieces of a trial garment: wide allowances to let out of, balance lines to judge it by, and no facings.
 *
 * <p>A facing is a part taken from within a distance of another piece's edge, a piece with {@code Facing} in its name, and a piece
 * that is cut without allowance only, as from fusing.
 *
 * @param allowance what every sewn edge and hem has at least, in mm
 * @param pieces the pieces to cut, in file order
 * @param balance the balance lines of all pieces
 * @param facings the names of the pieces that a trial garment goes without
 * @param narrow the names of pieces whose outline cannot bear the wide allowance, and that keep their own
 */
public record Toile(
        double allowance, List<Piece> pieces, List<BalanceLine> balance, List<String> facings, List<String> narrow) {
    /** What a trial garment has to let out of unless told otherwise, in mm: one inch in round figures; common practice, no source. */
    public static final double ALLOWANCE = 25;

    /** A stretch of a guide inside a piece, from outline to outline. */
    public record BalanceLine(String piece, String name, Path along) {}

    public Toile {
        pieces = List.copyOf(pieces);
        balance = List.copyOf(balance);
        facings = List.copyOf(facings);
        narrow = List.copyOf(narrow);
    }

    static Toile of(Drawing drawing, Evaluation evaluation, double allowance) {
        List<Piece> pieces = new ArrayList<>();
        List<BalanceLine> balance = new ArrayList<>();
        List<String> facings = new ArrayList<>();
        List<String> narrow = new ArrayList<>();
        for (Piece piece : drawing.pieces()) {
            Optional<Draft.PieceNodes> nodes = drawing.draft().pieces().stream()
                    .filter(n -> n.name().equals(piece.name()))
                    .findFirst();
            if (isFacing(piece, nodes)) {
                facings.add(piece.name());
                continue;
            }
            Outcome<Piece> wide = Widening.of(piece, allowance);
            if (wide.value().isEmpty()) {
                narrow.add(piece.name());
            }
            pieces.add(wide.value().orElse(piece));
            nodes.ifPresent(n -> balance(piece, n, evaluation, balance));
        }
        return new Toile(allowance, pieces, balance, facings, narrow);
    }

    private static boolean isFacing(Piece piece, Optional<Draft.PieceNodes> nodes) {
        return nodes.filter(Draft.PieceNodes::facing).isPresent()
                || piece.name().toLowerCase(Locale.ROOT).contains("facing")
                || (!piece.cuts().isEmpty()
                        && piece.cuts().stream()
                                .allMatch(cut -> cut.allowance().isPresent()
                                        && cut.allowance().get() == 0));
    }

    private static void balance(Piece piece, Draft.PieceNodes nodes, Evaluation evaluation, List<BalanceLine> balance) {
        for (Draft.Named named : nodes.named()) {
            Object value = evaluation.value(named.node()).orElse(null);
            if (value instanceof Path path && path.endless()) {
                for (Path along : BalanceLines.of(piece, path)) {
                    balance.add(new BalanceLine(piece.name(), named.name(), along));
                }
            }
        }
    }
}
