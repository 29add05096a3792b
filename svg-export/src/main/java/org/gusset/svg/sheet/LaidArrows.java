package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;

/** The arrows that can show the warp on a laid piece: a long one along the middle first, then shorter ones that leave room for words. */
final class LaidArrows {
    private static final double HEAD = 2;
    private static final double LONGEST = 45;
    private static final double LEAST = 1.5;

    /** The shares of a line across the piece that arrows take up. */
    private static final double[] SHARES = {0.6, 0.35, 0.2};

    /** So many lines across the piece are tried. */
    private static final int LINES = 3;

    /** Lines through the middle and beside it, this many to each side. */
    private static final int ASIDE = 6;

    /** How far an arrow keeps off the outline where there is room, in mm. */
    private static final double CLEAR = 0.8;

    private final Vector way;
    private final Path outline;
    private final Room room;

    /** @param way of the warp, a unit way */
    LaidArrows(Vector way, Path outline) {
        this.way = way;
        this.outline = outline;
        this.room = new Room(outline);
    }

    /** One of them, or a line on which they lie. */
    record Shaft(Point from, Point to) {
        double length() {
            return from.distance(to);
        }

        Path path() {
            return Path.line(from, to);
        }

        List<Ink> ink() {
            Vector along = to.minus(from).unit();
            double head = Math.min(HEAD, length() / 2);
            return List.of(
                    Ink.Stroke.of(Role.LAID_GRAIN, Path.line(from, to.plus(along.times(-head * 0.8)))),
                    Arrow.head(Role.LAID_GRAIN, to, along, head));
        }
    }

    /** The arrows, those to be preferred first; none if the piece is too short along its warp for any. */
    List<Shaft> all() {
        List<Shaft> lines = lines();
        List<Shaft> arrows = new ArrayList<>();
        for (double share : SHARES) {
            for (Shaft line : lines) {
                double length = Math.min(LONGEST, line.length() * share);
                if (length < LEAST) {
                    continue;
                }
                // In the middle of the line, then toward either end of it.
                double spare = (line.length() - length) / 2 - CLEAR;
                for (double shift : share == SHARES[0] ? new double[] {0} : new double[] {spare, -spare, 0}) {
                    Point middle = line.from().toward(line.to(), 0.5).plus(way.times(shift));
                    arrows.add(new Shaft(middle.plus(way.times(-length / 2)), middle.plus(way.times(length / 2))));
                }
            }
        }
        List<Shaft> clear = arrows.stream().filter(this::clear).toList();
        return clear.isEmpty() ? arrows : clear;
    }

    private boolean clear(Shaft arrow) {
        Vector along = arrow.to().minus(arrow.from());
        double turn = StrictMath.toDegrees(StrictMath.atan2(-along.dy(), along.dx()));
        Oblong box = new Oblong(arrow.from().toward(arrow.to(), 0.5), arrow.length(), 0.1, turn);
        return room.clear(box, CLEAR);
    }

    /** The longest stretches along the warp inside the piece, of those that are long enough the ones nearest to its middle first. */
    private List<Shaft> lines() {
        Point middle = room.centroid();
        List<Shaft> found = new ArrayList<>();
        for (int i = 0; i <= 2 * ASIDE; i++) {
            int aside = i % 2 == 0 ? i / 2 : -(i + 1) / 2;
            Point through = middle.plus(way.left().times(aside * spread() / (2.5 * ASIDE)));
            longest(through).ifPresent(found::add);
        }
        found.sort(Comparator.comparingDouble((Shaft l) -> -Math.min(LONGEST, l.length() * SHARES[0])));
        return found.stream().limit(LINES).toList();
    }

    private double spread() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Point p : outline.flatten(1)) {
            double aside = way.left().dot(p.minus(Point.ORIGIN));
            low = Math.min(low, aside);
            high = Math.max(high, aside);
        }
        return high - low;
    }

    /** The longest stretch inside the outline of a line through a point. */
    private Optional<Shaft> longest(Point through) {
        List<Point> ring = outline.flatten(1);
        List<Double> crossings = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Vector a = ring.get(i).minus(through);
            Vector b = ring.get((i + 1) % ring.size()).minus(through);
            double sideA = way.left().dot(a);
            double sideB = way.left().dot(b);
            if (sideA > 0 != sideB > 0) {
                double share = sideA / (sideA - sideB);
                crossings.add(way.dot(a) + share * (way.dot(b) - way.dot(a)));
            }
        }
        crossings.sort(Comparator.naturalOrder());
        List<Shaft> stretches = new ArrayList<>();
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            stretches.add(new Shaft(
                    through.plus(way.times(crossings.get(i))), through.plus(way.times(crossings.get(i + 1)))));
        }
        return stretches.stream().max(Comparator.comparingDouble(Shaft::length));
    }
}
