package org.gusset.svg.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.draft.Lesson;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.measure.LengthStyle;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/**
 * Draws measured distances as arrows with their lengths, each where it hides least: on its own way if no line runs there, else beside
 * it, with thin lines that lead to where it is measured. Along a curve the arrow is a parallel copy.
 */
final class Dimensions {
    private static final double[] OFFSETS = {0, 9, -9, 17, -17, 26, -26, 36, -36, 48, -48, 62, -62};
    private static final double[] PLACES = {0.5, 0.38, 0.62, 0.25, 0.75, 0.12, 0.88};
    private static final double[] GAPS = {1.2, 5, 10, 17, 26};
    private static final double HEAD = 5;
    private static final double HALF_BREADTH = 0.2;
    private static final double TAIL = 9;
    private static final double BEYOND = 2.5;
    private static final double LED = 4;

    private final PieceFrame frame;
    private final Crowd crowd;
    private final LengthStyle lengths;
    private final StyleTable styles;

    Dimensions(PieceFrame frame, Crowd crowd, LengthStyle lengths, StyleTable styles) {
        this.frame = frame;
        this.crowd = crowd;
        this.lengths = lengths;
        this.styles = styles;
    }

    /**
     * A distance in the picture.
     *
     * @param way what is measured, in the piece's own frame
     * @param arrow the arrow in the picture's frame
     */
    record Drawn(Lesson.Way way, Path arrow, String text, Ink.Group group) {}

    /** Where an arrow and its words may go, and what that costs. */
    private record Option(Path arrow, double offset, Box words, double gap, double cost) {}

    /** The arrows of all ways, short ones nearest to what they measure. What finds no room at all is left to the sentence. */
    List<Drawn> of(List<Lesson.Way> ways) {
        List<Lesson.Way> sorted = new ArrayList<>(ways);
        sorted.sort(Comparator.comparingDouble(Lesson.Way::length));
        List<Drawn> drawn = new ArrayList<>();
        for (Lesson.Way way : sorted) {
            draw(way, drawn.size() + 1).ifPresent(drawn::add);
        }
        return drawn;
    }

    private Optional<Drawn> draw(Lesson.Way way, int number) {
        String text = lengths.show(way.length());
        Lettered words = Lettered.of(Role.DIMENSION_WORDS, text, styles);
        Path own = way.along().transformed(frame.toPicture());
        Option best = null;
        for (double offset : OFFSETS) {
            Optional<Path> arrow = beside(own, offset);
            if (arrow.isEmpty()) {
                continue;
            }
            double cost = crowd.cost(arrow.get(), 0.02) + Math.abs(offset) * 0.8;
            if (offset != 0) {
                cost += crowd.cost(Path.line(own.start(), arrow.get().start()), 0.05) * 0.5;
                cost += crowd.cost(Path.line(own.end(), arrow.get().end()), 0.05) * 0.5;
            }
            if (cost >= Crowd.FORBIDDEN || (best != null && cost >= best.cost())) {
                continue;
            }
            for (double place : PLACES) {
                Point at = arrow.get().at(arrow.get().length() * place);
                Vector left = arrow.get().tangent(arrow.get().length() * place).left();
                for (Vector side : List.of(left, left.opposite())) {
                    for (double gap : GAPS) {
                        Box box = words.beside(at, side, gap);
                        double all =
                                cost + crowd.cost(box) + gap * 0.7 + Math.abs(place - 0.5) * 4 + own(box, arrow.get());
                        if (gap > LED) {
                            all += crowd.cost(Path.line(at, at.plus(side.times(gap))), 0.3);
                        }
                        if (all < Crowd.FORBIDDEN && (best == null || all < best.cost())) {
                            best = new Option(arrow.get(), offset, box, gap, all);
                        }
                    }
                }
            }
        }
        if (best == null) {
            return Optional.empty();
        }
        return Optional.of(set(way, own, best, words, number));
    }

    /** What it costs that words lie on their own arrow. */
    private static double own(Box box, Path arrow) {
        Crowd alone = new Crowd(box.grown(1));
        alone.add(arrow, Crowd.STRONG);
        return alone.cost(box);
    }

    private static Optional<Path> beside(Path own, double offset) {
        if (offset == 0) {
            return own.straight() ? Optional.of(own) : Optional.empty();
        }
        if (own.straight()) {
            Vector aside = own.tangent(0).left().times(offset);
            return Optional.of(Path.line(own.start().plus(aside), own.end().plus(aside)));
        }
        try {
            return Optional.of(own.parallel(offset));
        } catch (Fault fault) {
            // A copy inside a tight bend folds over itself; the other side has one.
            return Optional.empty();
        }
    }

    private Drawn set(Lesson.Way way, Path own, Option option, Lettered words, int number) {
        List<Ink> ink = new ArrayList<>();
        Path arrow = option.arrow();
        ink.add(Ink.Stroke.of(Role.DIMENSION, arrow));
        if (option.offset() != 0) {
            reach(own.start(), arrow.start(), ink);
            reach(own.end(), arrow.end(), ink);
        }
        Vector atStart = arrow.tangent(0);
        Vector atEnd = arrow.tangent(arrow.length());
        if (arrow.length() > 2.6 * HEAD) {
            ink.add(head(arrow.start(), atStart.opposite()));
            ink.add(head(arrow.end(), atEnd));
        } else {
            ink.add(head(arrow.start(), atStart));
            ink.add(head(arrow.end(), atEnd.opposite()));
            ink.add(Ink.Stroke.of(Role.DIMENSION, Path.line(arrow.start().plus(atStart.times(-TAIL)), arrow.start())));
            ink.add(Ink.Stroke.of(
                    Role.DIMENSION, Path.line(arrow.end(), arrow.end().plus(atEnd.times(TAIL)))));
        }
        Box box = option.words();
        if (option.gap() > LED) {
            Point middle = new Point(
                    Math.max(
                            box.left(),
                            Math.min(box.right(), nearest(arrow, box).x())),
                    Math.max(
                            box.top(),
                            Math.min(box.bottom(), nearest(arrow, box).y())));
            ink.add(Ink.Stroke.of(Role.DIMENSION_REACH, Path.line(nearest(arrow, box), middle)));
        }
        ink.add(words.in(box));
        crowd.add(arrow, Crowd.ARROW);
        crowd.addWords(box);
        return new Drawn(
                way,
                arrow,
                words.text(),
                new Ink.Group("dimension-" + number, "dimension", words.text(), "", new Vector(0, 0), ink));
    }

    private static Point nearest(Path arrow, Box box) {
        return arrow.nearest(new Point((box.left() + box.right()) / 2, (box.top() + box.bottom()) / 2))
                .point();
    }

    private static void reach(Point from, Point to, List<Ink> ink) {
        Vector way = to.minus(from).unit();
        ink.add(Ink.Stroke.of(Role.DIMENSION_REACH, Path.line(from.plus(way.times(1.5)), to.plus(way.times(BEYOND)))));
    }

    /** A filled head whose tip lies at a point. */
    static Ink.Fill head(Point tip, Vector way) {
        return head(Role.DIMENSION, tip, way, HEAD);
    }

    static Ink.Fill head(Role role, Point tip, Vector way, double length) {
        Point base = tip.plus(way.unit().times(-length));
        Vector aside = way.unit().left().times(length * HALF_BREADTH);
        return new Ink.Fill(role, Path.line(tip, base.plus(aside), base.plus(aside.opposite()), tip));
    }
}
