package org.gusset.svg.internal.write;

import org.gusset.core.geometry.ArcSegment;
import org.gusset.core.geometry.CubicSegment;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Segment;

/** The {@code d} attribute of a path: lines, circular arcs and cubic curves as they are, nothing flattened. */
public final class PathData {
    /**
     * The most one arc command sweeps. Where a command sweeps about half a circle, its centre hangs on the last digit of its ends:
     * a rounding of 0.0001 mm would move it by 0.15 mm for a radius of 22 cm. Up to a quarter the error stays that of the ends. But many
     * viewers draw a command of up to a quarter as one cubic, which leaves the circle by 0.00027 of the radius (0.25 mm for 90 cm);
     * half of that sweep leaves it by 0.000004.
     */
    private static final double MAX_SWEEP = 45;

    private PathData() {}

    /** The path data; closed paths end with {@code Z}. */
    public static String of(Path path) {
        StringBuilder out = new StringBuilder();
        append(out, path);
        return out.toString();
    }

    /** Writes the path data behind what is there. */
    static void append(StringBuilder out, Path path) {
        append(out.append('M'), path.start());
        for (Segment segment : path.segments()) {
            if (segment instanceof ArcSegment arc) {
                arc(out, arc);
            } else if (segment instanceof CubicSegment cubic) {
                append(out.append(" C"), cubic.control1());
                append(out.append(' '), cubic.control2());
                append(out.append(' '), cubic.end());
            } else {
                append(out.append(" L"), segment.end());
            }
        }
        if (path.closed()) {
            out.append(" Z");
        }
    }

    private static void arc(StringBuilder out, ArcSegment arc) {
        int count = Math.max(1, (int) Math.ceil(Math.abs(arc.sweepDegrees()) / MAX_SWEEP - 1e-9));
        String radius = Numbers.text(arc.radius());
        for (int i = 1; i <= count; i++) {
            Point end = i == count ? arc.end() : arc.at((double) i / count);
            out.append(" A").append(radius).append(' ').append(radius);
            // The sweep flag is 1 for clockwise as seen, since y counts down; our angles count anticlockwise.
            out.append(" 0 0 ").append(arc.sweepDegrees() < 0 ? '1' : '0');
            append(out.append(' '), end);
        }
    }

    private static void append(StringBuilder out, Point point) {
        Numbers.append(out, point.x());
        Numbers.append(out.append(' '), point.y());
    }
}
