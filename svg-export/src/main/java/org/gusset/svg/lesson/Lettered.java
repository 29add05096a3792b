package org.gusset.svg.lesson;

import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.sheet.TextMeasure;
import org.gusset.svg.style.Lettering;
import org.gusset.svg.style.StyleTable;

/**
 * Words on one upright line, to be set in the middle of a box.
 *
 * @param size the height of the type in mm
 * @param width the most that they take up in mm
 */
record Lettered(Role role, String text, double size, double width) {
    /** How far the baseline lies below the middle, as a part of the size. */
    private static final double DROP = 0.36;

    static Lettered of(Role role, String text, StyleTable styles) {
        Lettering lettering = styles.lettering(role);
        return new Lettered(role, text, lettering.size(), TextMeasure.width(text, lettering.size(), lettering.bold()));
    }

    double height() {
        return size * 1.1;
    }

    Box box(Point centre) {
        return new Box(
                centre.x() - width / 2, centre.y() - height() / 2, centre.x() + width / 2, centre.y() + height() / 2);
    }

    /** The box that lies {@code gap} mm away from a point in a direction. */
    Box beside(Point point, Vector way, double gap) {
        double across = Math.max(-1, Math.min(1, way.dx() * 1.5)) * width / 2;
        double down = Math.max(-1, Math.min(1, way.dy() * 1.5)) * height() / 2;
        return box(new Point(point.x() + way.dx() * gap + across, point.y() + way.dy() * gap + down));
    }

    Ink.TextLine in(Box box) {
        Point at = new Point((box.left() + box.right()) / 2, (box.top() + box.bottom()) / 2 + DROP * size);
        return new Ink.TextLine(role, at, Ink.Anchor.MIDDLE, 0, size, text);
    }
}
