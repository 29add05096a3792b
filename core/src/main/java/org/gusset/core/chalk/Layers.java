package org.gusset.core.chalk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.jts.JtsForms;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Which pieces are cut out of others: two folds are laid one on the other, the piece with the shallower neck is cut through all layers, then
 * the one that it holds within, and with which it shares at least half of its line, out of the upper fold only.
 */
final class Layers {
    /** How far a line may lie beyond another and still count as on it, in mm. */
    static final double ON_LINE = 0.05;

    /** How far flattened lines stray, in mm. */
    private static final double FLAT = 0.01;

    private static final double SHARED = 0.5;

    private Layers() {}

    /** For each piece that is cut out of another the one that is cut through all layers before it. */
    static Map<String, String> of(List<Piece> pieces) {
        Map<String, String> within = new LinkedHashMap<>();
        for (Piece inner : pieces) {
            for (Piece outer : pieces) {
                boolean free = !within.containsKey(outer.name())
                        && !within.containsValue(inner.name())
                        && !within.containsValue(outer.name())
                        && !within.containsKey(inner.name());
                if (free && !inner.name().equals(outer.name()) && outOf(inner, outer)) {
                    within.put(inner.name(), outer.name());
                }
            }
        }
        return within;
    }

    private static boolean outOf(Piece inner, Piece outer) {
        Optional<Edge> fold = outer.fold();
        if (fold.isEmpty() || inner.cuts().isEmpty() || outer.cuts().isEmpty() || !sameCut(inner, outer)) {
            return false;
        }
        Optional<Edge> own = inner.fold();
        if (own.isPresent() && !onOneLine(own.get().path(), fold.get().path())) {
            return false;
        }
        if (inner.cutArea() >= outer.cutArea()) {
            return false;
        }
        Polygon around = JtsForms.polygon(outer.cutting(), FLAT, new GeometryFactory());
        Polygon held = JtsForms.polygon(inner.cutting(), FLAT, new GeometryFactory());
        return around.buffer(ON_LINE).covers(held) && shared(inner, outer) >= SHARED;
    }

    /** Both give as many halves from the same cloth: on folds, or in pairs. */
    private static boolean sameCut(Piece inner, Piece outer) {
        Cut one = inner.cuts().get(0);
        Cut other = outer.cuts().get(0);
        boolean halves = one.arrangement() == Cut.Arrangement.ON_FOLD || one.arrangement() == Cut.Arrangement.PAIRS;
        return halves
                && other.arrangement() == Cut.Arrangement.ON_FOLD
                && one.count() == other.count()
                && one.cloth().equals(other.cloth())
                && inner.cuts().size() == outer.cuts().size();
    }

    private static boolean onOneLine(Path one, Path other) {
        Vector way = other.end().minus(other.start()).unit();
        return Math.abs(way.cross(one.start().minus(other.start()))) <= ON_LINE
                && Math.abs(way.cross(one.end().minus(other.start()))) <= ON_LINE;
    }

    /** Which share of the inner piece's cutting line lies on the outer's. */
    private static double shared(Piece inner, Piece outer) {
        double shared = 0;
        for (Edge edge : inner.edges()) {
            if (liesOn(edge.cut(), outer.cutting())) {
                shared += edge.cut().length();
            }
        }
        return shared / inner.cutting().length();
    }

    /** True if a path lies on another all along. */
    static boolean liesOn(Path path, Path line) {
        for (Point p : path.flatten(FLAT)) {
            if (line.nearest(p).distance() > ON_LINE) {
                return false;
            }
        }
        return true;
    }
}
