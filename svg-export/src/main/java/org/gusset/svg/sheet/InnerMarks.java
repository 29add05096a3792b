package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Mark;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/**
 * The marks inside a piece: a ringed dot for a drill hole, a ringed cross for a button, a barred line for a buttonhole, lines to be
 * marked, and outlines of pieces that are placed here. The first of each kind has its word beside it.
 */
final class InnerMarks {
    private static final double DRILL_RING = 2.5;
    private static final double BUTTON_RING = 4;
    private static final double BAR = 3;
    private static final double GAP = 1;

    private final Words words;
    private final StyleTable styles;
    private final Set<Role> named = EnumSet.noneOf(Role.class);

    InnerMarks(Words words, StyleTable styles) {
        this.words = words;
        this.styles = styles;
    }

    /** A mark drawn: its strokes, the lines that words keep clear of, and the word that belongs to it. */
    record Drawn(Ink.Group group, List<Path> lines, Role role, String word) {}

    Drawn draw(Mark mark, String id) {
        List<Ink> ink = new ArrayList<>();
        List<Path> lines = new ArrayList<>();
        Role role;
        if (mark instanceof Mark.Drill drill) {
            role = Role.DRILL;
            lines.add(Path.arc(drill.at(), DRILL_RING, 0, 360));
            ink.add(new Ink.Dot(role, drill.at(), 0.5));
        } else if (mark instanceof Mark.Button button) {
            role = Role.BUTTON;
            lines.add(Path.arc(button.at(), BUTTON_RING, 0, 360));
            double arm = BUTTON_RING * 0.7;
            Point at = button.at();
            lines.add(Path.line(new Point(at.x() - arm, at.y() - arm), new Point(at.x() + arm, at.y() + arm)));
            lines.add(Path.line(new Point(at.x() - arm, at.y() + arm), new Point(at.x() + arm, at.y() - arm)));
        } else if (mark instanceof Mark.Buttonhole hole) {
            role = Role.BUTTONHOLE;
            lines.add(hole.along());
            lines.add(bar(hole.along().start(), hole.along().tangent(0)));
            lines.add(bar(hole.along().end(), hole.along().tangent(hole.along().length())));
        } else if (mark instanceof Mark.Placed placed) {
            role = Role.PLACED_PIECE;
            lines.add(placed.outline());
        } else if (mark instanceof Mark.Gathers gathers) {
            role = Role.GATHERS;
            lines.add(gathers.along());
        } else if (mark instanceof Mark.Pleat pleat) {
            role = Role.PLEAT;
            lines.add(pleat.fold());
            lines.add(pleat.onto());
            ink.addAll(arrow(pleat));
        } else {
            role = Role.MARKED_LINE;
            lines.add(((Mark.Line) mark).along());
        }
        lines.forEach(line -> ink.add(Ink.Stroke.of(role, line)));
        String word = word(mark, role);
        return new Drawn(new Ink.Group(id, "mark", word, "", new Vector(0, 0), ink), lines, role, word);
    }

    private String word(Mark mark, Role role) {
        if (mark instanceof Mark.Placed placed) {
            return Words.spoken(placed.piece());
        }
        return mark instanceof Mark.Gathers gathers ? words.gatheredTo(gathers.to()) : words.line(role);
    }

    /** From the fold of a pleat to where it comes to lie, in the middle of its lines. */
    private static List<Ink> arrow(Mark.Pleat pleat) {
        Point from = pleat.fold().at(pleat.fold().length() / 2);
        Point to = pleat.onto().at(pleat.onto().length() / 2);
        if (from.distance(to) < BAR) {
            return List.of();
        }
        Vector way = to.minus(from).unit();
        return List.of(
                Ink.Stroke.of(Role.PLEAT, Path.line(from, to.plus(way.times(-BAR * 0.8)))),
                Arrow.head(Role.PLEAT, to, way, BAR));
    }

    /** The words of marks that find room; each is added to the room. */
    List<Ink> captions(List<Drawn> marks, Room room) {
        List<Ink> ink = new ArrayList<>();
        for (Drawn mark : marks) {
            boolean wanted = mark.role() == Role.PLACED_PIECE
                    || mark.role() == Role.GATHERS
                    || (mark.role() != Role.MARKED_LINE && !named.contains(mark.role()));
            if (!wanted) {
                continue;
            }
            for (double scale : new double[] {0.9, 0.7}) {
                Caption caption = Caption.of(Role.CAPTION, mark.word(), scale, styles);
                Optional<Oblong> box = spot(mark, caption, room);
                if (box.isPresent()) {
                    ink.add(caption.in(box.get()));
                    room.add(box.get());
                    named.add(mark.role());
                    break;
                }
            }
        }
        return ink;
    }

    private static Optional<Oblong> spot(Drawn mark, Caption caption, Room room) {
        Box box = mark.lines().stream().map(Path::bounds).reduce(Box::with).orElseThrow();
        double x = (box.left() + box.right()) / 2;
        double y = (box.top() + box.bottom()) / 2;
        double aside = caption.width() / 2 + GAP + 0.5;
        double off = caption.height() / 2 + GAP + 0.5;
        List<Point> centres = mark.role() == Role.PLACED_PIECE
                ? List.of(
                        new Point(x, y),
                        new Point(x, box.top() + box.height() * 0.3),
                        new Point(x, box.top() + box.height() * 0.7))
                : List.of(
                        new Point(box.right() + aside, y),
                        new Point(box.left() - aside, y),
                        new Point(x, box.top() - off),
                        new Point(x, box.bottom() + off));
        return centres.stream()
                .map(centre -> caption.box(centre, 0))
                .filter(candidate -> room.clear(candidate, GAP))
                .findFirst();
    }

    private static Path bar(Point at, Vector way) {
        Vector aside = way.left().times(BAR);
        return Path.line(at.plus(aside), at.plus(aside.opposite()));
    }
}
