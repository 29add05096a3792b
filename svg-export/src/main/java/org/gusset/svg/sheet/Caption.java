package org.gusset.svg.sheet;

import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.Lettering;
import org.gusset.svg.style.StyleTable;

/**
 * A few words on one line that are set in the middle of a rectangle.
 *
 * @param size the height of the type in mm
 * @param width the width in mm that the words take up at the most
 */
record Caption(Role role, String text, double size, double width) {
    /** How far the baseline lies below the middle, as a part of the size. */
    private static final double DROP = 0.36;

    static Caption of(Role role, String text, double scale, StyleTable styles) {
        Lettering lettering = styles.lettering(role);
        double size = lettering.size() * scale;
        return new Caption(role, text, size, TextMeasure.width(text, size, lettering.bold()));
    }

    double height() {
        return size * 1.2;
    }

    /** The rectangle around the words, set about a point. */
    Oblong box(Point centre, double turn) {
        return new Oblong(centre, width, height(), turn);
    }

    /** The words, set in their rectangle. */
    Ink.TextLine in(Oblong box) {
        return new Ink.TextLine(role, box.at(0, DROP * size), Ink.Anchor.MIDDLE, box.turn(), size, text);
    }

    /** The words, upright, from a point at half their height to the right. */
    Ink.TextLine startingAt(Point middleLeft) {
        return Ink.TextLine.upright(role, middleLeft.plus(Vector.DOWN.times(DROP * size)), size, text);
    }

    /** The turn for words along a way such that they read from below or from the right. */
    static double readable(double degrees) {
        double turn = degrees % 180;
        if (turn > 90 + 1e-9) {
            turn -= 180;
        } else if (turn <= -90 + 1e-9) {
            turn += 180;
        }
        return turn;
    }
}
