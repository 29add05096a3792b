package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Grain;
import org.gusset.core.pattern.Mark;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/** Samples of the kinds of line and mark that a sheet uses, each with its name. */
final class LineKey {
    private static final double SAMPLE = 34;
    private static final double GAP = 4;
    private static final List<Role> ORDER = List.of(
            Role.CUTTING,
            Role.STITCHING,
            Role.FOLD,
            Role.GRAIN,
            Role.NOTCH,
            Role.DRILL,
            Role.BUTTON,
            Role.BUTTONHOLE,
            Role.MARKED_LINE,
            Role.GATHERS,
            Role.PLEAT,
            Role.PLACED_PIECE);

    private LineKey() {}

    static Block of(List<PieceFigure> figures, Words words, StyleTable styles, Ids ids) {
        Set<Role> used = EnumSet.noneOf(Role.class);
        figures.forEach(figure -> collect(figure.group(), used));
        double row = Math.max(styles.lettering(Role.LABEL).size() * TextMeasure.LEADING, 9);
        List<Ink> ink = new ArrayList<>();
        double y = 0;
        double width = 0;
        for (Role role : ORDER) {
            if (used.contains(role)) {
                ink.addAll(sample(role, y + row / 2, styles));
                Caption caption = Caption.of(Role.LABEL, words.line(role), 1, styles);
                double left = SAMPLE + GAP;
                ink.add(caption.startingAt(new Point(left, y + row / 2)));
                width = Math.max(width, left + caption.width());
                y += row;
            }
        }
        String rule = words.say("stroke-rule", "The true line is the middle of the stroke.");
        TextBlock note = TextBlock.of(List.of(new LabelLine(Role.SMALL_PRINT, rule)), 120, styles);
        ink.addAll(note.placed(new Point(0, y), 0));
        return new Block(
                ids.of("line-key"),
                "line-key",
                words.say("line-key", "kinds of line"),
                Math.max(width, note.width()),
                y + note.height(),
                ink);
    }

    private static void collect(Ink ink, Set<Role> used) {
        if (ink instanceof Ink.Group group) {
            group.items().forEach(item -> collect(item, used));
        } else if (ink instanceof Ink.Stroke stroke) {
            used.add(stroke.role());
        }
    }

    private static List<Ink> sample(Role role, double y, StyleTable styles) {
        Point from = new Point(0, y);
        Point to = new Point(SAMPLE, y);
        Point middle = from.toward(to, 0.5);
        InnerMarks marks = new InnerMarks(new Words(phrase -> ""), styles);
        switch (role) {
            case GRAIN:
                return new GrainArrow(new Grain(from, to, false)).ink();
            case NOTCH:
                return List.of(
                        Ink.Stroke.of(role, Path.line(new Point(SAMPLE / 2, y - 3.5), new Point(SAMPLE / 2, y + 3.5))));
            case DRILL:
                return marks.draw(new Mark.Drill(middle), "").group().items();
            case BUTTON:
                return marks.draw(new Mark.Button(middle), "").group().items();
            case BUTTONHOLE:
                Path hole = Path.line(middle.plus(new Vector(-9, 0)), middle.plus(new Vector(9, 0)));
                return marks.draw(new Mark.Buttonhole(hole), "").group().items();
            default:
                return List.of(Ink.Stroke.of(role, Path.line(from, to)));
        }
    }
}
