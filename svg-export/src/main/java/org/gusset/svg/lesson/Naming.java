package org.gusset.svg.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.jspecify.annotations.Nullable;

/** Finds places for names beside points and lines: on no other words, on as little else as can be, led to where they belong if far. */
final class Naming {
    private static final int DIRECTIONS = 24;
    private static final double[] GAPS = {2.5, 4.5, 8, 13, 19, 26, 34, 44, 56, 70};
    private static final double[] PLACES = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88, 0.05, 0.95};
    private static final double LED = 6;

    /** The most that a leader costs: rather one that crosses words than no name. */
    private static final double CROSSED = 60;

    private static final double GRID = 5;

    /** Names of lines rather stand square to them. */
    private static final double ASKEW = 4;

    private final Crowd crowd;
    private final Point middle;

    /** @param middle what names of points rather stand away from */
    Naming(Crowd crowd, Point middle) {
        this.crowd = crowd;
        this.middle = middle;
    }

    private record Option(Box box, Point at, double gap, double cost, int number) {}

    /** A place that is looked at: beside a point, so far off, and how much it is disliked whatever stands there. */
    private record Place(Point at, Vector way, double gap, double dislike, int number) {}

    /** The words beside a point, with a leader if need be; nothing if there is no room at all. */
    List<Ink> atPoint(Lettered words, Point point) {
        List<Place> places = new ArrayList<>();
        Vector out = point.minus(middle);
        for (double gap : GAPS) {
            for (int i = 0; i < DIRECTIONS; i++) {
                Vector way = Vector.atAngle(360.0 * i / DIRECTIONS);
                double inward = out.length() < 1 ? 0 : 1 - way.dot(out.unit());
                places.add(new Place(point, way, gap, inward * 0.8 + gap * 0.7, places.size()));
            }
        }
        return set(words, point, places);
    }

    /** The words beside a line. */
    List<Ink> atLine(Lettered words, Path line) {
        List<Place> places = new ArrayList<>();
        for (double place : PLACES) {
            double s = line.length() * place;
            Point at = line.at(s);
            Vector left = line.tangent(s).left();
            for (Vector way : List.of(left, left.opposite())) {
                for (double gap : GAPS) {
                    places.add(new Place(at, way, gap, Math.abs(place - 0.5) * 3 + gap * 0.7, places.size()));
                }
            }
        }
        Point half = line.at(line.length() / 2);
        for (double gap : GAPS) {
            for (int i = 0; i < DIRECTIONS; i++) {
                places.add(
                        new Place(half, Vector.atAngle(360.0 * i / DIRECTIONS), gap, ASKEW + gap * 0.7, places.size()));
            }
        }
        return set(words, half, places);
    }

    /** The place that costs least, the first of those that cost the same. What is liked best is looked at first, so that few are. */
    private @Nullable Option beside(Lettered words, List<Place> places) {
        places.sort(Comparator.comparingDouble(Place::dislike));
        Option best = null;
        for (Place place : places) {
            double limit = best == null ? Crowd.FORBIDDEN : best.cost();
            if (place.dislike() > limit) {
                break;
            }
            Box box = words.beside(place.at(), place.way(), place.gap());
            double cost = crowd.cost(box, limit) + place.dislike();
            if (place.gap() > LED && cost < Crowd.FORBIDDEN && cost <= limit) {
                cost += 3 + Math.min(CROSSED, crowd.cost(leader(place.at(), box), 0.08, CROSSED));
            }
            if (cost < Crowd.FORBIDDEN
                    && (best == null
                            || cost < best.cost()
                            || (cost == best.cost() && place.number() < best.number()))) {
                best = new Option(box, place.at(), place.gap(), cost, place.number());
            }
        }
        return best;
    }

    /** Anywhere in the frame, the nearer the better. */
    private @Nullable Option anywhere(Lettered words, Point at) {
        Option best = null;
        Box frame = crowd.frame();
        for (double x = frame.left() + words.width() / 2; x <= frame.right() - words.width() / 2; x += GRID) {
            for (double y = frame.top() + words.height() / 2; y <= frame.bottom() - words.height() / 2; y += GRID) {
                Box box = words.box(new Point(x, y));
                double gap = at.distance(new Point(x, y));
                double limit = best == null ? Crowd.FORBIDDEN : best.cost();
                double cost = gap * 0.7 > limit ? Crowd.FORBIDDEN : crowd.cost(box, limit);
                if (cost < Crowd.FORBIDDEN && cost <= limit) {
                    cost += gap * 0.7 + Math.min(CROSSED, crowd.cost(leader(at, box), 0.08, CROSSED));
                    if (best == null || cost < best.cost()) {
                        best = new Option(box, at, gap, cost, 0);
                    }
                }
            }
        }
        return best;
    }

    private List<Ink> set(Lettered words, Point at, List<Place> places) {
        Option best = beside(words, places);
        if (best == null) {
            best = anywhere(words, at);
        }
        if (best == null) {
            return List.of();
        }
        crowd.addWords(best.box());
        List<Ink> ink = new ArrayList<>();
        if (best.gap() > LED) {
            Path leader = leader(best.at(), best.box());
            crowd.add(leader, Crowd.FAINT);
            ink.add(Ink.Stroke.of(Role.DIMENSION_REACH, leader));
        }
        ink.add(words.in(best.box()));
        return ink;
    }

    private static Path leader(Point at, Box box) {
        Point to = new Point(
                Math.max(box.left(), Math.min(box.right(), at.x())),
                Math.max(box.top(), Math.min(box.bottom(), at.y())));
        Vector way = to.minus(at);
        return way.length() < 3
                ? Path.line(at, to.plus(Vector.RIGHT.times(0.01)))
                : Path.line(at.plus(way.unit().times(1)), to);
    }
}
