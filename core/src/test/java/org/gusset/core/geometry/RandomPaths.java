package org.gusset.core.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random segments and paths for properties; a seed makes each again. */
final class RandomPaths {
    private final Random random;

    RandomPaths(long seed) {
        this.random = new Random(seed);
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    int count(int bound) {
        return random.nextInt(bound);
    }

    Point point(double size) {
        return new Point(between(-size, size), between(-size, size));
    }

    CubicSegment cubic(double size) {
        return cubicFrom(point(size), size);
    }

    private CubicSegment cubicFrom(Point start, double size) {
        return new CubicSegment(start, point(size), point(size), point(size));
    }

    ArcSegment arc(double size) {
        return new ArcSegment(point(size), between(size / 10, size), between(-360, 360), between(-350, 350));
    }

    LineSegment line(double size) {
        return new LineSegment(point(size), point(size));
    }

    Segment segment(double size) {
        int kind = count(3);
        return kind == 0 ? line(size) : kind == 1 ? arc(size) : cubic(size);
    }

    /** A path of lines, arcs and cubics with corners. */
    Path path(int segments, double size) {
        List<Segment> out = new ArrayList<>();
        Point at = point(size);
        for (int i = 0; i < segments; i++) {
            int kind = count(3);
            Segment next;
            if (kind == 0) {
                next = new LineSegment(at, point(size));
            } else if (kind == 1) {
                double radius = between(size / 10, size / 2);
                double from = between(0, 360);
                Point centre = at.plus(Vector.atAngle(from).times(-radius));
                next = new ArcSegment(centre, radius, from, between(-300, 300));
            } else {
                next = cubicFrom(at, size);
            }
            out.add(next);
            at = next.end();
        }
        return Path.of(out);
    }

    /** A shift, a turn and perhaps a mirror. */
    Transform motion() {
        Transform turned = Transform.turn(point(100), between(-360, 360))
                .then(Transform.shift(point(300).minus(Point.ORIGIN)));
        return random.nextBoolean()
                ? turned
                : turned.then(Transform.mirror(point(50), Vector.atAngle(between(0, 360))));
    }

    static CubicSegment cubic(double... xy) {
        return new CubicSegment(
                new Point(xy[0], xy[1]), new Point(xy[2], xy[3]), new Point(xy[4], xy[5]), new Point(xy[6], xy[7]));
    }
}
