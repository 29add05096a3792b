package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;

/** Whether a piece is its own mirror image, so that a left one and a right one are alike. */
final class Symmetry {
    /** Places closer than this are one, in mm. */
    private static final double ONE = 0.05;

    private static final int SAMPLES = 48;

    private Symmetry() {}

    /** True if a line exists over which the stitching line and the notches are mirrored onto themselves. */
    static boolean isSymmetric(Piece piece) {
        Map<Cell, List<Notch>> notches = new HashMap<>();
        for (Notch notch : piece.notches()) {
            notches.computeIfAbsent(Cell.of(notch.at()), k -> new ArrayList<>()).add(notch);
        }
        Path line = piece.stitching();
        double length = line.length();
        // A mirror carries corners to corners, so its line cuts the outline half way between the first and another one.
        double corner = 0;
        for (Edge edge : piece.edges()) {
            for (double middle : new double[] {corner / 2, (corner + length) / 2}) {
                if (mirrored(piece, notches, line, middle)) {
                    return true;
                }
            }
            corner += edge.path().length();
        }
        return false;
    }

    private static boolean mirrored(Piece piece, Map<Cell, List<Notch>> notches, Path line, double middle) {
        double length = line.length();
        Point one = at(line, middle);
        Point other = at(line, middle + length / 2);
        if (one.distance(other) < Path.COINCIDE) {
            return false;
        }
        Transform over = Transform.mirror(one, other.minus(one));
        for (int i = 1; i < SAMPLES; i++) {
            double off = i * length / 2 / SAMPLES;
            if (over.apply(at(line, middle + off)).distance(at(line, middle - off)) > ONE) {
                return false;
            }
        }
        return piece.notches().stream().allMatch(n -> hasTwin(n, over, notches));
    }

    private static boolean hasTwin(Notch notch, Transform over, Map<Cell, List<Notch>> notches) {
        Point image = over.apply(notch.at());
        Cell cell = Cell.of(image);
        for (int i = 0; i < 9; i++) {
            boolean twin =
                    notches.getOrDefault(new Cell(cell.x() + i % 3 - 1, cell.y() + i / 3 - 1), List.of()).stream()
                            .anyMatch(n -> n.at().distance(image) <= 2 * ONE
                                    && n.ticks().size() == notch.ticks().size());
            if (twin) {
                return true;
            }
        }
        return false;
    }

    /** A square as wide as notches may be apart, so that twins lie in neighbouring ones. */
    private record Cell(long x, long y) {
        static Cell of(Point at) {
            return new Cell((long) Math.floor(at.x() / (2 * ONE)), (long) Math.floor(at.y() / (2 * ONE)));
        }
    }

    private static Point at(Path line, double s) {
        double length = line.length();
        double within = s % length;
        return line.at(within < 0 ? within + length : within);
    }
}
