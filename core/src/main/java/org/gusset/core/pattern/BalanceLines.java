package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.geometry.Meeting;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Vector;

/**
 * The lines by which a trial garment is judged on the body: they hang plumb or lie level if it fits. Of the guides of a piece those
 * are meant that run along the warp or square to it, from outline to outline.
 */
public final class BalanceLines {
    /** How far off the warp, or off square to it, a balance line may run, in degrees. */
    private static final double WITHIN = 0.5;

    /** A stretch that lies closer to the outline than this in its middle is an edge, in mm. */
    private static final double BESIDE = 1;

    private BalanceLines() {}

    /**
     * The stretches of a guide that lie inside a piece, each ending on its stitching line; none if the guide runs neither along the
     * warp nor square to it. A piece without a warp, or on the bias, counts as if it had been drawn along it.
     */
    public static List<Path> of(Piece piece, Path guide) {
        Vector warp = piece.grain()
                .filter(grain -> !grain.bias() && grain.from().distance(grain.to()) > 0)
                .map(grain -> grain.to().minus(grain.from()).unit())
                .orElse(Vector.UP);
        Vector way = guide.tangent(0);
        double off = StrictMath.sin(StrictMath.toRadians(WITHIN));
        List<Path> inside = new ArrayList<>();
        if (Math.abs(way.cross(warp)) > off && Math.abs(way.dot(warp)) > off) {
            return inside;
        }
        Path outline = piece.stitching();
        List<Meeting> meetings = guide.meetings(outline);
        if (meetings.size() < 2) {
            return inside;
        }
        double from = meetings.get(0).s();
        double to = meetings.get(meetings.size() - 1).s();
        for (Mark mark : new MarksWithin(outline).of(List.of(new Mark.Line(guide.part(from, to))))) {
            Path stretch = ((Mark.Line) mark).along();
            if (outline.nearest(stretch.at(stretch.length() / 2)).distance() > BESIDE) {
                inside.add(stretch);
            }
        }
        return inside;
    }
}
