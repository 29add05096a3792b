package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;

/** The inside of a closed outline and what already stands in it: tells where words have room. Grows while a piece is drawn. */
final class Room {
    /** How far flattened obstacles may stray from true ones, in mm; far less than any clearance. */
    private static final double FLATTENING = 0.1;

    /** The distance of the lines that fill an area, in mm; less than the height of any label. */
    private static final double FILLING = 4;

    private final List<Point> ring;
    private final List<Stretch> stretches = new ArrayList<>();

    /** A straight stretch that words keep clear of. */
    record Stretch(Point from, Point to) {}

    Room(Path outline) {
        ring = outline.flatten(FLATTENING);
        add(outline);
    }

    /** The outline as a closed row of points. */
    List<Point> ring() {
        return ring;
    }

    /** Everything in the way, the outline among it. */
    List<Stretch> stretches() {
        return Collections.unmodifiableList(stretches);
    }

    /** Takes up the room of a line. */
    void add(Path path) {
        List<Point> points = path.flatten(FLATTENING);
        for (int i = 1; i < points.size(); i++) {
            stretches.add(new Stretch(points.get(i - 1), points.get(i)));
        }
    }

    /** Takes up the room of words. */
    void add(Oblong box) {
        List<Point> corners = box.corners();
        for (int i = 0; i < 4; i++) {
            stretches.add(new Stretch(corners.get(i), corners.get((i + 1) % 4)));
        }
        stretches.add(new Stretch(box.at(-box.width() / 2, 0), box.at(box.width() / 2, 0)));
    }

    /** Takes up all the room inside a closed path. */
    void fill(Path outline) {
        List<Point> points = outline.flatten(FLATTENING);
        Box box = outline.bounds();
        for (double y = box.top() + FILLING / 2; y < box.bottom(); y += FILLING) {
            List<Double> crossings = new ArrayList<>();
            for (int i = 1; i < points.size(); i++) {
                Point a = points.get(i - 1);
                Point b = points.get(i);
                if (a.y() > y != b.y() > y) {
                    crossings.add(a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()));
                }
            }
            Collections.sort(crossings);
            for (int i = 0; i + 1 < crossings.size(); i += 2) {
                stretches.add(new Stretch(new Point(crossings.get(i), y), new Point(crossings.get(i + 1), y)));
            }
        }
    }

    /** True if a rectangle lies inside and keeps clear of everything. */
    boolean clear(Oblong box, double clearance) {
        return holds(box.centre()) && misses(box, clearance);
    }

    /** True if a rectangle keeps clear of everything, be it inside or outside. */
    boolean misses(Oblong box, double clearance) {
        for (Stretch stretch : stretches) {
            if (box.meets(stretch.from(), stretch.to(), clearance)) {
                return false;
            }
        }
        return true;
    }

    /** True if a point lies inside the outline, by the even-odd rule. */
    boolean holds(Point p) {
        boolean inside = false;
        for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
            Point a = ring.get(i);
            Point b = ring.get(j);
            if (a.y() > p.y() != b.y() > p.y() && p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x()) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** The centre of gravity of the outline; of its points if it has no area. */
    Point centroid() {
        double area = 0;
        double x = 0;
        double y = 0;
        Point origin = ring.get(0);
        for (int i = 0; i < ring.size(); i++) {
            double ax = ring.get(i).x() - origin.x();
            double ay = ring.get(i).y() - origin.y();
            Point next = ring.get((i + 1) % ring.size());
            double bx = next.x() - origin.x();
            double by = next.y() - origin.y();
            double cross = ax * by - bx * ay;
            area += cross;
            x += (ax + bx) * cross;
            y += (ay + by) * cross;
        }
        return Math.abs(area) < 1e-9 ? origin : new Point(origin.x() + x / (3 * area), origin.y() + y / (3 * area));
    }
}
