package org.gusset.core.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.geometry.Meeting;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Position;
import org.gusset.core.geometry.Vector;

/** Cuts notches from the cutting line inwards, square to the stitching line. */
final class Notching {
    /** A notch may lie this far off its edge, in mm. */
    static final double OFF = 1e-3;

    /** The strokes of a double or triple notch lie this far apart, in mm; common practice, no source. */
    static final double APART = 6;

    /** No stroke is deeper than this, in mm; common practice, no source. */
    static final double DEEPEST = 6;

    /** A stroke leaves this much of the allowance whole, or half of it if that is less, in mm. */
    static final double LEFT_WHOLE = 3;

    /** The stroke on an edge without allowance reaches this far inside, in mm. */
    static final double SHORT = 3;

    private final Outline outline;
    private final List<Edge> edges;
    private final Path cutting;
    private final Telling telling;

    Notching(Outline outline, List<Edge> edges, Path cutting, Telling telling) {
        this.outline = outline;
        this.edges = edges;
        this.cutting = cutting;
        this.telling = telling;
    }

    /** The notch, or nothing and the reason told; its edge exists. */
    Optional<Notch> notch(PieceSpec.NotchSpec spec) {
        Edge edge = edges.get(outline.indexOf(spec.edge()));
        Position place = edge.path().nearest(spec.at());
        if (!(place.distance() <= OFF)) {
            telling.tell(
                    PieceCode.NOTCH_OFF_EDGE,
                    spec.place(),
                    "edge",
                    spec.edge(),
                    "",
                    spec.at(),
                    "distance",
                    Fact.length(place.distance()));
            return Optional.empty();
        } else if (spec.strokes() < 1 || spec.strokes() > 3) {
            telling.tell(PieceCode.BAD_STROKES, spec.place(), "edge", spec.edge(), "count", spec.strokes());
            return Optional.empty();
        }
        List<Notch.Tick> ticks = new ArrayList<>();
        for (int i = 0; i < spec.strokes(); i++) {
            double s = place.s() + (i - (spec.strokes() - 1) / 2.0) * APART;
            ticks.add(tick(edge, s));
        }
        return Optional.of(new Notch(spec.edge(), place.s(), place.point(), ticks));
    }

    private Notch.Tick tick(Edge edge, double s) {
        Path seam = edge.path();
        double on = Math.max(0, Math.min(seam.length(), s));
        Vector way = s < on || on == seam.length() ? seam.tangentBefore(on) : seam.tangent(on);
        // Beyond the edge's ends the stitching line counts as prolonged straight.
        Point at = seam.at(on).plus(way.times(s - on));
        Vector out = outline.side().out(way);
        double width = edge.allowance().width();
        if (width == 0) {
            return new Notch.Tick(at, at.plus(out.times(-SHORT)));
        }
        Point outer = outer(at, out, width);
        Vector in = at.minus(outer).unit();
        double room = at.distance(outer);
        double depth = Math.min(DEEPEST, room - Math.min(LEFT_WHOLE, room / 2));
        return new Notch.Tick(outer, outer.plus(in.times(depth)));
    }

    /**
     * Where the cutting line lies square off a place of the stitching line: the allowance away, or nearer at corners and hollows
     * that are cut off. Beside a corner that points inwards there may be no such place; then the nearest one is taken.
     */
    private Point outer(Point at, Vector out, double width) {
        Point far = at.plus(out.times(width + OFF));
        for (Meeting meeting : Path.line(at, far).meetings(cutting)) {
            if (meeting.s() > Path.COINCIDE) {
                return Math.abs(meeting.s() - width) <= OFF ? at.plus(out.times(width)) : meeting.point();
            }
        }
        return cutting.nearest(at).point();
    }
}
