package org.gusset.core.draft;

import java.util.List;
import org.gusset.core.geometry.Point;

/** Everything a piece names: its values, points and paths, in file order. */
public record PieceValues(String piece, List<NamedValue> values, List<NamedPoint> points, List<NamedLine> lines) {
    /** A named point, in mm. */
    public record NamedPoint(String name, Point point) {}

    /**
     * A named line, curve or arc.
     *
     * @param length its length in mm
     * @param sewn its length less what darts and fullness take up
     * @param edge true if it is part of the outline
     */
    public record NamedLine(String name, double length, double sewn, boolean edge) {}

    public PieceValues {
        values = List.copyOf(values);
        points = List.copyOf(points);
        lines = List.copyOf(lines);
    }
}
