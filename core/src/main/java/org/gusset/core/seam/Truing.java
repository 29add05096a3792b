package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;

/**
 * Whether edges run on where pieces are joined: square to a fold, smooth or square across a seam. A corner that is off by an angle
 * makes a point or a dip; its depth is told for an edge that is blended in over {@link #BLEND}: a straight edge that leans by the
 * angle a is as much deeper at its end than a circular arc that begins with its direction and ends square,
 * {@code BLEND * (tan a - tan a / 2)}.
 */
final class Truing {
    /** Corners within this are right, in degrees. */
    static final double WITHIN = 1;

    /** An edge is blended in over this length, in mm; common practice, no source. */
    static final double BLEND = 20;

    private final Sides sides;
    private final Set<Sewing.Pointed> pointed;

    /** @param pointed edges that are meant to make a point at the fold */
    Truing(Sides sides, Set<Sewing.Pointed> pointed) {
        this.sides = sides;
        this.pointed = pointed;
    }

    /** The depth of the point or dip that a corner makes, in mm; the angle is half of what both sides are off, in degrees. */
    static double dip(double degrees) {
        double a = StrictMath.toRadians(Math.min(Math.abs(degrees), 89));
        return BLEND * (StrictMath.tan(a) - StrictMath.tan(a / 2));
    }

    /** The corner of a piece between an edge and the next, in degrees: less than 180 where the piece points outward. */
    static double corner(Piece piece, int edge) {
        List<Edge> edges = piece.edges();
        Edge one = edges.get(edge);
        Edge next = edges.get((edge + 1) % edges.size());
        Vector in = one.path().tangentBefore(one.path().length());
        Vector out = next.path().tangent(0);
        double turn = StrictMath.toDegrees(StrictMath.atan2(in.cross(out), in.dot(out)));
        // Anticlockwise as seen, the inside lies to the left and a turn to the left makes a corner that points outward.
        return 180 - (piece.stitching().signedArea() > 0 ? turn : -turn);
    }

    /** Edges that are not square to the fold at which they end. */
    List<Diagnostic> folds(Piece piece, Place place) {
        List<Diagnostic> wrong = new ArrayList<>();
        int n = piece.edges().size();
        for (int i = 0; i < n; i++) {
            Edge one = piece.edges().get(i);
            Edge next = piece.edges().get((i + 1) % n);
            if (one.onFold() == next.onFold()) {
                continue;
            }
            Edge fold = one.onFold() ? one : next;
            Edge edge = one.onFold() ? next : one;
            double angle = corner(piece, i);
            double off = angle - 90;
            if (Math.abs(off) > WITHIN && !pointed.contains(new Sewing.Pointed(piece.name(), edge.name()))) {
                wrong.add(Diagnostic.of(
                                SeamCode.FOLD_NOT_SQUARE,
                                place,
                                "edge",
                                edge.name(),
                                "piece",
                                piece.name(),
                                "fold",
                                fold.name(),
                                "angle",
                                Fact.angle(angle),
                                "shape",
                                shape(off),
                                "dip",
                                Fact.length(dip(off)))
                        .with(Hint.of(
                                "fold.square",
                                "Let `{edge}` end square to the fold (as a curve `heading square to {fold}`), which moves its"
                                        + " end by {dip} {way}; if a point is meant, write `corner {edge}, {fold} pointed`.",
                                "edge",
                                edge.name(),
                                "fold",
                                fold.name(),
                                "dip",
                                Fact.length(dip(off)),
                                "way",
                                off < 0 ? "into the piece" : "out of it")));
            }
        }
        return wrong;
    }

    private static String shape(double off) {
        return off < 0 ? "a point" : "a dip";
    }

    /** One side of a meeting: the edge that meets the end of the seam, and its corner with the sewn edge. */
    private record Met(Piece piece, Edge edge, double corner) {}

    /** What is wrong where a seam says that edges meet. */
    List<Diagnostic> meetings(SewnSeam seam) {
        List<Diagnostic> wrong = new ArrayList<>();
        for (Walk.Meeting meeting : seam.walk().meetings()) {
            meeting(seam, meeting, wrong);
        }
        return wrong;
    }

    private void meeting(SewnSeam seam, Walk.Meeting meeting, List<Diagnostic> wrong) {
        Optional<Boolean> atStart = end(seam, meeting.at());
        if (atStart.isEmpty()) {
            wrong.add(Diagnostic.of(
                            SeamCode.MEETING_NOT_AT_END,
                            meeting.place(),
                            "point",
                            meeting.at().words(),
                            "seam",
                            seam.name())
                    .with(Hint.of("meeting.end", "Name the point where the seam begins or ends.")));
            return;
        }
        Optional<Met> first =
                met(atStart.get() ? seam.first().first() : seam.first().last(), atStart.get());
        Optional<Met> second =
                met(atStart.get() ? seam.second().first() : seam.second().last(), atStart.get());
        if (first.isEmpty() || second.isEmpty()) {
            return;
        }
        if (meeting.smooth()) {
            smooth(seam, meeting, first.get(), second.get(), wrong);
        } else {
            square(seam, meeting, first.get(), wrong);
            boolean same = first.get().equals(second.get());
            if (!same) {
                square(seam, meeting, second.get(), wrong);
            }
        }
    }

    private static Optional<Boolean> end(SewnSeam seam, Walk.Spot spot) {
        for (WalkedSide side : List.of(seam.first(), seam.second())) {
            for (double at : side.places(spot)) {
                if (at <= Run.OFF) {
                    return Optional.of(true);
                } else if (at >= side.length() - Run.OFF) {
                    return Optional.of(false);
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Met> met(WalkedSide.Leg leg, boolean atStart) {
        Optional<Piece> piece = sides.piece(leg.run().piece());
        Optional<Edge> own = sides.edge(leg.run());
        Optional<Edge> neighbour = sides.neighbour(leg, atStart);
        if (piece.isEmpty() || own.isEmpty() || neighbour.isEmpty()) {
            return Optional.empty();
        }
        List<Edge> edges = piece.get().edges();
        int index = edges.indexOf(own.get());
        boolean follows = edges.get((index + 1) % edges.size()).equals(neighbour.get());
        int corner = follows ? index : (index + edges.size() - 1) % edges.size();
        return Optional.of(new Met(piece.get(), neighbour.get(), corner(piece.get(), corner)));
    }

    private static void smooth(SewnSeam seam, Walk.Meeting meeting, Met one, Met other, List<Diagnostic> wrong) {
        double sum = one.corner() + other.corner();
        double off = sum - 180;
        if (Math.abs(off) <= WITHIN) {
            return;
        }
        wrong.add(Diagnostic.of(
                        SeamCode.CORNER_NOT_SMOOTH,
                        meeting.place(),
                        "seam",
                        seam.name(),
                        "first",
                        one.piece().name() + "." + one.edge().name(),
                        "second",
                        other.piece().name() + "." + other.edge().name(),
                        "point",
                        meeting.at().words(),
                        "firstAngle",
                        Fact.angle(one.corner()),
                        "secondAngle",
                        Fact.angle(other.corner()),
                        "sum",
                        Fact.angle(sum),
                        "shape",
                        shape(off),
                        "dip",
                        Fact.length(dip(off / 2)))
                .with(Hint.of(
                        "corner.smooth",
                        "Give `{first}` a corner of {firstWanted} there, or `{second}` one of {secondWanted}, or turn each by"
                                + " {half} and blend them in.",
                        "first",
                        one.piece().name() + "." + one.edge().name(),
                        "firstWanted",
                        Fact.angle(180 - other.corner()),
                        "second",
                        other.piece().name() + "." + other.edge().name(),
                        "secondWanted",
                        Fact.angle(180 - one.corner()),
                        "half",
                        Fact.angle(Math.abs(off) / 2))));
    }

    private static void square(SewnSeam seam, Walk.Meeting meeting, Met met, List<Diagnostic> wrong) {
        double off = met.corner() - 90;
        if (Math.abs(off) <= WITHIN) {
            return;
        }
        String edge = met.piece().name() + "." + met.edge().name();
        wrong.add(Diagnostic.of(
                        SeamCode.CORNER_NOT_SQUARE,
                        meeting.place(),
                        "seam",
                        seam.name(),
                        "edge",
                        edge,
                        "point",
                        meeting.at().words(),
                        "angle",
                        Fact.angle(met.corner()),
                        "off",
                        Fact.angle(Math.abs(off)),
                        "shape",
                        shape(off),
                        "dip",
                        Fact.length(dip(off)))
                .with(Hint.of(
                        "corner.square",
                        "Let `{edge}` end square to the seam, which moves its end by {dip}.",
                        "edge",
                        edge,
                        "dip",
                        Fact.length(dip(off)))));
    }
}
