package org.gusset.svg.sheet;

import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;

/** The filled head of an arrow. */
final class Arrow {
    private static final double HALF_BREADTH = 0.22;

    private Arrow() {}

    /** A slim head whose tip lies at a point. */
    static Ink.Fill head(Role role, Point tip, Vector way, double length) {
        Vector back = way.unit().times(-length);
        Vector aside = way.unit().left().times(length * HALF_BREADTH);
        Point base = tip.plus(back);
        return new Ink.Fill(role, Path.line(tip, base.plus(aside), base.plus(aside.opposite()), tip));
    }
}
