package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;

/**
 * Whether an allowance lies flat on its piece when it is turned over its stitching line: a hem turned up, a seam pressed open. School
 * geometry: where two edges meet at the angle a, an allowance d with a mitred end is cut (e + d cos a) / sin a beyond the corner, e
 * being the neighbour's allowance, and turned over it lies where the piece ends (e - d cos a) / sin a beyond it, which differs by
 * 2 d cot a.
 */
final class TurnedAllowances {
    /** What a hem may be longer or shorter in all, in mm; common practice, no source. */
    private static final double SPARE = 5;

    /** What may stand out beyond one end of a seam, in mm; common practice, no source. */
    private static final double OUT = 3;

    private final Map<String, Place> places;

    /** @param places where the draft begins each piece */
    TurnedAllowances(Map<String, Place> places) {
        this.places = places;
    }

    /** Hems that are wider or narrower than what they lie on. */
    List<Diagnostic> hems(List<Piece> pieces, Set<Sides.Sewn> sewn) {
        List<Diagnostic> wrong = new ArrayList<>();
        for (Piece piece : pieces) {
            for (int i = 0; i < piece.edges().size(); i++) {
                Edge edge = piece.edges().get(i);
                double spare = Hem.plain(piece, edge, sewn) ? over(piece, i, true) + over(piece, i, false) : 0;
                if (Math.abs(spare) > SPARE) {
                    wrong.add(hem(piece, edge, spare));
                }
            }
        }
        return wrong;
    }

    private Diagnostic hem(Piece piece, Edge edge, double spare) {
        double width = edge.allowance().width();
        return Diagnostic.of(
                        SeamCode.HEM_OFF,
                        places.getOrDefault(piece.name(), Place.nowhere()),
                        "edge",
                        edge.name(),
                        "piece",
                        piece.name(),
                        "width",
                        Fact.length(width),
                        "spare",
                        Fact.length(Math.abs(spare)),
                        "way",
                        spare > 0 ? "longer" : "shorter")
                .with(Hint.of(
                        "hem.turned",
                        "Write `{edge} {width} turned up`: then its ends are the mirror image of the piece.",
                        "edge",
                        edge.name(),
                        "width",
                        Fact.length(width)));
    }

    /** Ends of a seam that is pressed open which stand out beyond the edges beside it. */
    List<Diagnostic> pressedOpen(SewnSeam seam, Sides sides) {
        List<Diagnostic> wrong = new ArrayList<>();
        if (!seam.walk().pressed().equals("open")) {
            return wrong;
        }
        for (WalkedSide side : List.of(seam.first(), seam.second())) {
            for (boolean atStart : new boolean[] {true, false}) {
                WalkedSide.Leg leg = atStart ? side.first() : side.last();
                Optional<Sides.Sewn> own = sides.sewn(leg.run());
                Optional<Edge> beside = sides.neighbour(leg, atStart);
                if (own.isEmpty() || beside.isEmpty() || beside.get().onFold()) {
                    continue;
                }
                Piece piece = own.get().piece();
                int index = piece.edges().indexOf(own.get().edge());
                boolean before = piece.edges().indexOf(beside.get())
                        == (index + piece.edges().size() - 1) % piece.edges().size();
                double out = over(piece, index, before);
                if (out > OUT) {
                    wrong.add(standing(seam, own.get(), beside.get(), out));
                }
            }
        }
        return wrong;
    }

    private static Diagnostic standing(SewnSeam seam, Sides.Sewn own, Edge beside, double out) {
        return Diagnostic.of(
                        SeamCode.ALLOWANCE_STANDS_OUT,
                        seam.walk().place(),
                        "seam",
                        seam.name(),
                        "edge",
                        own.edge().name(),
                        "piece",
                        own.piece().name(),
                        "beside",
                        beside.name(),
                        "out",
                        Fact.length(out))
                .with(Hint.of(
                        "corner.mirrored",
                        "Write `corner {edge}, {beside} mirrored to {edge}` in {piece}, or trim it when it is pressed.",
                        "edge",
                        own.edge().name(),
                        "beside",
                        beside.name(),
                        "piece",
                        own.piece().name()));
    }

    /**
     * By how much the end of an allowance lies outside the cut edge of the neighbour when it is turned over its stitching line, in mm;
     * negative where it falls short.
     *
     * @param atStart the end at which the edge begins as the outline runs
     */
    static double over(Piece piece, int index, boolean atStart) {
        List<Edge> edges = piece.edges();
        int n = edges.size();
        Edge edge = edges.get(index);
        Edge beside = edges.get(atStart ? (index + n - 1) % n : (index + 1) % n);
        double angle = Truing.corner(piece, atStart ? (index + n - 1) % n : index);
        double width = edge.allowance().width();
        double sine = StrictMath.sin(StrictMath.toRadians(angle));
        // A fold has no end to lie on, a corner that runs on or points inward no allowance beyond it.
        if (width <= 0 || beside.onFold() || angle < 30 || angle > 150) {
            return 0;
        }
        Point corner = atStart ? edge.path().start() : edge.path().end();
        Vector away = atStart
                ? edge.path().tangent(0).opposite()
                : edge.path().tangentBefore(edge.path().length());
        Point cut = atStart ? edge.cut().start() : edge.cut().end();
        double is = cut.minus(corner).dot(away);
        double lies = (beside.allowance().width() - width * StrictMath.cos(StrictMath.toRadians(angle))) / sine;
        return is - lies;
    }
}
