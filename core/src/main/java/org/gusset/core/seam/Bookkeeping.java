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
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Mark;
import org.gusset.core.pattern.Piece;

/** The slips of book-keeping that ruin more cloth than wrong curves do: looked for without being asked. */
final class Bookkeeping {
    /** Edges sewn twice over less than this are not told of, in mm. */
    private static final double OVERLAP = 1;

    /** Widths of allowances closer than this are alike, in mm. */
    private static final double ALIKE = 0.05;

    /** A fold or straight edge this far off the grain is off, in degrees. */
    private static final double GRAIN = 1;

    /** A straight edge farther off the grain than this is meant to slant, in degrees. */
    private static final double SLANTED = 12;

    /** A head lower than this share of its width belongs to a dropped shoulder; common practice, no source. */
    private static final double FLAT_HEAD = 0.25;

    /** A flat head takes no more than this, in mm; common practice, no source. */
    private static final double FLAT_EASE = 5;

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
            List<Piece> pieces, List<SewnSeam> seams, Map<String, List<Sewing.Inner>> inner, Set<String> known) {
        List<Diagnostic> wrong = new ArrayList<>();
        for (SewnSeam seam : seams) {
            allowances(seam, wrong);
            hands(seam, wrong);
            flatHead(seam, wrong);
            selfSewn(seam, wrong);
        }
        twice(seams, wrong);
        drawnAllowances(seams, inner, wrong);
        for (Piece piece : pieces) {
            grainOfFold(piece, wrong);
        }
        if (!seams.isEmpty()) {
            unsewn(pieces, seams, known, wrong);
        }
        return wrong;
    }

    private static List<Run> runs(SewnSeam seam) {
        List<Run> runs = new ArrayList<>(seam.walk().first());
        runs.addAll(seam.walk().second());
        return runs;
    }

    /** The piece and edge of a run; empty if either is not known. */
    private record Sewn(Piece piece, Edge edge) {}

    private Optional<Sewn> sewn(Run run) {
        Optional<Piece> piece = sides.piece(run.piece());
        Optional<Edge> edge = sides.edge(run);
        return piece.isPresent() && edge.isPresent()
                ? Optional.of(new Sewn(piece.get(), edge.get()))
                : Optional.empty();
    }

    private void allowances(SewnSeam seam, List<Diagnostic> wrong) {
        Sewn one = null;
        boolean told = false;
        for (Run run : runs(seam)) {
            Optional<Sewn> found = sewn(run);
            if (found.isEmpty()) {
                continue;
            }
            Sewn sewn = found.get();
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
            } else if (!told && !net && Math.abs(width - one.edge().allowance().width()) > ALIKE) {
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

    private static Diagnostic pair(SeamCode code, SewnSeam seam, Sewn one, Sewn other) {
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
            wrong.add(pair(SeamCode.HEMS_DIFFER, seam, new Sewn(piece, one.get()), new Sewn(otherPiece, other.get()))
                    .with(Hint.of("allow.hems", "Allow the same on both, `turned up` on both or on none.")));
        }
    }

    /** Pieces cut all the same way up that are sewn to a left and a right hand. */
    private void hands(SewnSeam seam, List<Diagnostic> wrong) {
        Set<String> told = new LinkedHashSet<>();
        for (Run run : runs(seam)) {
            Optional<Piece> piece = sides.piece(run.piece());
            if (piece.isEmpty() || told.contains(run.piece()) || !oneHanded(piece.get())) {
                continue;
            }
            for (Run other : runs(seam)) {
                boolean handed = !other.piece().equals(run.piece())
                        && sides.piece(other.piece())
                                .map(Bookkeeping::bothHands)
                                .orElse(false);
                if (handed && !told.contains(run.piece()) && !Symmetry.isSymmetric(piece.get())) {
                    told.add(run.piece());
                    notMirrored(seam, piece.get(), other.piece(), wrong);
                }
            }
        }
    }

    private static void notMirrored(SewnSeam seam, Piece piece, String other, List<Diagnostic> wrong) {
        Cut cut = piece.cuts().get(0);
        wrong.add(Diagnostic.of(
                        SeamCode.NOT_MIRRORED,
                        seam.walk().place(),
                        "piece",
                        piece.name(),
                        "count",
                        cut.count(),
                        "other",
                        other)
                .with(Hint.of(
                        "cut.pairs",
                        cut.count() == 2
                                ? "Write `cut 1 pair`: a left one and a right one."
                                : "Write `cut {pairs} pairs`: as many left ones as right ones.",
                        "pairs",
                        cut.count() / 2)));
    }

    private static boolean oneHanded(Piece piece) {
        return !piece.cuts().isEmpty()
                && piece.cuts().get(0).arrangement() == Cut.Arrangement.SINGLE
                && piece.cuts().get(0).count() > 1;
    }

    private static boolean bothHands(Piece piece) {
        return piece.cuts().stream()
                .anyMatch(c -> c.arrangement() == Cut.Arrangement.PAIRS || c.arrangement() == Cut.Arrangement.ON_FOLD);
    }

    /** An edge sewn to the same edge of the other copy: the two must be mirror images, and straight ones lie along the grain. */
    private void selfSewn(SewnSeam seam, List<Diagnostic> wrong) {
        List<Run> first = seam.walk().first();
        List<Run> second = seam.walk().second();
        boolean self = first.size() == 1
                && second.size() == 1
                && !first.get(0).piece().isEmpty()
                && first.get(0).piece().equals(second.get(0).piece())
                && first.get(0).path().equals(second.get(0).path());
        if (!self) {
            return;
        }
        Optional<Sewn> sewn = sewn(first.get(0));
        if (sewn.isEmpty()) {
            return;
        }
        Piece piece = sewn.get().piece();
        if (oneHanded(piece) && !Symmetry.isSymmetric(piece)) {
            notMirrored(seam, piece, "itself", wrong);
        }
        Path path = sewn.get().edge().path();
        double off = offGrain(piece, path);
        if (path.straight() && off > GRAIN && off < SLANTED) {
            wrong.add(Diagnostic.of(
                            SeamCode.EDGE_OFF_GRAIN,
                            seam.walk().place(),
                            "edge",
                            sewn.get().edge().name(),
                            "piece",
                            piece.name(),
                            "angle",
                            Fact.angle(off),
                            "drift",
                            Fact.length(path.length() * StrictMath.sin(StrictMath.toRadians(off))))
                    .with(Hint.of("grain.along", "Lay the grain along it, if it is meant to hang straight.")));
        }
    }

    /** How far a path's chord is from along or across the grain, in degrees; 0 without a grain or on the bias. */
    private static double offGrain(Piece piece, Path path) {
        if (piece.grain().isEmpty() || piece.grain().get().bias()) {
            return 0;
        }
        Vector warp = piece.grain().get().to().minus(piece.grain().get().from());
        Vector way = path.end().minus(path.start());
        double angle = Math.abs(StrictMath.toDegrees(StrictMath.atan2(warp.cross(way), warp.dot(way)))) % 90;
        return Math.min(angle, 90 - angle);
    }

    private void grainOfFold(Piece piece, List<Diagnostic> wrong) {
        Optional<Edge> fold = piece.fold();
        if (fold.isPresent()) {
            double off = offGrain(piece, fold.get().path());
            if (off > GRAIN) {
                wrong.add(Diagnostic.of(
                                SeamCode.FOLD_OFF_GRAIN,
                                place(piece),
                                "fold",
                                fold.get().name(),
                                "piece",
                                piece.name(),
                                "angle",
                                Fact.angle(off))
                        .with(Hint.of(
                                "grain.fold",
                                "Cloth is folded along its warp or across it: write `grain along {fold}`.",
                                "fold",
                                fold.get().name())));
            }
        }
    }

    private record Stretched(SewnSeam seam, String words, double from, double to, Place place) {}

    private void twice(List<SewnSeam> seams, List<Diagnostic> wrong) {
        Map<Sewn, List<Stretched>> sewnWhere = new LinkedHashMap<>();
        for (SewnSeam seam : seams) {
            for (Run run : runs(seam)) {
                Optional<Sewn> sewn = sewn(run);
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

    /** Sewn edges that run outside another line of their piece by just their allowance. */
    private void drawnAllowances(List<SewnSeam> seams, Map<String, List<Sewing.Inner>> inner, List<Diagnostic> wrong) {
        Set<Sewn> seen = new LinkedHashSet<>();
        for (SewnSeam seam : seams) {
            for (Run run : runs(seam)) {
                Optional<Sewn> sewn = sewn(run);
                if (sewn.isEmpty() || !seen.add(sewn.get())) {
                    continue;
                }
                Edge edge = sewn.get().edge();
                double width = edge.allowance().width();
                for (Sewing.Inner line : inner.getOrDefault(run.piece(), List.of())) {
                    if (width > 0 && outside(edge.path(), line.path(), width)) {
                        wrong.add(Diagnostic.of(
                                        SeamCode.ALLOWANCE_DRAWN,
                                        run.place(),
                                        "edge",
                                        edge.name(),
                                        "piece",
                                        run.piece(),
                                        "width",
                                        Fact.length(width),
                                        "other",
                                        line.name())
                                .with(Hint.of(
                                        "allow.drawn",
                                        "Put `{other}` into the outline, or allow nothing on `{edge}`.",
                                        "other",
                                        line.name(),
                                        "edge",
                                        edge.name())));
                        break;
                    }
                }
            }
        }
    }

    /** True if an edge is the parallel copy of a line at a distance, all along. */
    private static boolean outside(Path edge, Path line, double width) {
        if (line.endless() || line.equals(edge) || Math.abs(edge.length() - line.length()) > 4 * width) {
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

    private void unsewn(List<Piece> pieces, List<SewnSeam> seams, Set<String> known, List<Diagnostic> wrong) {
        Set<String> used = new LinkedHashSet<>(known);
        seams.forEach(s -> runs(s).forEach(r -> used.add(r.piece())));
        for (Piece piece : pieces) {
            for (Mark mark : piece.marks()) {
                if (mark instanceof Mark.Placed placed) {
                    used.add(placed.piece());
                }
            }
        }
        for (Piece piece : pieces) {
            if (!used.contains(piece.name())) {
                wrong.add(Diagnostic.of(SeamCode.PIECE_UNSEWN, place(piece), "piece", piece.name())
                        .with(Hint.of("seam.piece", "Add a `seam` that joins it, so that its edges are checked.")));
            }
        }
    }

    /** A head that lies flat, eased into the armhole of two pieces or more. */
    private void flatHead(SewnSeam seam, List<Diagnostic> wrong) {
        double ease = seam.ease();
        List<Run> head = ease > 0 ? seam.walk().first() : seam.walk().second();
        List<Run> hole = ease > 0 ? seam.walk().second() : seam.walk().first();
        long bodies = hole.stream().map(Run::piece).distinct().count();
        if (head.size() != 1
                || bodies < 2
                || Math.abs(ease) <= FLAT_EASE
                || !head.get(0).taken().isEmpty()) {
            return;
        }
        Path path = head.get(0).path();
        Optional<Piece> piece = sides.piece(head.get(0).piece());
        Vector across = path.end().minus(path.start());
        boolean paired = piece.map(p -> p.worn() == 2).orElse(false);
        if (!paired || path.straight() || across.length() < path.length() / 2) {
            return;
        }
        double height = 0;
        for (int i = 1; i < 16; i++) {
            Vector to = path.at(path.length() * i / 16).minus(path.start());
            height = Math.max(height, Math.abs(across.unit().cross(to)));
        }
        if (height > 0.05 * across.length() && height < FLAT_HEAD * across.length()) {
            wrong.add(Diagnostic.of(
                            SeamCode.FLAT_HEAD_EASED,
                            seam.walk().place(),
                            "seam",
                            seam.name(),
                            "ease",
                            Fact.length(Math.abs(ease)),
                            "edge",
                            head.get(0).words(),
                            "piece",
                            head.get(0).piece(),
                            "height",
                            Fact.length(height),
                            "width",
                            Fact.length(across.length()))
                    .with(Hint.of(
                            "head.flat", "Make the head as long as the armhole, or draw it higher and narrower.")));
        }
    }
}
