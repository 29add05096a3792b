package org.gusset.workbench;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.sheet.TextMeasure;

/** What is drawn in a scene without windows, taken apart. */
final class LessonInk {
    private LessonInk() {}

    /** All groups, outer ones first. Those of lessons lie in frames that are only shifted. */
    static List<Ink.Group> groups(List<Ink> items) {
        List<Ink.Group> groups = new ArrayList<>();
        for (Ink ink : items) {
            if (ink instanceof Ink.Group group) {
                groups.add(group);
                groups.addAll(groups(group.items()));
            }
        }
        return groups;
    }

    static List<Ink.Group> ofKind(Scene scene, String kind) {
        return groups(scene.items()).stream()
                .filter(group -> group.kind().equals(kind))
                .toList();
    }

    /** The roles of the lines and dots of a group. */
    static List<Role> roles(Ink.Group group) {
        List<Role> roles = new ArrayList<>();
        for (Ink ink : group.items()) {
            if (ink instanceof Ink.Stroke stroke && stroke.role() != Role.DIMENSION_REACH) {
                roles.add(stroke.role());
            } else if (ink instanceof Ink.Dot dot) {
                roles.add(dot.role());
            }
        }
        return roles;
    }

    /** Lines of words in a picture whose groups are not shifted. */
    static List<Ink.TextLine> words(List<Ink> items) {
        List<Ink.TextLine> words = new ArrayList<>();
        for (Ink ink : items) {
            if (ink instanceof Ink.TextLine line) {
                words.add(line);
            } else if (ink instanceof Ink.Group group) {
                words.addAll(words(group.items()));
            }
        }
        return words;
    }

    static List<Ink.Stroke> strokes(List<Ink> items) {
        List<Ink.Stroke> strokes = new ArrayList<>();
        for (Ink ink : items) {
            if (ink instanceof Ink.Stroke stroke) {
                strokes.add(stroke);
            } else if (ink instanceof Ink.Group group) {
                strokes.addAll(strokes(group.items()));
            }
        }
        return strokes;
    }

    /** The outlines that are filled in a role. */
    static List<Path> heads(List<Ink> items, Role role) {
        List<Path> heads = new ArrayList<>();
        for (Ink ink : items) {
            if (ink instanceof Ink.Fill fill && fill.role() == role) {
                heads.add(fill.outline());
            } else if (ink instanceof Ink.Group group) {
                heads.addAll(heads(group.items(), role));
            }
        }
        return heads;
    }

    /** The room of words from a little below the baseline to the height of capitals (0.73 em, DejaVu Sans), as wide as they may be. */
    static Box box(Ink.TextLine line) {
        boolean bold = line.role() == Role.NAME_NOW;
        double width = TextMeasure.width(line.text(), line.size(), bold);
        double left = switch (line.anchor()) {
            case START -> line.at().x();
            case MIDDLE -> line.at().x() - width / 2;
            case END -> line.at().x() - width;
        };
        return new Box(
                left,
                line.at().y() - 0.73 * line.size(),
                left + width,
                line.at().y() + 0.1 * line.size());
    }

    static boolean overlap(Box a, Box b) {
        return a.left() < b.right() && b.left() < a.right() && a.top() < b.bottom() && b.top() < a.bottom();
    }

    /** True if a path, seen at every half millimetre, enters a box. */
    static boolean enters(Path path, Box box) {
        int count = Math.max(1, (int) Math.ceil(path.length() * 2));
        for (int i = 0; i <= count; i++) {
            Point at = path.at(path.length() * i / count);
            if (at.x() > box.left() && at.x() < box.right() && at.y() > box.top() && at.y() < box.bottom()) {
                return true;
            }
        }
        return false;
    }
}
