package org.gusset.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.sheet.TextMeasure;
import org.gusset.svg.style.StyleTable;

/**
 * Where ink lies: all lines as straight stretches, words as the rectangles round them.
 *
 * @param stretches lines, outlines and the edges of the rectangles round words
 * @param words the boxes round lines of words, and round whole labels
 * @param sure lines, outlines, and what of the words is there however narrow the viewer's type is
 */
record InkLines(List<Stretch> stretches, List<Box> words, List<Stretch> sure) {
    /** The rectangles round words are as wide as words may become; this part of them is filled in any case. */
    private static final double FILLED = 0.75;

    /** How far straight stretches may stray from true curves, in mm; well below the breadth of a line. */
    private static final double FLATTENING = 0.01;

    /** How far words reach above their baseline and below it, as parts of their size. */
    private static final double ABOVE = 0.78;

    private static final double BELOW = 0.24;

    InkLines {
        stretches = List.copyOf(stretches);
        words = List.copyOf(words);
        sure = List.copyOf(sure);
    }

    /** A straight stretch. */
    record Stretch(Point from, Point to) {
        Box bounds() {
            return new Box(
                    Math.min(from.x(), to.x()),
                    Math.min(from.y(), to.y()),
                    Math.max(from.x(), to.x()),
                    Math.max(from.y(), to.y()));
        }

        /** True if any of it lies in a box or on its edge. */
        boolean reaches(Box box) {
            double[] span = {0, 1};
            return within(from.x(), to.x() - from.x(), box.left(), box.right(), span)
                    && within(from.y(), to.y() - from.y(), box.top(), box.bottom(), span);
        }

        /** Narrows the span of the parameter to where one coordinate lies between two bounds; false if nothing is left. */
        private static boolean within(double start, double by, double low, double high, double[] span) {
            if (by == 0) {
                return start >= low && start <= high;
            }
            double t0 = (low - start) / by;
            double t1 = (high - start) / by;
            span[0] = Math.max(span[0], Math.min(t0, t1));
            span[1] = Math.min(span[1], Math.max(t0, t1));
            return span[0] <= span[1];
        }
    }

    static InkLines of(Ink ink, StyleTable styles) {
        Collecting collecting = new Collecting(styles);
        collecting.collect(ink, new Vector(0, 0));
        List<Stretch> all = new ArrayList<>(collecting.lines);
        all.addAll(collecting.rims);
        List<Stretch> sure = new ArrayList<>(collecting.lines);
        sure.addAll(collecting.middles);
        return new InkLines(all, collecting.words, sure);
    }

    /** True if there is ink in a box, on its edge, or all round it. */
    boolean reaches(Box box) {
        return stretches.stream().anyMatch(stretch -> stretch.reaches(box));
    }

    /** The box round all of it; a point if there is nothing. */
    Box bounds() {
        return stretches.stream().map(Stretch::bounds).reduce(Box::with).orElse(new Box(0, 0, 0, 0));
    }

    /** Ink while it is being gone through. */
    private static final class Collecting {
        private final StyleTable styles;
        private final List<Stretch> lines = new ArrayList<>();
        private final List<Stretch> rims = new ArrayList<>();
        private final List<Stretch> middles = new ArrayList<>();
        private final List<Box> words = new ArrayList<>();

        Collecting(StyleTable styles) {
            this.styles = styles;
        }

        void collect(Ink ink, Vector shift) {
            if (ink instanceof Ink.Group group) {
                int before = words.size();
                group.items().forEach(item -> collect(item, shift.plus(group.shift())));
                if (group.kind().equals("label")) {
                    words.subList(before, words.size()).stream()
                            .reduce(Box::with)
                            .ifPresent(words::add);
                }
            } else if (ink instanceof Ink.Window window) {
                window.items().forEach(item -> collect(item, shift));
            } else if (ink instanceof Ink.Stroke stroke) {
                add(stroke.path(), shift);
            } else if (ink instanceof Ink.Fill fill) {
                add(fill.outline(), shift);
            } else if (ink instanceof Ink.Dot dot) {
                add(Path.arc(dot.centre(), dot.radius(), 0, 360), shift);
            } else {
                add((Ink.TextLine) ink, shift);
            }
        }

        private void add(Path path, Vector shift) {
            add(path.transformed(Transform.shift(shift)).flatten(FLATTENING), lines);
        }

        private static void add(List<Point> points, List<Stretch> stretches) {
            for (int i = 1; i < points.size(); i++) {
                stretches.add(new Stretch(points.get(i - 1), points.get(i)));
            }
        }

        private void add(Ink.TextLine line, Vector shift) {
            double width = TextMeasure.width(
                    line.text(), line.size(), styles.lettering(line.role()).bold());
            double before = switch (line.anchor()) {
                case START -> 0;
                case MIDDLE -> 0.5;
                case END -> 1;
            };
            Vector along = Vector.atAngle(line.turn());
            Vector up = along.left();
            Point at = line.at().plus(shift);
            Point base = at.plus(along.times(-before * width));
            Point top = base.plus(up.times(ABOVE * line.size()));
            Point bottom = base.plus(up.times(-BELOW * line.size()));
            Vector across = along.times(width);
            add(List.of(top, top.plus(across), bottom.plus(across), bottom, top), rims);
            Point from = at.plus(along.times(-before * width * FILLED)).plus(up.times(line.size() / 4));
            middles.add(new Stretch(from, from.plus(across.times(FILLED))));
            words.add(List.of(top, top.plus(across), bottom.plus(across), bottom).stream()
                    .map(p -> new Box(p.x(), p.y(), p.x(), p.y()))
                    .reduce(Box::with)
                    .orElseThrow());
        }
    }
}
