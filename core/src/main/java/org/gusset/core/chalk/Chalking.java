package org.gusset.core.chalk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;

/** Turns pieces into marks and strokes set off from one frame. */
final class Chalking {
    /** A point this near to a named one is that one, in mm. */
    static final double NAMED = 1e-3;

    private final ChalkLine line;
    private final Tape tape;
    private final ChalkFrame frame;
    private final Strokes strokes;

    Chalking(ChalkLine line, Tape tape, ChalkFrame frame) {
        this.line = line;
        this.tape = tape;
        this.frame = frame;
        this.strokes = new Strokes(frame, tape);
    }

    /** A piece that is laid for itself, or through all layers. */
    ChalkPiece of(Piece piece, Map<String, Point> points, List<String> trimmed) {
        return chalked(piece, points, "", trimmed, Optional.empty());
    }

    /** A piece that is cut out of another's upper fold. */
    ChalkPiece outOf(Piece around, Piece piece, Map<String, Point> points) {
        return chalked(piece, points, around.name(), List.of(), Optional.of(ChalkList.line(around, line)));
    }

    private ChalkPiece chalked(
            Piece piece, Map<String, Point> points, String within, List<String> trimmed, Optional<Path> cutBefore) {
        List<OutlineRun> runs = ordered(OutlineRun.round(piece, line), piece);
        boolean left = ChalkList.line(piece, line).signedArea() > 0 == sameWay(runs, piece);
        List<ChalkMark> corners = corners(runs, piece, points);
        List<ChalkStroke> outline = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            OutlineRun run = runs.get(i);
            ChalkMark from = corners.get(i);
            ChalkMark to = corners.get((i + 1) % runs.size());
            if (cutBefore.isPresent() && (run.onFold() || Layers.liesOn(run.path(), cutBefore.get()))) {
                outline.add(new ChalkStroke.AsOther(run.name(), from, to, within));
            } else if (run.onFold()) {
                outline.add(new ChalkStroke.OnFold(run.name(), from, to));
            } else {
                outline.addAll(strokes.of(run.name(), run.path(), from, to, left ? 1 : -1));
            }
        }
        toOwnFirst(outline);
        InnerChalk inner = new InnerChalk(frame, tape, strokes, points);
        inner.take(piece.marks());
        return new ChalkPiece(
                piece, line, frame, within, trimmed, outline, notches(piece, points), inner.strokes(), inner.spots());
    }

    /** Begins with the first stroke of the piece's own. */
    private static void toOwnFirst(List<ChalkStroke> outline) {
        for (int i = 0; i < outline.size(); i++) {
            boolean own = !(outline.get(i) instanceof ChalkStroke.AsOther);
            boolean shared = outline.get((i + outline.size() - 1) % outline.size()) instanceof ChalkStroke.AsOther;
            if (own && shared) {
                Collections.rotate(outline, -i);
                return;
            }
        }
    }

    /** The stretches beginning at the top of the base and leading away from it; clockwise from the top, as one looks with the base at the left, if nothing lies on the base. */
    private List<OutlineRun> ordered(List<OutlineRun> runs, Piece piece) {
        int based = -1;
        for (int i = 0; i < runs.size(); i++) {
            if (!frame.edge().isEmpty() && runs.get(i).name().equals(frame.edge()) && onBase(runs.get(i))) {
                based = i;
            }
        }
        if (based >= 0) {
            Path path = runs.get(based).path();
            boolean runsDown = frame.down(path.start()) < frame.down(path.end());
            return runsDown ? rotated(OutlineRun.backwards(runs), runs.size() - based) : rotated(runs, based + 1);
        }
        boolean clockwise = ChalkList.line(piece, line).signedArea() < 0;
        List<OutlineRun> ordered = clockwise != frame.turned() ? runs : OutlineRun.backwards(runs);
        int top = 0;
        for (int i = 1; i < ordered.size(); i++) {
            Point best = ordered.get(top).path().start();
            Point here = ordered.get(i).path().start();
            double higher = frame.down(best) - frame.down(here);
            if (higher > NAMED || (higher > -NAMED && frame.across(here) < frame.across(best))) {
                top = i;
            }
        }
        return rotated(ordered, top);
    }

    private boolean onBase(OutlineRun run) {
        return Math.abs(frame.across(run.path().start())) < NAMED
                && Math.abs(frame.across(run.path().end())) < NAMED;
    }

    private static List<OutlineRun> rotated(List<OutlineRun> runs, int first) {
        List<OutlineRun> rotated = new ArrayList<>(runs);
        Collections.rotate(rotated, -first);
        return rotated;
    }

    /** True if the stretches still run the way of the outline. */
    private boolean sameWay(List<OutlineRun> runs, Piece piece) {
        Path whole = ChalkList.line(piece, line);
        Path first = runs.get(0).path();
        Vector way = first.tangent(first.length() / 2);
        return whole.tangent(whole.nearest(first.at(first.length() / 2)).s()).dot(way) > 0;
    }

    private List<ChalkMark> corners(List<OutlineRun> runs, Piece piece, Map<String, Point> points) {
        List<ChalkMark> corners = new ArrayList<>();
        Map<String, Integer> used = new HashMap<>();
        for (int i = 0; i < runs.size(); i++) {
            OutlineRun before = runs.get((i + runs.size() - 1) % runs.size());
            Point at = runs.get(i).path().start();
            String name =
                    name(at, points).or(() -> outside(piece, before, points)).orElse(OutlineRun.spoken(before.name()));
            int often = used.merge(name, 1, Integer::sum);
            corners.add(ChalkMark.of(often == 1 ? name : name + " (" + often + ")", at, frame, tape));
        }
        return corners;
    }

    /** A corner of the cutting line is called after that of the stitching line at the end of the same edge. */
    private Optional<String> outside(Piece piece, OutlineRun before, Map<String, Point> points) {
        if (line == ChalkLine.STITCHING) {
            return Optional.empty();
        }
        return piece.edge(before.name()).flatMap(edge -> {
            Point end = edge.cut().end().distance(before.path().end()) < NAMED
                    ? edge.path().end()
                    : edge.path().start();
            return name(end, points).map(n -> "outside " + n);
        });
    }

    static Optional<String> name(Point at, Map<String, Point> points) {
        return points.entrySet().stream()
                .filter(e -> e.getValue().distance(at) < NAMED)
                .map(e -> OutlineRun.spoken(e.getKey()))
                .findFirst();
    }

    private List<ChalkPiece.Notched> notches(Piece piece, Map<String, Point> points) {
        List<ChalkPiece.Notched> notches = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            Point at = notch.at();
            if (line == ChalkLine.CUTTING) {
                Notch.Tick middle = notch.ticks().get(notch.ticks().size() / 2);
                Notch.Tick other = notch.ticks().get((notch.ticks().size() - 1) / 2);
                at = middle.outer().toward(other.outer(), 0.5);
            }
            String name = name(notch.at(), points).orElse(OutlineRun.spoken(notch.edge()));
            notches.add(new ChalkPiece.Notched(
                    ChalkMark.of(name, at, frame, tape),
                    notch.edge(),
                    notch.ticks().size()));
        }
        return notches;
    }
}
