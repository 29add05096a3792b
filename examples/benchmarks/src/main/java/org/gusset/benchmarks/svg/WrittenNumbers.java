package org.gusset.benchmarks.svg;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.ArcSegment;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.style.Pen;
import org.gusset.svg.style.StyleTable;

/** Every number that stands in the document of a scene, in the order of the document. */
public final class WrittenNumbers {
    private final StyleTable styles;
    private final List<Double> numbers = new ArrayList<>();

    private WrittenNumbers(StyleTable styles) {
        this.styles = styles;
    }

    /** The numbers of a scene that holds lines, dots, words and groups. */
    public static double[] of(Scene scene, StyleTable styles) {
        WrittenNumbers written = new WrittenNumbers(styles);
        for (int i = 0; i < 3; i++) {
            // Size, view box, paper.
            written.add(scene.width(), scene.height());
        }
        scene.items().forEach(written::ink);
        return written.numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private void ink(Ink ink) {
        if (ink instanceof Ink.Stroke stroke) {
            Pen pen = styles.pen(stroke.role());
            path(stroke.path());
            add(pen.weight());
            numbers.addAll(pen.dashes());
        } else if (ink instanceof Ink.Fill fill) {
            path(fill.outline());
        } else if (ink instanceof Ink.Dot dot) {
            add(dot.centre());
            add(dot.radius());
        } else if (ink instanceof Ink.TextLine line) {
            add(line.at());
            add(line.size());
            if (line.turn() != 0) {
                add(-line.turn());
                add(line.at());
            }
        } else if (ink instanceof Ink.Group group) {
            if (group.shift().dx() != 0 || group.shift().dy() != 0) {
                add(group.shift().dx(), group.shift().dy());
            }
            group.items().forEach(this::ink);
        } else {
            throw new IllegalArgumentException("a sheet has no windows");
        }
    }

    private void path(Path path) {
        add(path.start());
        for (Segment segment : path.segments()) {
            if (segment instanceof ArcSegment) {
                throw new IllegalArgumentException("the smock has no arcs");
            } else if (segment instanceof CubicSegment cubic) {
                add(cubic.control1());
                add(cubic.control2());
            }
            add(segment.end());
        }
    }

    private void add(Point point) {
        add(point.x(), point.y());
    }

    private void add(double... more) {
        for (double number : more) {
            numbers.add(number);
        }
    }
}
