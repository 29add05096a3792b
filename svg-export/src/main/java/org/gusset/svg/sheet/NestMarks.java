package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Mark;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;

/** The notches and inner marks of one piece in all its sizes; takes up their room. */
final class NestMarks {
    private static final Vector NOWHERE = new Vector(0, 0);

    /** Half the stroke of a notch across a stitching line, in mm. */
    private static final double ACROSS = 3;

    /** Strokes nearer than this are one, in mm. */
    private static final double ONE = 1e-6;

    private final Nest nest;
    private final String name;
    private final List<Nest.SizedPiece> sizes;
    private final Room room;
    private final SheetOptions options;
    private final Words words;
    private final Ids ids;

    NestMarks(Nest nest, String name, List<Nest.SizedPiece> sizes, Room room, SheetOptions options, Ids ids) {
        this.nest = nest;
        this.name = name;
        this.sizes = sizes;
        this.room = room;
        this.options = options;
        this.words = new Words(options.wording());
        this.ids = ids;
    }

    /** Adds a group with these paths, if there are any. */
    static void strokes(String id, String kind, Role role, List<Path> paths, List<Ink> ink) {
        if (!paths.isEmpty()) {
            List<Ink> strokes = new ArrayList<>();
            paths.forEach(path -> strokes.add(Ink.Stroke.of(role, path)));
            ink.add(new Ink.Group(id, kind, "", "", NOWHERE, strokes));
        }
    }

    private String mark(Nest.SizedPiece one) {
        return nest.sizes().get(one.number()).mark();
    }

    /** The notches of each size; those that sizes share are drawn once. */
    List<Ink> notches() {
        List<Ink> ink = new ArrayList<>();
        List<Path> known = new ArrayList<>();
        for (Nest.SizedPiece one : sizes) {
            List<Ink> strokes = new ArrayList<>();
            for (Notch notch : one.piece().notches()) {
                for (Notch.Tick tick : notch.ticks()) {
                    Path stroke = NestFigure.moved(stroke(tick, one.piece()), one);
                    if (known.stream().noneMatch(k -> same(k, stroke))) {
                        known.add(stroke);
                        strokes.add(Ink.Stroke.of(Role.NOTCH, stroke));
                        room.add(stroke);
                    }
                }
            }
            if (!strokes.isEmpty()) {
                ink.add(new Ink.Group(ids.of("notches", name, mark(one)), "notch-mark", "", "", NOWHERE, strokes));
            }
        }
        return ink;
    }

    /** From the cutting line inwards, or across the stitching line. */
    private Path stroke(Notch.Tick tick, Piece piece) {
        if (nest.line() == Nest.Line.CUTTING) {
            return Path.line(tick.outer(), tick.inner());
        }
        Vector way = tick.inner().minus(tick.outer()).unit();
        Point on = piece.stitching().nearest(tick.outer()).point();
        return Path.line(on.plus(way.times(-ACROSS)), on.plus(way.times(ACROSS)));
    }

    private static boolean same(Path a, Path b) {
        return a.start().distance(b.start()) <= ONE
                && a.end().distance(b.end()) <= ONE
                && a.at(a.length() / 2).distance(b.at(b.length() / 2)) <= ONE;
    }

    /**
     * The marks of each size. Lines to be marked and pieces to be placed are drawn as the outlines are: what a size has for itself in
     * its own kind of line, what several share as ever. All other marks have their usual signs, once where sizes share them.
     *
     * @param anchors takes up the places that want the name of a size
     */
    List<Ink> marks(Nest.SizedPiece smallest, List<SizeNames.Anchor> anchors) {
        List<Ink> ink = new ArrayList<>();
        InnerMarks marks = new InnerMarks(words, options.styles());
        List<InnerMarks.Drawn> signs = new ArrayList<>();
        List<InnerMarks.Drawn> placed = new ArrayList<>();
        Map<Role, List<List<Path>>> lines = new LinkedHashMap<>();
        for (Role role : List.of(Role.MARKED_LINE, Role.PLACED_PIECE)) {
            lines.put(role, new ArrayList<>());
        }
        for (Nest.SizedPiece one : sizes) {
            lines.values().forEach(bySize -> bySize.add(new ArrayList<>()));
            for (Mark mark : one.piece().marks()) {
                InnerMarks.Drawn drawn = marks.draw(mark.transformed(Transform.shift(one.shift())), "");
                drawn.lines().forEach(room::add);
                List<List<Path>> bySize = lines.get(drawn.role());
                if (bySize == null) {
                    sign(drawn, one, signs, anchors, ink);
                    continue;
                }
                bySize.get(bySize.size() - 1).addAll(drawn.lines());
                if (drawn.role() == Role.PLACED_PIECE) {
                    SizeNames.corners(drawn.lines().get(0))
                            .forEach(at -> anchors.add(new SizeNames.Anchor(one.number(), at)));
                    if (one.equals(smallest)) {
                        placed.add(drawn);
                    }
                }
            }
        }
        lines.forEach((role, bySize) -> markedLines(role, bySize, ink));
        ink.addAll(marks.captions(placed, room));
        // A label inside another piece's outline would be taken for that piece's.
        lines.getOrDefault(Role.PLACED_PIECE, List.of()).forEach(paths -> paths.forEach(room::fill));
        return ink;
    }

    private void markedLines(Role role, List<List<Path>> bySize, List<Ink> ink) {
        Together.Parted parted = new Together(bySize).parted();
        for (int i = 0; i < sizes.size(); i++) {
            strokes(
                    ids.of("marks", name, mark(sizes.get(i)), role.className()),
                    "mark",
                    sizes.size() == 1 ? role : Role.size(sizes.get(i).number()),
                    parted.own().get(i),
                    ink);
        }
        strokes(ids.of("marks", name, role.className()), "mark", role, parted.shared(), ink);
    }

    private void sign(
            InnerMarks.Drawn mark,
            Nest.SizedPiece one,
            List<InnerMarks.Drawn> known,
            List<SizeNames.Anchor> anchors,
            List<Ink> ink) {
        anchors.add(new SizeNames.Anchor(one.number(), anchor(mark)));
        if (known.stream().noneMatch(k -> same(mark, k))) {
            known.add(mark);
            Ink.Group group = mark.group();
            ink.add(new Ink.Group(
                    ids.of("mark", name, mark(one)), group.kind(), group.title(), "", NOWHERE, group.items()));
        }
    }

    private static boolean same(InnerMarks.Drawn a, InnerMarks.Drawn b) {
        if (a.role() != b.role() || a.lines().size() != b.lines().size()) {
            return false;
        }
        for (int i = 0; i < a.lines().size(); i++) {
            if (!same(a.lines().get(i), b.lines().get(i))) {
                return false;
            }
        }
        return true;
    }

    private static Point anchor(InnerMarks.Drawn mark) {
        Box box = mark.lines().stream().map(Path::bounds).reduce(Box::with).orElseThrow();
        return mark.role() == Role.DRILL || mark.role() == Role.BUTTON
                ? new Point(box.right(), box.top())
                : mark.lines().get(0).start();
    }
}
