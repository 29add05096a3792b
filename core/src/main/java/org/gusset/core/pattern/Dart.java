package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;

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
 * @param towardEnd true if it is pressed toward the edge's end, false toward its start
 */
public record Dart(
        String name, double from, double to, Path legA, Path legB, Path foldLine, double angle, boolean towardEnd)
        implements TakenUp {
    /** A dart wider than this at its tip, in degrees, has no peak. */
    static final double BLUNTEST = 120;

    /**
     * A dart between two legs of one length that end at its tip. Its peak lies where the edge beside the leg toward which it is
     * pressed, turned over that leg, meets the fold line, so that the edge is straight when the dart is pressed.
     *
     * @param edge the edge as drawn, on which the dart is open from {@code from} to {@code to}
     * @throws Fault if it is too wide for its depth to have a peak
     */
    public static Dart of(String name, Path edge, double from, double to, Path legA, Path legB, boolean towardEnd) {
        Point tip = legA.end();
        Vector wayA = legA.start().minus(tip);
        Vector wayB = legB.start().minus(tip);
        double angle = Math.abs(StrictMath.toDegrees(StrictMath.atan2(wayA.cross(wayB), wayA.dot(wayB))));
        if (angle > BLUNTEST) {
            throw Fault.of(DartCode.TOO_BLUNT, "dart", name);
        }
        Point peak = legA.start();
        if (to - from >= Path.COINCIDE) {
            // The edge as it leaves the leg, away from the dart, turned over the leg into the dart.
            Vector beside =
                    towardEnd ? edge.tangent(to) : edge.tangentBefore(from).opposite();
            peak = peak(
                    name, tip, (towardEnd ? legB : legA).start(), wayA.unit().plus(wayB.unit()), beside);
        }
        return new Dart(name, from, to, legA, legB, Path.line(tip, peak), angle, towardEnd);
    }

    private static Point peak(String name, Point tip, Point foot, Vector fold, Vector beside) {
        Vector turned = Transform.mirror(tip, foot.minus(tip)).apply(beside);
        double cross = turned.unit().cross(fold.unit());
        double away = Math.abs(cross) < 1e-6 ? Double.NaN : tip.minus(foot).cross(fold.unit()) / cross;
        if (!(away > 0)) {
            throw Fault.of(DartCode.TOO_BLUNT, "dart", name);
        }
        return foot.plus(turned.unit().times(away));
    }

    /** The same dart seen along the edge turned round, which is {@code length} mm long. */
    public Dart reversed(double length) {
        return new Dart(name, length - to, length - from, legB, legA, foldLine, angle, !towardEnd);
    }

    /** The same dart, whose edge has another length before it. */
    public Dart at(double newFrom, double newTo) {
        return new Dart(name, newFrom, newTo, legA, legB, foldLine, angle, towardEnd);
    }

    /** The dart with every point moved. */
    public Dart transformed(Transform by) {
        return new Dart(
                name, from, to, legA.transformed(by), legB.transformed(by), foldLine.transformed(by), angle, towardEnd);
    }

    /** What it takes up of the edge, in mm. */
    @Override
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
     * @throws Fault if two darts overlap
     */
    public static Path opened(Path edge, List<Dart> darts) {
        List<Dart> inOrder = new ArrayList<>(darts);
        inOrder.removeIf(Dart::isNone);
        inOrder.sort((a, b) -> Double.compare(a.from(), b.from()));
        List<Path> parts = new ArrayList<>();
        double at = 0;
        Point last = edge.start();
        for (Dart dart : inOrder) {
            if (dart.from < at - Path.COINCIDE) {
                throw Fault.of(DartCode.OVERLAP, "dart", dart.name);
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
        // An edge without length has no parts.
        return parts.isEmpty() ? edge : Path.joined(parts);
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
