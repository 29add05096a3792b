package org.gusset.svg.lesson;

import java.util.List;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.sheet.TextMeasure;

/** A picture made smaller and moved, for pages that hold several: the ids of its groups get a beginning that tells them apart. */
final class Reduced {
    private final String beginning;
    private final double scale;
    private final Transform by;

    Reduced(String beginning, double scale, Vector shift) {
        this.beginning = beginning;
        this.scale = scale;
        this.by = new Transform(scale, 0, 0, scale, shift.dx(), shift.dy());
    }

    Ink of(Ink ink) {
        if (ink instanceof Ink.Stroke stroke) {
            return new Ink.Stroke(
                    stroke.id().map(id -> beginning + id),
                    stroke.role(),
                    stroke.path().transformed(by));
        } else if (ink instanceof Ink.Fill fill) {
            return new Ink.Fill(fill.role(), fill.outline().transformed(by));
        } else if (ink instanceof Ink.Dot dot) {
            return new Ink.Dot(dot.role(), by.apply(dot.centre()), dot.radius() * scale);
        } else if (ink instanceof Ink.TextLine line) {
            return new Ink.TextLine(
                    line.role(), by.apply(line.at()), line.anchor(), line.turn(), line.size() * scale, line.text());
        } else if (ink instanceof Ink.Group group) {
            Vector shift = group.shift();
            Reduced inner = new Reduced(
                    beginning, scale, by.apply(Point.ORIGIN.plus(shift)).minus(Point.ORIGIN));
            return new Ink.Group(
                    beginning + group.id(),
                    group.kind(),
                    group.title(),
                    group.description(),
                    new Vector(0, 0),
                    group.items().stream().map(inner::of).toList());
        }
        throw new IllegalArgumentException("a lesson's picture has no windows");
    }

    /** The box around ink; words may come out narrower. Empty lists have a box without size about the origin. */
    static Box bounds(List<Ink> items) {
        return items.stream().map(Reduced::bounds).reduce(Box::with).orElse(new Box(0, 0, 0, 0));
    }

    static Box bounds(Ink ink) {
        if (ink instanceof Ink.Stroke stroke) {
            return stroke.path().bounds();
        } else if (ink instanceof Ink.Fill fill) {
            return fill.outline().bounds();
        } else if (ink instanceof Ink.Dot dot) {
            Point at = dot.centre();
            return new Box(at.x(), at.y(), at.x(), at.y()).grown(dot.radius());
        } else if (ink instanceof Ink.TextLine line) {
            double width = TextMeasure.width(line.text(), line.size(), true);
            double left = switch (line.anchor()) {
                case START -> line.at().x();
                case MIDDLE -> line.at().x() - width / 2;
                case END -> line.at().x() - width;
            };
            return new Box(
                    left, line.at().y() - line.size(), left + width, line.at().y() + 0.3 * line.size());
        } else if (ink instanceof Ink.Group group) {
            Box box = bounds(group.items());
            return new Box(
                    box.left() + group.shift().dx(),
                    box.top() + group.shift().dy(),
                    box.right() + group.shift().dx(),
                    box.bottom() + group.shift().dy());
        }
        throw new IllegalArgumentException("a lesson's picture has no windows");
    }
}
