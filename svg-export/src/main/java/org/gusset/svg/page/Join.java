package org.gusset.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.style.StyleTable;

/**
 * The line along which two pages are joined, with the crosses on it, in the piece's frame. Both pages show the same line and the
 * same crosses.
 *
 * @param letter what stands at both sides of its crosses
 * @param from one end of the line: the upper or the left one
 * @param to the other end
 * @param crosses the middles of the crosses
 */
record Join(String letter, Point from, Point to, List<Point> crosses) {
    /** How far the arms of a cross reach, in mm; less than half of the usual overlap. */
    static final double ARM = 4;

    /** From a cross to the middle of its letters. */
    private static final double ASIDE = 2.6;

    /** How high capitals are, as a part of the size. */
    private static final double CAPITALS = 0.72;

    /** A letter beyond the line needs this much of the overlap. */
    private static final double LETTER_ROOM = 4.4;

    /** What a cross with its letters takes up on each side. */
    private static final double HALF = 6;

    private static final double CLEAR = 1.5;

    /** Joins longer than this have two crosses, so that pages cannot turn about one. */
    private static final double LONG = 70;

    /** Two crosses of a join are at least this far from each other. */
    private static final double APART = 35;

    Join {
        crosses = List.copyOf(crosses);
    }

    /** The join at the right edge of a cell, or at its lower edge. */
    static Join of(String letter, Box cell, boolean right, InkLines lines) {
        Point from = right ? new Point(cell.right(), cell.top()) : new Point(cell.left(), cell.bottom());
        Point to = new Point(cell.right(), cell.bottom());
        double length = from.distance(to);
        List<Double> places = new ArrayList<>();
        if (length > LONG) {
            places.add(clearest(from, to, length * 0.2, places, lines));
            places.add(clearest(from, to, length * 0.8, places, lines));
        } else {
            places.add(clearest(from, to, length / 2, places, lines));
        }
        List<Point> crosses = places.stream()
                .map(at -> rounded(from.plus(to.minus(from).unit().times(at))))
                .toList();
        return new Join(letter, from, to, crosses);
    }

    /**
     * How far along a join a cross stands: as near to where it is wanted as it keeps clear of ink and of the crosses that are
     * there; where it is wanted if that is nowhere.
     */
    private static double clearest(Point from, Point to, double wanted, List<Double> taken, InkLines lines) {
        double length = from.distance(to);
        Vector way = to.minus(from).unit();
        double end = Math.min(HALF + 2, length / 2);
        for (double off = 0; off <= length; off += 2) {
            for (double at : new double[] {wanted - off, wanted + off}) {
                Point centre = from.plus(way.times(at));
                Box around = new Box(centre.x(), centre.y(), centre.x(), centre.y()).grown(HALF + CLEAR);
                if (at >= end
                        && at <= length - end
                        && taken.stream().allMatch(other -> Math.abs(at - other) >= APART)
                        && !lines.reaches(around)) {
                    return at;
                }
            }
        }
        return wanted;
    }

    private static Point rounded(Point p) {
        return new Point(Math.round(p.x() * 100) / 100.0, Math.round(p.y() * 100) / 100.0);
    }

    private boolean upright() {
        return from.x() == to.x();
    }

    /**
     * The line and its crosses as one page shows them.
     *
     * @param first true for the page at the left of the join or above it
     */
    List<Ink> ink(boolean first, double overlap, StyleTable styles) {
        List<Ink> ink = new ArrayList<>();
        ink.add(Ink.Stroke.of(Role.JOIN_LINE, Path.line(from, to)));
        for (Point cross : crosses) {
            for (Vector arm : List.of(new Vector(ARM, 0), new Vector(0, ARM))) {
                ink.add(Ink.Stroke.of(Role.JOIN_MARK, Path.line(cross.plus(arm.opposite()), cross.plus(arm))));
            }
            boolean both = overlap / 2 >= LETTER_ROOM;
            if (first || both) {
                ink.add(letter(cross, -1, styles));
            }
            if (!first || both) {
                ink.add(letter(cross, 1, styles));
            }
        }
        return ink;
    }

    /** The letter on one side of the line, -1 being left or above, in the quarter that the cross leaves free. */
    private Ink letter(Point cross, int side, StyleTable styles) {
        double size = styles.lettering(Role.JOIN_LETTER).size() * (letter.length() > 1 ? 0.7 : 1);
        Vector aside = upright() ? new Vector(side * ASIDE, -ASIDE) : new Vector(-ASIDE, side * ASIDE);
        Point base = cross.plus(aside).plus(new Vector(0, CAPITALS * size / 2));
        return new Ink.TextLine(Role.JOIN_LETTER, base, Ink.Anchor.MIDDLE, 0, size, letter);
    }
}
