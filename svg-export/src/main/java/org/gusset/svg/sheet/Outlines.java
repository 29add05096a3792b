package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;

/** The edges of a piece: where it is cut, where it is sewn, and where it lies on a fold and is not cut. */
public final class Outlines {
    /** How far off the fold a stretch of the cutting line may lie and still be taken for it, in mm. */
    private static final double ON_FOLD = 1e-3;

    private Outlines() {}

    static List<Ink> of(Piece piece, Ids ids) {
        List<Ink> ink = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            if (!edge.onFold()) {
                ink.add(Ink.Stroke.of(ids.of("edge", piece.name(), edge.name()), Role.STITCHING, edge.path()));
            }
        }
        for (Run run : runs(piece)) {
            Role role = run.onFold() ? Role.FOLD : Role.CUTTING;
            ink.add(Ink.Stroke.of(ids.of(role.className(), piece.name()), role, Path.of(run.segments())));
        }
        return ink;
    }

    /** The cutting line in stretches, those that lie on a fold in the role of the fold. */
    public static List<Ink.Stroke> cutting(Piece piece) {
        return runs(piece).stream()
                .map(run -> Ink.Stroke.of(run.onFold() ? Role.FOLD : Role.CUTTING, Path.of(run.segments())))
                .toList();
    }

    /** Neighbouring segments of the cutting line that are cut, or that lie on the fold. */
    record Run(boolean onFold, List<Segment> segments) {}

    /** The cutting line from where it first leaves the fold; all of it if there is no fold. */
    static List<Run> runs(Piece piece) {
        List<Segment> segments = piece.cutting().segments();
        List<Edge> folds = piece.edges().stream().filter(Edge::onFold).toList();
        List<Edge> others = piece.edges().stream().filter(e -> !e.onFold()).toList();
        List<Boolean> onFold = segments.stream()
                .map(s -> folds.stream().anyMatch(fold -> along(s, fold.path()))
                        && others.stream().noneMatch(edge -> follows(s, edge.path())))
                .toList();
        if (!onFold.contains(true) || !onFold.contains(false)) {
            return List.of(new Run(false, segments));
        }
        int count = segments.size();
        int first = 0;
        while (onFold.get(first) || !onFold.get((first + count - 1) % count)) {
            first++;
        }
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int at = (first + i) % count;
            if (runs.isEmpty() || runs.get(runs.size() - 1).onFold() != onFold.get(at)) {
                runs.add(new Run(onFold.get(at), new ArrayList<>()));
            }
            runs.get(runs.size() - 1).segments().add(segments.get(at));
        }
        return runs;
    }

    /** True if a segment of the cutting line lies on a fold; a straight fold goes on through the allowances at its ends. */
    private static boolean along(Segment segment, Path fold) {
        return onFold(segment.start(), fold) && onFold(segment.at(0.5), fold) && onFold(segment.end(), fold);
    }

    /** True if a segment lies on an edge, as on a raw edge in line with the fold, such as a slit. */
    private static boolean follows(Segment segment, Path edge) {
        return edge.nearest(segment.at(0.5)).distance() <= ON_FOLD;
    }

    private static boolean onFold(Point p, Path fold) {
        if (!fold.straight()) {
            return fold.nearest(p).distance() <= ON_FOLD;
        }
        Vector way = fold.end().minus(fold.start()).unit();
        return Math.abs(p.minus(fold.start()).cross(way)) <= ON_FOLD;
    }
}
