package org.gusset.svg.lesson;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Mark;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.sheet.Outlines;
import org.gusset.svg.style.StyleTable;

/** Draws what makes a piece of its lines: the cutting line, the fold, notches, the grain and marks. */
final class FinishedPiece {
    private static final double GRAIN_HEAD = 9;
    private static final double LEAST_HEAD = 3;
    private static final double NOTCH = 5;
    private static final double RING = 3;

    private final PieceFrame frame;
    private final Crowd crowd;
    private final Naming naming;
    private final LessonWords words;
    private final StyleTable styles;
    private final List<Label> labels = new ArrayList<>();

    FinishedPiece(PieceFrame frame, Crowd crowd, Naming naming, LessonWords words, StyleTable styles) {
        this.frame = frame;
        this.crowd = crowd;
        this.naming = naming;
        this.words = words;
        this.styles = styles;
    }

    /** Words that belong to a group and stand beside a line. */
    private record Label(String group, Role role, String text, Path beside) {}

    /** Everything without its words, each group under the word of the language that it is told by. */
    List<Ink.Group> draw(Piece piece) {
        List<Ink.Group> groups = new ArrayList<>();
        add(groups, "outline", outline(piece));
        add(groups, "allow", allowances(piece));
        add(groups, "notch", notches(piece));
        add(groups, "grain", grain(piece));
        add(groups, "mark", marks(piece));
        return groups;
    }

    /** The groups with their words, where these find room. */
    List<Ink.Group> lettered(List<Ink.Group> groups) {
        List<Ink.Group> lettered = new ArrayList<>();
        for (Ink.Group group : groups) {
            List<Ink> items = new ArrayList<>(group.items());
            for (Label label : labels) {
                if (label.group().equals(group.title())) {
                    items.addAll(naming.atLine(Lettered.of(label.role(), label.text(), styles), label.beside()));
                }
            }
            lettered.add(
                    new Ink.Group(group.id(), group.kind(), group.title(), group.description(), group.shift(), items));
        }
        return lettered;
    }

    private static void add(List<Ink.Group> groups, String word, List<Ink> ink) {
        if (!ink.isEmpty()) {
            groups.add(new Ink.Group("finish-" + word, Ink.Group.NAMED, word, "", new Vector(0, 0), ink));
        }
    }

    /** The outline has a name and an allowance for each edge. */
    private List<Ink> outline(Piece piece) {
        List<Ink> ink = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            Path path = line(ink, Role.DRAWN_BEFORE, edge.path(), Crowd.LIGHT);
            labels.add(new Label("outline", Role.NAME_NOW, words.edge(edge), path));
        }
        return ink;
    }

    private List<Ink> allowances(Piece piece) {
        List<Ink> ink = new ArrayList<>();
        for (Ink.Stroke stroke : Outlines.cutting(piece)) {
            line(ink, stroke.role() == Role.FOLD ? Role.FOLD_NOW : Role.DRAWN_NOW, stroke.path(), Crowd.STRONG);
        }
        return ink;
    }

    private List<Ink> notches(Piece piece) {
        List<Ink> ink = new ArrayList<>();
        for (Notch notch : piece.notches()) {
            for (Notch.Tick tick : notch.ticks()) {
                Point outer = frame.toPicture().apply(tick.outer());
                Point inner = frame.toPicture().apply(tick.inner());
                Vector way = inner.minus(outer);
                // On a small picture a notch true to scale would not be seen.
                double length = Math.max(NOTCH, way.length());
                Path stroke = way.length() < 1e-6
                        ? Path.line(outer, outer.plus(Vector.DOWN.times(length)))
                        : Path.line(
                                outer.plus(way.unit().times(-1)),
                                outer.plus(way.unit().times(length)));
                ink.add(Ink.Stroke.of(Role.DRAWN_NOW, stroke));
                crowd.add(stroke, Crowd.STRONG);
            }
        }
        return ink;
    }

    private List<Ink> grain(Piece piece) {
        List<Ink> ink = new ArrayList<>();
        piece.grain().ifPresent(grain -> {
            Point from = frame.toPicture().apply(grain.from());
            Point to = frame.toPicture().apply(grain.to());
            double head = Math.min(GRAIN_HEAD, from.distance(to) / 4);
            if (head > LEAST_HEAD) {
                Vector way = to.minus(from).unit();
                Path shaft = Path.line(from.plus(way.times(head * 0.9)), to.plus(way.times(-head * 0.9)));
                ink.add(Ink.Stroke.of(Role.GRAIN_NOW, shaft));
                crowd.add(shaft, Crowd.STRONG);
                for (Ink.Fill tip : List.of(
                        Dimensions.head(Role.GRAIN_NOW, to, way, head),
                        Dimensions.head(Role.GRAIN_NOW, from, way.opposite(), head))) {
                    ink.add(tip);
                    crowd.add(tip.outline(), Crowd.STRONG);
                }
                labels.add(new Label("grain", Role.NAME_NOW, words.grain(grain.bias()), shaft));
            }
        });
        return ink;
    }

    private List<Ink> marks(Piece piece) {
        List<Ink> ink = new ArrayList<>();
        for (Mark mark : piece.marks()) {
            if (mark instanceof Mark.Drill drill) {
                ring(ink, drill.at());
            } else if (mark instanceof Mark.Button button) {
                ring(ink, button.at());
            } else if (mark instanceof Mark.Buttonhole hole) {
                line(ink, Role.DRAWN_NOW, hole.along(), Crowd.STRONG);
            } else if (mark instanceof Mark.Line along) {
                line(ink, Role.MARKED_NOW, along.along(), Crowd.STRONG);
            } else if (mark instanceof Mark.Gathers gathers) {
                line(ink, Role.MARKED_NOW, gathers.along(), Crowd.STRONG);
            } else if (mark instanceof Mark.Pleat pleat) {
                line(ink, Role.MARKED_NOW, pleat.fold(), Crowd.STRONG);
                line(ink, Role.MARKED_NOW, pleat.onto(), Crowd.STRONG);
            } else if (mark instanceof Mark.Placed placed) {
                Path path = line(ink, Role.MARKED_NOW, placed.outline(), Crowd.STRONG);
                labels.add(new Label("mark", Role.NAME_NOW, placed.piece().replace('_', ' '), path));
            }
        }
        return ink;
    }

    private void ring(List<Ink> ink, Point at) {
        Path ring = Path.arc(frame.toPicture().apply(at), RING, 0, 360);
        ink.add(Ink.Stroke.of(Role.DRAWN_NOW, ring));
        crowd.add(ring, Crowd.STRONG);
    }

    private Path line(List<Ink> ink, Role role, Path path, double weight) {
        Path moved = path.transformed(frame.toPicture());
        ink.add(Ink.Stroke.of(role, moved));
        crowd.add(moved, weight);
        return moved;
    }
}
