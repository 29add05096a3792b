package org.gusset.core.chalk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Grain;
import org.gusset.core.pattern.Piece;

/** Finds what the marks of a piece are set off from: its fold, else a straight edge along the warp, else the grain line. */
final class Bases {
    /** How far a line may be bent, a point beyond an edge, or an edge off the warp over its length, in mm. */
    private static final double HAIR = 0.01;

    /** An edge shorter than this share of the piece is no base. */
    private static final double LONG_ENOUGH = 0.25;

    /** How far the flattened line strays, in mm. */
    private static final double FLAT = 0.05;

    private final Piece piece;
    private final ChalkLine line;
    private final List<Point> points;

    Bases(Piece piece, ChalkLine line) {
        this.piece = piece;
        this.line = line;
        this.points = (line == ChalkLine.STITCHING ? piece.stitching() : piece.cutting()).flatten(FLAT);
    }

    ChalkFrame frame() {
        Optional<Edge> fold = piece.fold();
        if (fold.isPresent()) {
            Path path = fold.get().path();
            return frame(
                    ChalkFrame.Base.FOLD,
                    fold.get().name(),
                    path.start(),
                    down(path.end().minus(path.start())));
        }
        Optional<Grain> grain = piece.grain();
        if (grain.isEmpty()) {
            return frame(ChalkFrame.Base.UPRIGHT, "", leftmost(), Vector.DOWN);
        }
        Vector down = down(grain.get().to().minus(grain.get().from()));
        return longestEdge(down)
                .map(edge -> frame(ChalkFrame.Base.EDGE, edge.name(), path(edge).start(), down))
                .orElseGet(() -> frame(ChalkFrame.Base.GRAIN, "", grain.get().from(), down));
    }

    private Path path(Edge edge) {
        return line == ChalkLine.STITCHING ? edge.path() : edge.cut();
    }

    /** The way along a line that runs down, or to the right if it is level. */
    private static Vector down(Vector along) {
        Vector unit = along.unit();
        boolean up = Math.abs(unit.dy()) > 1e-9 ? unit.dy() < 0 : unit.dx() < 0;
        return up ? unit.opposite() : unit;
    }

    private Optional<Edge> longestEdge(Vector down) {
        double high = Double.POSITIVE_INFINITY;
        double low = Double.NEGATIVE_INFINITY;
        for (Point p : points) {
            double at = down.dot(p.minus(Point.ORIGIN));
            high = Math.min(high, at);
            low = Math.max(low, at);
        }
        Edge longest = null;
        double least = LONG_ENOUGH * (low - high);
        for (Edge edge : piece.edges()) {
            Vector along = path(edge).end().minus(path(edge).start());
            boolean alongWarp = path(edge).straight() && Math.abs(down.cross(along)) <= HAIR;
            if (alongWarp && along.length() > least && oneSide(path(edge).start(), down)) {
                longest = edge;
                least = along.length();
            }
        }
        return Optional.ofNullable(longest);
    }

    private boolean oneSide(Point on, Vector down) {
        boolean left = false;
        boolean right = false;
        for (Point p : points) {
            double off = down.cross(p.minus(on));
            left |= off > HAIR;
            right |= off < -HAIR;
        }
        return !(left && right);
    }

    private Point leftmost() {
        Point least = points.get(0);
        for (Point p : points) {
            least = p.x() < least.x() ? p : least;
        }
        return least;
    }

    private ChalkFrame frame(ChalkFrame.Base base, String edge, Point on, Vector down) {
        Vector across = down.left();
        double sum = 0;
        double high = Double.POSITIVE_INFINITY;
        List<Double> offs = new ArrayList<>();
        for (Point p : points) {
            offs.add(across.dot(p.minus(on)));
            high = Math.min(high, down.dot(p.minus(on)));
        }
        for (double off : offs) {
            sum += off;
        }
        boolean turned = base != ChalkFrame.Base.GRAIN && sum < 0;
        return new ChalkFrame(base, edge, on.plus(down.times(high)), turned ? across.opposite() : across, down);
    }
}
