package org.gusset.svg.lesson;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;

/** What stands in a picture already, and how much words or an arrow would hurt it or be hurt by it. Grows while one is drawn. */
final class Crowd {
    /** So much costs what must not be. */
    static final double FORBIDDEN = 1e6;

    /** Lines that are new, arrows, lines that stood before, and light lines, by how little words may lie on them. */
    static final double STRONG = 40;

    static final double ARROW = 35;
    static final double LIGHT = 14;
    static final double FAINT = 6;

    private static final double FLATTENING = 0.2;
    private static final double CLEARANCE = 1;
    private static final double BETWEEN_WORDS = 1;
    private static final double SAMPLE = 2;
    private static final double NEAR = 3;

    private final Box frame;
    private final List<Stretch> stretches = new ArrayList<>();
    private final List<Box> words = new ArrayList<>();

    /** A straight stretch of a line, with the box of what may be near it. */
    private record Stretch(Point from, Point to, double weight, double left, double right, double top, double bottom) {
        /** A hair more than what is near, so that nothing is passed over for how it was rounded. */
        private static final double REACH = NEAR + 1e-6;

        Stretch(Point from, Point to, double weight) {
            this(
                    from,
                    to,
                    weight,
                    Math.min(from.x(), to.x()) - REACH,
                    Math.max(from.x(), to.x()) + REACH,
                    Math.min(from.y(), to.y()) - REACH,
                    Math.max(from.y(), to.y()) + REACH);
        }

        boolean mayBeNear(double x, double y) {
            return x >= left && x <= right && y >= top && y <= bottom;
        }
    }

    Crowd(Box frame) {
        this.frame = frame;
    }

    Box frame() {
        return frame;
    }

    List<Box> words() {
        return words;
    }

    void add(Path path, double weight) {
        List<Point> points = path.flatten(FLATTENING);
        for (int i = 1; i < points.size(); i++) {
            stretches.add(new Stretch(points.get(i - 1), points.get(i), weight));
        }
    }

    void addDot(Point at, double radius) {
        stretches.add(new Stretch(at.plus(Vector.LEFT.times(radius)), at.plus(Vector.RIGHT.times(radius)), STRONG));
        stretches.add(new Stretch(at.plus(Vector.UP.times(radius)), at.plus(Vector.DOWN.times(radius)), STRONG));
    }

    void addWords(Box box) {
        words.add(box);
    }

    /** What words in a box cost; {@link #FORBIDDEN} or more outside the frame or on other words. */
    double cost(Box box) {
        return cost(box, FORBIDDEN);
    }

    /** The same, or something above the limit if it costs more than that. */
    double cost(Box box, double limit) {
        if (!within(box)) {
            return FORBIDDEN;
        }
        Box kept = box.grown(BETWEEN_WORDS);
        double cost = 0;
        for (Box other : words) {
            if (overlap(kept, other)) {
                return FORBIDDEN;
            }
        }
        Box clear = box.grown(CLEARANCE);
        for (Stretch stretch : stretches) {
            double inside = inside(stretch, clear);
            if (inside >= 0) {
                cost += stretch.weight * (1 + inside / 4);
                if (cost > limit) {
                    return cost;
                }
            }
        }
        return cost;
    }

    /** What an arrow or leader costs that runs straight or bent: it may cross lines, but not run along them nor over words. */
    double cost(Path line, double crossing) {
        return cost(line, crossing, FORBIDDEN);
    }

    /** The same, or something above the limit if it costs more than that. */
    double cost(Path line, double crossing, double limit) {
        double cost = 0;
        List<Point> points = line.flatten(FLATTENING);
        for (int i = 1; i < points.size(); i++) {
            Stretch own = new Stretch(points.get(i - 1), points.get(i), 0);
            for (Box box : words) {
                if (inside(own, box.grown(0.5)) >= 0) {
                    return FORBIDDEN;
                }
            }
        }
        for (Point point : points) {
            if (!holds(point)) {
                return FORBIDDEN;
            }
        }
        int count = Math.max(1, (int) Math.ceil(line.length() / SAMPLE));
        for (int i = 1; i < count; i++) {
            double s = line.length() * i / count;
            cost += along(line.at(s), line.tangent(s), crossing);
            if (cost > limit) {
                return cost;
            }
        }
        return cost;
    }

    private double along(Point at, Vector way, double crossing) {
        double cost = 0;
        for (Stretch stretch : stretches) {
            if (!stretch.mayBeNear(at.x(), at.y())) {
                continue;
            }
            Vector own = stretch.to.minus(stretch.from);
            double length = own.length();
            if (length < 1e-9) {
                continue;
            }
            double s = Math.max(0, Math.min(1, at.minus(stretch.from).dot(own) / (length * length)));
            double distance = at.distance(stretch.from.toward(stretch.to, s));
            if (distance < NEAR) {
                boolean alike = Math.abs(way.unit().dot(own.unit())) > 0.95;
                cost = Math.max(cost, alike ? stretch.weight : distance < 1.2 ? crossing * stretch.weight : 0);
            }
        }
        return cost;
    }

    private boolean within(Box box) {
        return box.left() >= frame.left()
                && box.right() <= frame.right()
                && box.top() >= frame.top()
                && box.bottom() <= frame.bottom();
    }

    private boolean holds(Point point) {
        return within(new Box(point.x(), point.y(), point.x(), point.y()));
    }

    static boolean overlap(Box a, Box b) {
        return a.left() < b.right() && b.left() < a.right() && a.top() < b.bottom() && b.top() < a.bottom();
    }

    /** How much of a stretch lies in a box; negative if nothing does. */
    private static double inside(Stretch stretch, Box box) {
        double dx = stretch.to.x() - stretch.from.x();
        double dy = stretch.to.y() - stretch.from.y();
        double[] reach = {0, 1};
        boolean meets = within(stretch.from.x(), dx, box.left(), box.right(), reach)
                && within(stretch.from.y(), dy, box.top(), box.bottom(), reach);
        return meets ? (reach[1] - reach[0]) * Math.sqrt(dx * dx + dy * dy) : -1;
    }

    private static boolean within(double start, double by, double low, double high, double[] reach) {
        if (by == 0) {
            return start > low && start < high;
        }
        double first = (low - start) / by;
        double second = (high - start) / by;
        reach[0] = Math.max(reach[0], Math.min(first, second));
        reach[1] = Math.min(reach[1], Math.max(first, second));
        return reach[0] < reach[1];
    }
}
