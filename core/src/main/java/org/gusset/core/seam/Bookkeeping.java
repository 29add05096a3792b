package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;

/** The slips of book-keeping that ruin more cloth than wrong curves do: looked for without being asked. */
final class Bookkeeping {
    /** Edges sewn twice over less than this are not told of, in mm. */
    private static final double OVERLAP = 1;

    /** Widths of allowances closer than this are alike, in mm. */
    private static final double ALIKE = 0.05;

    private final Sides sides;
    private final Map<String, Place> places;

    /** @param places where the draft begins each piece */
    Bookkeeping(Sides sides, Map<String, Place> places) {
        this.sides = sides;
        this.places = places;
    }

    private Place place(Piece piece) {
        return places.getOrDefault(piece.name(), Place.nowhere());
    }

    /** What is wrong with the pieces and seams. */
    List<Diagnostic> wrong(
            List<Piece> pieces, List<SewnSeam> seams, Map<String, List<Sewing.Inner>> inner, LonePieces lone) {
        List<Diagnostic> wrong = new ArrayList<>();
        for (SewnSeam seam : seams) {
            allowances(seam, wrong);
        }
        twice(seams, wrong);
        drawnAllowances(seams, inner, wrong);
        for (Piece piece : pieces) {
            if (lone.alone(piece)) {
                drawnAllRound(piece, inner.getOrDefault(piece.name(), List.of()), wrong);
                if (!seams.isEmpty() && lone.leftOut(piece).isEmpty()) {
                    unsewn(piece, wrong);
                }
            }
        }
        return wrong;
    }

    private void allowances(SewnSeam seam, List<Diagnostic> wrong) {
        Sides.Sewn one = null;
        boolean told = false;
        for (Run run : seam.walk().runs()) {
            Optional<Sides.Sewn> found = sides.sewn(run);
            if (found.isEmpty()) {
                continue;
            }
            Sides.Sewn sewn = found.get();
            Edge edge = sewn.edge();
            double width = edge.allowance().width();
            boolean net =
                    sewn.piece().edges().stream().allMatch(e -> e.allowance().width() == 0);
            if (edge.onFold() || (width == 0 && !net)) {
                SeamCode code = edge.onFold() ? SeamCode.SEWN_ON_FOLD : SeamCode.SEWN_WITHOUT_ALLOWANCE;
                Hint hint = edge.onFold()
                        ? Hint.of("fold.sewn", "Cut the piece as a pair, or take the edge out of the seam.")
                        : Hint.of("allow.sewn", "Give it one in `allow`, or take it out of the seam.");
                wrong.add(Diagnostic.of(
                                code,
                                run.place(),
                                "edge",
                                edge.name(),
                                "piece",
                                sewn.piece().name(),
                                "seam",
                                seam.name())
                        .with(hint));
            } else if (one == null) {
                one = sewn;
            } else if (!told && Math.abs(width - one.edge().allowance().width()) > ALIKE) {
                told = true;
                wrong.add(pair(SeamCode.ALLOWANCES_DIFFER, seam, one, sewn)
                        .with(Hint.of(
                                "allow.alike",
                                "Allow the same on both, or write on the pieces that the wider one lies under.")));
            }
        }
        hems(seam, true, wrong);
        hems(seam, false, wrong);
    }

    private static Diagnostic pair(SeamCode code, SewnSeam seam, Sides.Sewn one, Sides.Sewn other) {
        return Diagnostic.of(
                code,
                seam.walk().place(),
                "seam",
                seam.name(),
                "edge",
                one.edge().name(),
                "piece",
                one.piece().name(),
                "width",
                Fact.length(one.edge().allowance().width()),
                "otherEdge",
                other.edge().name(),
                "otherPiece",
                other.piece().name(),
                "otherWidth",
                Fact.length(other.edge().allowance().width()));
    }

    /** The edges beside an end of the seam, if no seam uses them, are finished together. */
    private void hems(SewnSeam seam, boolean atStart, List<Diagnostic> wrong) {
        WalkedSide.Leg first = atStart ? seam.first().first() : seam.first().last();
        WalkedSide.Leg second = atStart ? seam.second().first() : seam.second().last();
        Optional<Edge> one = sides.neighbour(first, atStart);
        Optional<Edge> other = sides.neighbour(second, atStart);
        if (one.isEmpty()
                || other.isEmpty()
                || one.get().onFold()
                || other.get().onFold()) {
            return;
        }
        boolean alike = one.get().name().equals(other.get().name())
                || (one.get().allowance().turnedUp() && other.get().allowance().turnedUp());
        boolean differ =
                Math.abs(one.get().allowance().width() - other.get().allowance().width()) > ALIKE
                        || one.get().allowance().turnedUp()
                                != other.get().allowance().turnedUp();
        if (alike && differ) {
            Piece piece = sides.piece(first.run().piece()).orElseThrow();
            Piece otherPiece = sides.piece(second.run().piece()).orElseThrow();
            wrong.add(pair(
                            SeamCode.HEMS_DIFFER,
                            seam,
                            new Sides.Sewn(piece, one.get()),
                            new Sides.Sewn(otherPiece, other.get()))
                    .with(Hint.of("allow.hems", "Allow the same on both, `turned up` on both or on none.")));
        }
    }

    private record Stretched(SewnSeam seam, String words, double from, double to, Place place) {}

    private void twice(List<SewnSeam> seams, List<Diagnostic> wrong) {
        Map<Sides.Sewn, List<Stretched>> sewnWhere = new LinkedHashMap<>();
        for (SewnSeam seam : seams) {
            for (Run run : seam.walk().runs()) {
                Optional<Sides.Sewn> sewn = sides.sewn(run);
                if (sewn.isEmpty() || layered(sewn.get().piece())) {
                    continue;
                }
                Path edge = sewn.get().edge().path();
                double a = edge.nearest(run.path().start()).s();
                double b = edge.nearest(run.path().end()).s();
                boolean whole = run.edge().equals(sewn.get().edge().name());
                double from = whole ? 0 : Math.min(a, b);
                double to = whole ? edge.length() : Math.max(a, b);
                List<Stretched> others = sewnWhere.computeIfAbsent(sewn.get(), k -> new ArrayList<>());
                for (Stretched other : others) {
                    double both = Math.min(to, other.to()) - Math.max(from, other.from());
                    if (!other.seam().name().equals(seam.name()) && both > OVERLAP) {
                        wrong.add(Diagnostic.of(
                                        SeamCode.SEWN_TWICE,
                                        run.place(),
                                        "length",
                                        Fact.length(both),
                                        "edge",
                                        sewn.get().edge().name(),
                                        "piece",
                                        run.piece(),
                                        "seam",
                                        other.seam().name(),
                                        "other",
                                        seam.name())
                                .with(Hint.of(
                                        "seam.once",
                                        "Name the right edge, or `part of` it; an edge that takes in two layers at once is"
                                                + " named in one seam.")));
                        break;
                    }
                }
                others.add(new Stretched(seam, run.words(), from, to, run.place()));
            }
        }
    }

    /** True if a piece is there in layers, each of which may have a seam of its own. */
    private static boolean layered(Piece piece) {
        return piece.cuts().stream()
                .anyMatch(c -> c.arrangement() == Cut.Arrangement.LAYERS
                        || (c.count() > 1 && c.arrangement() != Cut.Arrangement.SINGLE));
    }

    /** Sides.Sewn edges that run outside another line of their piece by just their allowance. */
    private void drawnAllowances(List<SewnSeam> seams, Map<String, List<Sewing.Inner>> inner, List<Diagnostic> wrong) {
        Set<Sides.Sewn> seen = new LinkedHashSet<>();
        for (SewnSeam seam : seams) {
            for (Run run : seam.walk().runs()) {
                Optional<Sides.Sewn> sewn = sides.sewn(run);
                if (sewn.isEmpty() || !seen.add(sewn.get())) {
                    continue;
                }
                Edge edge = sewn.get().edge();
                double width = edge.allowance().width();
                for (Sewing.Inner line : inner.getOrDefault(run.piece(), List.of())) {
                    if (comparable(edge, line.path()) && outside(edge.path(), line.path(), width)) {
                        wrong.add(drawn(run.place(), edge, run.piece(), line));
                        break;
                    }
                }
            }
        }
    }

    /** A line inside a piece that no seam uses may be a mark; two of its edges beside such lines are no accident. */
    private void drawnAllRound(Piece piece, List<Sewing.Inner> inner, List<Diagnostic> wrong) {
        List<Diagnostic> drawn = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            double width = edge.allowance().width();
            inner.stream()
                    .filter(line -> comparable(edge, line.path()) && outside(edge.path(), line.path(), width))
                    .findFirst()
                    .ifPresent(line -> drawn.add(drawn(place(piece), edge, piece.name(), line)));
        }
        if (drawn.size() > 1) {
            wrong.addAll(drawn);
        }
    }

    private static Diagnostic drawn(Place place, Edge edge, String piece, Sewing.Inner line) {
        return Diagnostic.of(
                        SeamCode.ALLOWANCE_DRAWN,
                        place,
                        "edge",
                        edge.name(),
                        "piece",
                        piece,
                        "width",
                        Fact.length(edge.allowance().width()),
                        "other",
                        line.name())
                .with(Hint.of(
                        "allow.drawn",
                        "Put `{other}` into the outline, or allow nothing on `{edge}`.",
                        "other",
                        line.name(),
                        "edge",
                        edge.name()));
    }

    /** True if a line is about as long as an edge, so that the edge may be drawn beside it by its allowance. */
    static boolean comparable(Edge edge, Path line) {
        double width = edge.allowance().width();
        return width > 0 && !line.endless() && Math.abs(edge.path().length() - line.length()) <= 4 * width;
    }

    /** True if an edge is the parallel copy of a line at a distance, all along. */
    private static boolean outside(Path edge, Path line, double width) {
        if (line.equals(edge)) {
            return false;
        }
        for (double share : new double[] {0.15, 0.32, 0.5, 0.68, 0.85}) {
            double off = line.nearest(edge.at(share * edge.length())).distance();
            if (Math.abs(off - width) > ALIKE) {
                return false;
            }
        }
        return true;
    }

    private void unsewn(Piece piece, List<Diagnostic> wrong) {
        wrong.add(Diagnostic.of(SeamCode.PIECE_UNSEWN, place(piece), "piece", piece.name())
                .with(Hint.of("seam.piece", "Add a `seam` that joins it, so that its edges are checked.")));
    }
}
