package org.gusset.core.chalk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;

/** A stretch of the line round a piece: an edge, or what corners put between two edges of the cutting line. */
record OutlineRun(String name, Path path, boolean onFold) {
    /** Ends that are nearer than this are one corner, in mm. */
    private static final double ONE_CORNER = 1e-3;

    /** The stretches in the order of the outline, each beginning where the one before ends. */
    static List<OutlineRun> round(Piece piece, ChalkLine line) {
        List<OutlineRun> runs = new ArrayList<>();
        List<Edge> edges = piece.edges();
        for (int i = 0; i < edges.size(); i++) {
            Edge edge = edges.get(i);
            Edge next = edges.get((i + 1) % edges.size());
            runs.add(
                    new OutlineRun(edge.name(), line == ChalkLine.STITCHING ? edge.path() : edge.cut(), edge.onFold()));
            if (line == ChalkLine.CUTTING) {
                Point from = edge.cut().end();
                Point to = next.cut().start();
                if (from.distance(to) > ONE_CORNER) {
                    runs.add(new OutlineRun(
                            "corner of " + spoken(edge.name()) + " and " + spoken(next.name()),
                            link(piece.cutting(), from, to),
                            false));
                }
            }
        }
        return runs;
    }

    /** The stretch of a closed line between two points, in its own direction. */
    private static Path link(Path closed, Point from, Point to) {
        double start = closed.nearest(from).s();
        double end = closed.nearest(to).s();
        if (start <= end) {
            return closed.part(start, end);
        }
        List<Path> parts = new ArrayList<>();
        if (closed.length() - start > ONE_CORNER) {
            parts.add(closed.part(start, closed.length()));
        }
        if (end > ONE_CORNER) {
            parts.add(closed.part(0, end));
        }
        return parts.isEmpty() ? Path.line(from, to) : Path.joined(parts);
    }

    /** The stretches walked the other way round. */
    static List<OutlineRun> backwards(List<OutlineRun> runs) {
        List<OutlineRun> back = new ArrayList<>();
        for (OutlineRun run : runs) {
            back.add(new OutlineRun(run.name(), run.path().reversed(), run.onFold()));
        }
        Collections.reverse(back);
        return back;
    }

    static String spoken(String name) {
        return name.replace('_', ' ');
    }
}
