package org.gusset.svg.internal.write;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.geometry.Point;

/**
 * Reads path data back as a viewer does and samples it. The arc command follows the implementation notes of SVG 1.1, appendix F.6.5
 * (from end points to centre; from memory).
 */
public final class PathReader {
    private static final int SAMPLES = 64;
    private static final Pattern TOKEN = Pattern.compile("[MLACZ]|-?\\d+(?:\\.\\d+)?");

    private final List<String> tokens = new ArrayList<>();
    private final List<Point> points = new ArrayList<>();
    private int at;

    private PathReader(String data) {
        assertOnlyKnownCharacters(data);
        Matcher matcher = TOKEN.matcher(data);
        while (matcher.find()) {
            tokens.add(matcher.group());
        }
    }

    /** Points densely along a path, its own vertices among them. */
    public static List<Point> points(String data) {
        PathReader reader = new PathReader(data);
        reader.read();
        return reader.points;
    }

    private static void assertOnlyKnownCharacters(String data) {
        if (!data.matches("[-MLACZ0-9. ]+")) {
            throw new AssertionError("unexpected path data: " + data);
        }
    }

    private void read() {
        while (at < tokens.size()) {
            String command = tokens.get(at++);
            switch (command) {
                case "M", "L" -> points.add(point());
                case "C" -> cubic(last(), point(), point(), point());
                case "A" -> arc(last());
                case "Z" -> points.add(points.get(0));
                default -> throw new AssertionError("a command was expected, not " + command);
            }
        }
    }

    private Point last() {
        return points.get(points.size() - 1);
    }

    private double number() {
        return Double.parseDouble(tokens.get(at++));
    }

    private Point point() {
        double x = number();
        return new Point(x, number());
    }

    private void cubic(Point a, Point b, Point c, Point d) {
        for (int i = 1; i <= SAMPLES; i++) {
            double t = (double) i / SAMPLES;
            double u = 1 - t;
            points.add(new Point(
                    u * u * u * a.x() + 3 * u * u * t * b.x() + 3 * u * t * t * c.x() + t * t * t * d.x(),
                    u * u * u * a.y() + 3 * u * u * t * b.y() + 3 * u * t * t * c.y() + t * t * t * d.y()));
        }
    }

    private void arc(Point from) {
        double r = number();
        double ry = number();
        double rotation = number();
        boolean large = number() == 1;
        boolean sweep = number() == 1;
        Point to = point();
        if (ry != r || rotation != 0) {
            throw new AssertionError("only circles are expected");
        }
        double hx = (from.x() - to.x()) / 2;
        double hy = (from.y() - to.y()) / 2;
        double half = Math.hypot(hx, hy);
        double off = Math.sqrt(Math.max(0, r * r / (half * half) - 1)) * (large == sweep ? -1 : 1);
        double cx = off * hy + (from.x() + to.x()) / 2;
        double cy = -off * hx + (from.y() + to.y()) / 2;
        double start = Math.atan2(from.y() - cy, from.x() - cx);
        double by = Math.atan2(to.y() - cy, to.x() - cx) - start;
        if (sweep && by < 0) {
            by += 2 * Math.PI;
        } else if (!sweep && by > 0) {
            by -= 2 * Math.PI;
        }
        for (int i = 1; i <= SAMPLES; i++) {
            double angle = start + by * i / SAMPLES;
            points.add(new Point(cx + r * Math.cos(angle), cy + r * Math.sin(angle)));
        }
    }
}
