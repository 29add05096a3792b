package org.gusset.core.grade;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Vector;
import org.gusset.core.measure.TableCell;

/**
 * The grade rules: how every corner of every piece moves from size to size.
 *
 * @param sizes the names of the sizes in the chart's order
 * @param corners the corners, piece by piece in file order, those of a piece in the order of its outline
 */
public record GradeRules(List<String> sizes, List<CornerRule> corners) {
    /**
     * Moves that differ by no more than this, in mm, are alike. Coordinates of a draft without unknowns are good to a few billionths of
     * a millimetre; an unknown is settled to a millionth, and what hangs on it cannot be told apart more finely.
     */
    public static final double ALIKE = 1e-6;

    /** Decimals of a millimetre in the table. */
    private static final int DECIMALS = 6;

    public GradeRules {
        sizes = List.copyOf(sizes);
        corners = List.copyOf(corners);
    }

    static GradeRules of(List<Grade.Sized> sizes) {
        return new GradeRules(sizes.stream().map(Grade.Sized::name).toList(), new CornersBySize(sizes).rules());
    }

    /** The rule of one corner. */
    public Optional<CornerRule> corner(String piece, String corner) {
        return corners.stream()
                .filter(rule -> rule.piece().equals(piece) && rule.corner().equals(corner))
                .findFirst();
    }

    /** How many rules run so. */
    public int count(Course course) {
        return (int) corners.stream().filter(rule -> rule.course() == course).count();
    }

    /**
     * The table as CSV (RFC 4180, lines end with a line feed): {@code piece, corner, size, right_mm, down_mm}, a row for each corner and
     * size. A row is the move from the size before, in mm; that of the first size is 0, 0. Both cells are empty where the corner is
     * not in this size or not in the one before. Names that a spreadsheet would take for a formula are guarded, see {@link TableCell}. Rounded to a millionth of a millimetre, halves away from zero.
     */
    public String csv() {
        StringBuilder csv = new StringBuilder("piece,corner,size,right_mm,down_mm\n");
        for (CornerRule rule : corners) {
            for (int i = 0; i < sizes.size(); i++) {
                Optional<Vector> move = rule.move(i);
                csv.append(TableCell.written(rule.piece())).append(',');
                csv.append(TableCell.written(rule.corner())).append(',');
                csv.append(TableCell.written(sizes.get(i))).append(',');
                csv.append(move.map(m -> decimal(m.dx())).orElse("")).append(',');
                csv.append(move.map(m -> decimal(m.dy())).orElse("")).append('\n');
            }
        }
        return csv.toString();
    }

    private static String decimal(double mm) {
        BigDecimal rounded = BigDecimal.valueOf(mm).setScale(DECIMALS, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** A course and the sizes at which it breaks. */
    record Ran(Course course, List<Integer> breaks) {}

    /** How the moves of a corner run, given the chart's steps into each size. */
    static Ran ran(List<Optional<Vector>> moves, List<double[]> steps) {
        List<Integer> known = new ArrayList<>();
        for (int i = 1; i < moves.size(); i++) {
            if (moves.get(i).isPresent()) {
                known.add(i);
            }
        }
        if (known.isEmpty()) {
            return new Ran(Course.NONE, List.of());
        }
        if (alike(known.stream().map(i -> moves.get(i).orElseThrow()).toList())) {
            return new Ran(Course.CONSTANT, List.of());
        }
        ChartSteps.Explained explained = new ChartSteps.Explained(ALIKE);
        List<Integer> bends = new ArrayList<>();
        List<Integer> breaks = new ArrayList<>();
        for (int k = 0; k < known.size(); k++) {
            int size = known.get(k);
            Vector move = moves.get(size).orElseThrow();
            if (!explained.take(steps.get(size), move.dx(), move.dy())) {
                bends.add(size);
            }
            if (k > 0 && !alike(List.of(moves.get(known.get(k - 1)).orElseThrow(), move))) {
                breaks.add(size);
            }
        }
        return bends.isEmpty() ? new Ran(Course.WITH_CHART, breaks) : new Ran(Course.BENDS, bends);
    }

    private static boolean alike(List<Vector> moves) {
        double left = moves.stream().mapToDouble(Vector::dx).min().orElse(0);
        double right = moves.stream().mapToDouble(Vector::dx).max().orElse(0);
        double top = moves.stream().mapToDouble(Vector::dy).min().orElse(0);
        double bottom = moves.stream().mapToDouble(Vector::dy).max().orElse(0);
        return right - left <= ALIKE && bottom - top <= ALIKE;
    }
}
