package org.gusset.svg.lesson;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.sheet.LabelLine;
import org.gusset.svg.sheet.TextBlock;
import org.gusset.svg.sheet.TextMeasure;
import org.gusset.svg.style.Lettering;
import org.gusset.svg.style.StyleTable;

/**
 * The words of a step, set from (0, 0) to the right and down: what the teacher says, then the names with their sentences beside them.
 *
 * @param height in mm
 */
record Telling(List<Ink> items, double height) {
    private static final double MOST_FOR_NAMES = 0.34;

    Telling {
        items = List.copyOf(items);
    }

    static Telling of(List<String> says, List<Told> told, double width, LessonWords words, StyleTable styles) {
        List<Ink> items = new ArrayList<>();
        double y = 0;
        for (String said : says) {
            TextBlock block = TextBlock.of(List.of(new LabelLine(Role.TEACHING, words.quoted(said))), width, styles);
            items.addAll(block.placed(new Point(0, y), 0));
            y += block.height() + 0.35 * styles.lettering(Role.TEACHING).size();
        }
        Lettering bold = styles.lettering(Role.NAME_NOW);
        Lettering plain = styles.lettering(Role.SENTENCE);
        double gap = plain.size() * 0.9;
        double names = 0;
        for (Told one : told) {
            names = Math.max(names, TextMeasure.width(one.name(), plain.size(), bold.bold()));
        }
        double column = Math.min(names, width * MOST_FOR_NAMES);
        for (Told one : told) {
            // A name that is too long for its column has a line of its own.
            double own = TextMeasure.width(one.name(), plain.size(), bold.bold());
            boolean alone = own > column + 1e-6;
            List<Ink> group = new ArrayList<>();
            group.add(Ink.TextLine.upright(
                    Role.NAME_NOW, new Point(0, y + plain.size() * 0.95), plain.size(), one.name()));
            double top = alone ? y + plain.size() * 1.3 : y;
            TextBlock block =
                    TextBlock.of(List.of(new LabelLine(Role.SENTENCE, one.sentence())), width - column - gap, styles);
            group.addAll(block.placed(new Point(column + gap, top), 0));
            items.add(new Ink.Group(
                    LessonPicture.id("told", one.name()), Ink.Group.NAMED, one.name(), "", new Vector(0, 0), group));
            y = Math.max(top + block.height(), y + plain.size() * 1.3) + 0.2 * plain.size();
        }
        return new Telling(items, y);
    }

    /** The words with their corner at a point. */
    Ink.Group at(String id, Point corner) {
        return new Ink.Group(id, "telling", "", "", new Vector(corner.x(), corner.y()), items);
    }
}
