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
    private static final double LED = 4.5;

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
    private record Option(Path arrow, double offset, Box words, Spot spot, double cost) {}

    /** Words {@code gap} mm away from a point of an arrow; {@code led} if a thin line leads to them. */
    private record Spot(Point at, Vector way, double gap, boolean led, double dislike) {}

    /** Beside the arrow, and of a short one also beyond its ends. */
    private static List<Spot> spots(Path arrow) {
        List<Spot> spots = new ArrayList<>();
        for (double place : PLACES) {
            Point at = arrow.at(arrow.length() * place);
            Vector left = arrow.tangent(arrow.length() * place).left();
            for (double gap : GAPS) {
                spots.add(new Spot(at, left, gap, gap > LED, Math.abs(place - 0.5) * 4));
                spots.add(new Spot(at, left.opposite(), gap, gap > LED, Math.abs(place - 0.5) * 4));
            }
        }
        if (isShort(arrow)) {
            for (double more : GAPS) {
                double gap = TAIL + more;
                spots.add(new Spot(arrow.start(), arrow.tangent(0).opposite(), gap, more > LED, -4));
                spots.add(new Spot(arrow.end(), arrow.tangent(arrow.length()), gap, more > LED, -4));
            }
        }
        return spots;
    }

    /** Too short for heads inside: they point at it from outside. */
    private static boolean isShort(Path arrow) {
        return arrow.length() <= 2.6 * HEAD;
    }

    private static List<Path> tails(Path arrow) {
        Vector before = arrow.tangent(0).times(-TAIL);
        Vector after = arrow.tangent(arrow.length()).times(TAIL);
        return List.of(
                Path.line(arrow.start().plus(before), arrow.start()),
                Path.line(arrow.end(), arrow.end().plus(after)));
    }

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
            double least = best == null ? Crowd.FORBIDDEN : best.cost();
            double cost = crowd.cost(arrow.get(), 0.006, least) + Math.abs(offset) * 0.8;
            if (isShort(arrow.get())) {
                for (Path tail : tails(arrow.get())) {
                    cost += crowd.cost(tail, 0.006);
                }
            }
            if (offset != 0) {
                cost += crowd.cost(Path.line(own.start(), arrow.get().start()), 0.015) * 0.5;
                cost += crowd.cost(Path.line(own.end(), arrow.get().end()), 0.015) * 0.5;
            }
            if (cost >= least) {
                continue;
            }
            for (Spot spot : spots(arrow.get())) {
                double limit = best == null ? Crowd.FORBIDDEN : best.cost();
                Box box = words.beside(spot.at(), spot.way(), spot.gap());
                double all = cost + crowd.cost(box, limit) + spot.dislike() + spot.gap() * 0.7;
                if (all >= limit) {
                    continue;
                }
                all += own(box, arrow.get());
                if (spot.led()) {
                    Path leader = Path.line(spot.at(), spot.at().plus(spot.way().times(spot.gap())));
                    all += 2 + crowd.cost(leader, 0.08, limit);
                }
                if (all < limit) {
                    best = new Option(arrow.get(), offset, box, spot, all);
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
        if (isShort(arrow)) {
            tails(arrow).forEach(tail -> alone.add(tail, Crowd.STRONG));
        }
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
        if (isShort(arrow)) {
            ink.add(head(arrow.start(), atStart));
            ink.add(head(arrow.end(), atEnd.opposite()));
            tails(arrow).forEach(tail -> stroke(Role.DIMENSION, tail, ink));
        } else {
            ink.add(head(arrow.start(), atStart.opposite()));
            ink.add(head(arrow.end(), atEnd));
        }
        Box box = option.words();
        if (option.spot().led()) {
            Point at = option.spot().at();
            Point to = new Point(
                    Math.max(box.left(), Math.min(box.right(), at.x())),
                    Math.max(box.top(), Math.min(box.bottom(), at.y())));
            stroke(Role.DIMENSION_REACH, Path.line(at, to), ink);
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

    private void reach(Point from, Point to, List<Ink> ink) {
        Vector way = to.minus(from).unit();
        stroke(Role.DIMENSION_REACH, Path.line(from.plus(way.times(1.5)), to.plus(way.times(BEYOND))), ink);
    }

    private void stroke(Role role, Path path, List<Ink> ink) {
        ink.add(Ink.Stroke.of(role, path));
        crowd.add(path, role == Role.DIMENSION ? Crowd.ARROW : Crowd.LIGHT);
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
