package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.pattern.Piece;

/**
 * How the pieces of a drawing are sewn together: every seam walked from end to end, what is found about it, and in which order.
 *
 * @param seams the seams, in the order in which they are sewn
 * @param findings one finding a seam, in the same order: whether its sides match
 * @param needs for each seam the names of the seams that must be sewn before it
 * @param diagnostics what else is wrong: corners that do not run on, slips of book-keeping, an order that cannot be sewn
 * @param hems what is turned up when all seams are sewn
 */
public record Sewing(
        List<SewnSeam> seams,
        List<Finding> findings,
        List<List<String>> needs,
        List<Diagnostic> diagnostics,
        List<Hem> hems) {
    /** A line of a piece that is no edge of it. */
    public record Inner(String name, Path path) {}

    /** An edge that is meant to make a point where it meets the fold. */
    public record Pointed(String piece, String edge) {}

    /**
     * What is known of the pieces beside themselves.
     *
     * @param places where the draft begins each piece
     * @param strips the names of those that are strips
     * @param inner the lines of each that are no edges
     * @param pointed edges that are meant to make a point at the fold
     * @param unknown pieces that seams name which could not be walked
     * @param leftOut for each piece the seams that name it and that the choices leave out
     */
    public record Known(
            Map<String, Place> places,
            Set<String> strips,
            Map<String, List<Inner>> inner,
            Set<Pointed> pointed,
            Set<String> unknown,
            Map<String, List<String>> leftOut) {
        public Known {
            places = Map.copyOf(places);
            strips = Set.copyOf(strips);
            inner = Map.copyOf(inner);
            pointed = Set.copyOf(pointed);
            unknown = Set.copyOf(unknown);
            leftOut = Map.copyOf(leftOut);
        }
    }

    public Sewing {
        seams = List.copyOf(seams);
        findings = List.copyOf(findings);
        needs = List.copyOf(needs);
        diagnostics = List.copyOf(diagnostics);
        hems = List.copyOf(hems);
    }

    /** Walks all seams and looks for what is wrong. */
    public static Sewing of(List<Piece> pieces, List<Walk> walks, Known known) {
        Map<String, Piece> named = new LinkedHashMap<>();
        pieces.forEach(p -> named.put(p.name(), p));
        Sides sides = new Sides(named);
        Corners corners = new Corners();
        List<Directions.Pair> pairs = new Directions(sides, corners).of(walks);
        SeamFindings match = new SeamFindings(named, known.strips());
        Truing truing = new Truing(sides, known.pointed());
        Hands hands = new Hands(sides);
        GrainChecks grain = new GrainChecks(sides, known.places());
        FlatHead head = new FlatHead(sides);
        UnmarkedHeads heads = new UnmarkedHeads(sides);
        Buttoning buttoning = new Buttoning(known.places());
        TurnedAllowances turned = new TurnedAllowances(known.places());
        Set<Sides.Sewn> sewn = new LinkedHashSet<>();
        List<SewnSeam> seams = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        List<Diagnostic> wrong = new ArrayList<>();
        for (int i = 0; i < walks.size(); i++) {
            Directions.Pair pair = pairs.get(i);
            Stretches stretches = new Stretches(walks.get(i), pair);
            SewnSeam seam = new SewnSeam(
                    walks.get(i),
                    pair.first(),
                    pair.second(),
                    sides.marks(pair.first()),
                    sides.marks(pair.second()),
                    sides.allowance(walks.get(i).first()),
                    sides.allowance(walks.get(i).second()),
                    stretches.of());
            seams.add(seam);
            Finding finding = match.of(seam, stretches.diagnostics());
            findings.add(finding);
            if (finding.verdict() == Finding.Verdict.PASSED) {
                // Where the lengths are off, notches are too: one slip, one message.
                wrong.addAll(new NotchPairs(seam).wrong());
            }
            wrong.addAll(truing.meetings(seam));
            wrong.addAll(hands.wrong(seam));
            wrong.addAll(grain.wrong(seam));
            wrong.addAll(head.wrong(seam));
            wrong.addAll(heads.wrong(seam));
            wrong.addAll(turned.pressedOpen(seam, sides));
            seam.walk().runs().forEach(r -> sides.sewn(r).ifPresent(sewn::add));
        }
        pieces.forEach(p -> wrong.addAll(truing.folds(p, known.places().getOrDefault(p.name(), Place.nowhere()))));
        pieces.forEach(p -> wrong.addAll(grain.wrong(p)));
        pieces.forEach(p -> wrong.addAll(buttoning.wrong(p)));
        wrong.addAll(turned.hems(pieces, sewn));
        LonePieces lone = new LonePieces(pieces, seams, known);
        wrong.addAll(lone.wrong(pieces));
        wrong.addAll(Lookalikes.of(seams));
        wrong.addAll(new Bookkeeping(sides, known.places()).wrong(pieces, seams, known.inner(), lone));
        wrong.addAll(new MissingHands(sides).wrong(seams));
        SewingOrder.Found order = new SewingOrder(seams, corners, sides).found();
        wrong.addAll(order.wrong());
        List<List<String>> needs = new ArrayList<>();
        for (Set<Integer> before : order.needs()) {
            Set<String> names = new LinkedHashSet<>();
            before.forEach(b -> names.add(seams.get(b).name()));
            needs.add(List.copyOf(names));
        }
        return new Sewing(seams, findings, needs, wrong, Hem.of(pieces, sewn));
    }
}
