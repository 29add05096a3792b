package org.gusset.svg.page;

import java.util.List;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;

/** Ink moved, turned or evenly scaled as a whole; scaled words keep their shape, pens their weight. Nothing is mirrored. */
final class InkMotion {
    private InkMotion() {}

    /** A scaling about the origin followed by a shift. */
    static Transform scaled(double scale, Vector shift) {
        return new Transform(scale, 0, 0, scale, shift.dx(), shift.dy());
    }

    static Ink.Group of(Ink.Group group, Transform by) {
        Transform inner = Transform.shift(group.shift()).then(by);
        List<Ink> items = group.items().stream().map(item -> of(item, inner)).toList();
        return new Ink.Group(group.id(), group.kind(), group.title(), group.description(), new Vector(0, 0), items);
    }

    private static Ink of(Ink ink, Transform by) {
        Vector right = by.apply(Vector.RIGHT);
        if (ink instanceof Ink.Stroke stroke) {
            return new Ink.Stroke(stroke.id(), stroke.role(), stroke.path().transformed(by));
        } else if (ink instanceof Ink.Fill fill) {
            return new Ink.Fill(fill.role(), fill.outline().transformed(by));
        } else if (ink instanceof Ink.Dot dot) {
            return new Ink.Dot(dot.role(), by.apply(dot.centre()), dot.radius() * right.length());
        } else if (ink instanceof Ink.TextLine line) {
            Point at = by.apply(line.at());
            return new Ink.TextLine(
                    line.role(),
                    at,
                    line.anchor(),
                    line.turn() + right.degrees(),
                    line.size() * right.length(),
                    line.text());
        } else if (ink instanceof Ink.Window) {
            throw new IllegalArgumentException("a window is not moved, what is seen through it is");
        }
        return of((Ink.Group) ink, by);
    }
}
