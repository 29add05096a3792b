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
            Role.PLACED_PIECE,
            Role.BALANCE,
            Role.OLD_LINE,
            Role.NEST_POINT);

    private static final double NOTE_WIDTH = 120;

    private final Words words;
    private final StyleTable styles;

    LineKey(Words words, StyleTable styles) {
        this.words = words;
        this.styles = styles;
    }

    /** A kind of line and what it means here. */
    record Row(Role role, String meaning) {}

    static Block of(List<PieceFigure> figures, Words words, StyleTable styles, Ids ids) {
        return new LineKey(words, styles).of(List.of(), figures, List.of(), ids);
    }

    /** The key with some rows of its own first, and notes below all rows. */
    Block of(List<Row> first, List<PieceFigure> figures, List<LabelLine> notes, Ids ids) {
        Set<Role> used = EnumSet.noneOf(Role.class);
        figures.forEach(figure -> collect(figure.group(), used));
        double row = Math.max(styles.lettering(Role.LABEL).size() * TextMeasure.LEADING, 9);
        List<Ink> ink = new ArrayList<>();
        double y = 0;
        double width = 0;
        List<Row> rows = new ArrayList<>(first);
        ORDER.stream().filter(used::contains).forEach(role -> rows.add(new Row(role, words.line(role))));
        for (Row one : rows) {
            ink.addAll(sample(one.role(), y + row / 2, styles));
            Caption caption = Caption.of(Role.LABEL, one.meaning(), 1, styles);
            double left = SAMPLE + GAP;
            ink.add(caption.startingAt(new Point(left, y + row / 2)));
            width = Math.max(width, left + caption.width());
            y += row;
        }
        String rule = words.say("stroke-rule", "The true line is the middle of the stroke.");
        List<LabelLine> below = new ArrayList<>(notes);
        below.add(new LabelLine(Role.SMALL_PRINT, rule));
        TextBlock note = TextBlock.of(below, NOTE_WIDTH, styles);
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
            case NEST_POINT:
                return NestFigure.cross(middle);
            case GRADE_TRAVEL:
                return GradeFigure.travel(List.of(new Point(8, y), middle, new Point(SAMPLE - 8, y)));
            case GRADE_EVEN, GRADE_BREAKS, GRADE_BENDS:
                return GradeFigure.arrow(role, new Point((SAMPLE - GradeFigure.ARROW) / 2, y), Vector.RIGHT);
            case GRADE_STAYS:
                return GradeFigure.ring(middle);
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
