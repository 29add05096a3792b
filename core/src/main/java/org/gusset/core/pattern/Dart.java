package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;

/**
 * A dart that opens an edge.
 *
 * @param name its name
 * @param from the arc length along the edge as drawn at which it opens, in mm
 * @param to the arc length at which it closes; {@code to - from} is its intake
 * @param legA the leg nearer to the edge's start, from the edge to the tip
 * @param legB the other leg, as long
 * @param foldLine from the tip to the peak, halfway between the legs
 * @param angle the angle at the tip in degrees
 */
public record Dart(String name, double from, double to, Path legA, Path legB, Path foldLine, double angle) {
    /** What it takes up of the edge, in mm. */
    public double intake() {
        return to - from;
    }

    public Point tip() {
        return legA.end();
    }

    /** The point at the cut edge that makes the edge straight when the dart is pressed. */
    public Point peak() {
        return foldLine.end();
    }

    /** True if it takes nothing up, so that there is no dart. */
    public boolean isNone() {
        return intake() < Path.COINCIDE;
    }

    /**
     * An edge as it is stitched and cut: at each dart it runs to the leg, over the peak and on from the other leg.
     *
     * @throws org.gusset.core.diagnostic.Fault if two darts overlap
     */
    public static Path opened(Path edge, List<Dart> darts) {
        List<Dart> inOrder = new ArrayList<>(darts);
        inOrder.removeIf(Dart::isNone);
        inOrder.sort(Comparator.comparingDouble(Dart::from));
        List<Path> parts = new ArrayList<>();
        double at = 0;
        Point last = edge.start();
        for (Dart dart : inOrder) {
            if (dart.from < at - Path.COINCIDE) {
                throw org.gusset.core.diagnostic.Fault.of(DartCode.OVERLAP, "dart", dart.name);
            }
            if (dart.from > at + Path.COINCIDE) {
                Path part = edge.part(at, dart.from);
                parts.add(part);
                last = part.end();
            }
            parts.add(line(last, dart.legA.start(), dart.peak(), dart.legB.start(), edge.at(dart.to)));
            last = edge.at(dart.to);
            at = dart.to;
        }
        if (at < edge.length() - Path.COINCIDE) {
            parts.add(edge.part(at, edge.length()));
        }
        return Path.joined(parts);
    }

    private static Path line(Point... points) {
        List<Point> apart = new ArrayList<>();
        for (Point point : points) {
            if (apart.isEmpty() || apart.get(apart.size() - 1).distance(point) > Path.COINCIDE) {
                apart.add(point);
            }
        }
        return Path.line(apart.toArray(new Point[0]));
    }
}
