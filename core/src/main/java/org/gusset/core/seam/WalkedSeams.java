package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.pattern.Piece;
import org.jspecify.annotations.Nullable;

/**
 * The seams of a drawing, walked, with what is needed to walk them again when some of the pieces changed: what rests on one seam or
 * one piece alone is taken over as long as that is the same. Immutable once made; {@link #with} gives what {@link #of} would.
 */
public final class WalkedSeams {
    /** What is found about one seam by itself. */
    private record Alone(SewnSeam seam, Finding finding, List<Diagnostic> wrong) {}

    /** What is found about one piece by itself. */
    private record Apart(List<Diagnostic> folds, List<Diagnostic> grain, List<Diagnostic> buttons) {}

    private final Map<String, Piece> pieces;
    private final Sewing.Known known;
    private final Sides sides;
    private final Directions.Found directions;
    private final Map<Walk, Alone> seams = new IdentityHashMap<>();
    private final Map<String, Apart> byPiece = new LinkedHashMap<>();
    private final Sewing sewing;

    private WalkedSeams(List<Piece> all, List<Walk> walks, Sewing.Known known, @Nullable WalkedSeams before) {
        this.pieces = new LinkedHashMap<>();
        all.forEach(p -> pieces.put(p.name(), p));
        this.known = known;
        WalkedSeams old = before != null && before.sameTerms(known) ? before : null;
        Set<Walk> same = old == null ? Set.of() : old.unchanged(walks, pieces);
        this.sides = old == null ? new Sides(pieces) : new Sides(pieces, old.sides, same);
        Corners corners = new Corners(walks);
        this.directions = new Directions(sides, corners).of(walks, old == null ? null : old.directions, same);
        this.sewing = walked(all, walks, corners, old, same);
    }

    /** Walks all seams and looks for what is wrong. */
    public static WalkedSeams of(List<Piece> pieces, List<Walk> walks, Sewing.Known known) {
        return new WalkedSeams(pieces, walks, known, null);
    }

    /** The same for other pieces and walks, of the same draft; those that are still the same objects are not walked anew. */
    public WalkedSeams with(List<Piece> newPieces, List<Walk> walks, Sewing.Known newKnown) {
        return new WalkedSeams(newPieces, walks, newKnown, this);
    }

    /** What was found. */
    public Sewing sewing() {
        return sewing;
    }

    /** True if what findings about one seam or piece rest on beside it is the same. */
    private boolean sameTerms(Sewing.Known other) {
        return known.places().equals(other.places())
                && known.strips().equals(other.strips())
                && known.pointed().equals(other.pointed());
    }

    /** The walks that were walked before, along pieces that are the same. */
    private Set<Walk> unchanged(List<Walk> walks, Map<String, Piece> now) {
        Set<Walk> same = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Walk walk : walks) {
            if (seams.containsKey(walk)
                    && walk.runs().stream().allMatch(r -> SameObject.is(pieces.get(r.piece()), now.get(r.piece())))) {
                same.add(walk);
            }
        }
        return same;
    }

    private Sewing walked(
            List<Piece> all, List<Walk> walks, Corners corners, @Nullable WalkedSeams old, Set<Walk> same) {
        SeamFindings match = new SeamFindings(pieces, known.strips());
        Truing truing = new Truing(sides, known.pointed());
        Hands hands = new Hands(sides);
        GrainChecks grain = new GrainChecks(sides, known.places());
        FlatHead head = new FlatHead(sides);
        UnmarkedHeads heads = new UnmarkedHeads(sides);
        Buttoning buttoning = new Buttoning(known.places());
        TurnedAllowances turned = new TurnedAllowances(known.places());
        Set<Sides.Sewn> sewn = new LinkedHashSet<>();
        List<SewnSeam> walkedSeams = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        List<Diagnostic> wrong = new ArrayList<>();
        for (int i = 0; i < walks.size(); i++) {
            Walk walk = walks.get(i);
            Directions.Pair pair = directions.pairs().get(i);
            Alone alone = old != null && same.contains(walk) ? old.seams.get(walk) : null;
            if (alone == null
                    || !SameObject.is(alone.seam().first(), pair.first())
                    || !SameObject.is(alone.seam().second(), pair.second())) {
                Stretches stretches = new Stretches(walk, pair);
                SewnSeam seam = new SewnSeam(
                        walk,
                        pair.first(),
                        pair.second(),
                        sides.marks(pair.first()),
                        sides.marks(pair.second()),
                        sides.allowance(walk.first()),
                        sides.allowance(walk.second()),
                        stretches.of());
                Finding finding = match.of(seam, stretches.diagnostics());
                List<Diagnostic> own = new ArrayList<>();
                if (finding.verdict() == Finding.Verdict.PASSED
                        && walk.runs().stream().allMatch(r -> pieces.containsKey(r.piece()))) {
                    // Where the lengths are off, notches are too, and a piece that could not be made has none: one
                    // slip, one message.
                    own.addAll(new NotchPairs(seam).wrong());
                }
                own.addAll(truing.meetings(seam));
                own.addAll(hands.wrong(seam));
                own.addAll(grain.wrong(seam));
                own.addAll(head.wrong(seam));
                own.addAll(heads.wrong(seam));
                own.addAll(turned.pressedOpen(seam, sides));
                alone = new Alone(seam, finding, List.copyOf(own));
            }
            seams.put(walk, alone);
            walkedSeams.add(alone.seam());
            findings.add(alone.finding());
            wrong.addAll(alone.wrong());
            walk.runs().forEach(r -> sides.sewn(r).ifPresent(sewn::add));
        }
        for (Piece piece : all) {
            Apart apart = old != null && SameObject.is(old.pieces.get(piece.name()), piece)
                    ? old.byPiece.get(piece.name())
                    : null;
            if (apart == null) {
                apart = new Apart(
                        truing.folds(piece, known.places().getOrDefault(piece.name(), Place.nowhere())),
                        grain.wrong(piece),
                        buttoning.wrong(piece));
            }
            byPiece.put(piece.name(), apart);
        }
        byPiece.values().forEach(p -> wrong.addAll(p.folds()));
        byPiece.values().forEach(p -> wrong.addAll(p.grain()));
        byPiece.values().forEach(p -> wrong.addAll(p.buttons()));
        wrong.addAll(turned.hems(all, sewn));
        LonePieces lone = new LonePieces(all, walkedSeams, known);
        wrong.addAll(lone.wrong(all));
        wrong.addAll(Lookalikes.of(walkedSeams));
        wrong.addAll(new Bookkeeping(sides, known.places()).wrong(all, walkedSeams, known.inner(), lone));
        wrong.addAll(new MissingHands(sides).wrong(walkedSeams));
        SewingOrder.Found order = new SewingOrder(walkedSeams, corners, sides).found();
        wrong.addAll(order.wrong());
        List<List<String>> needs = new ArrayList<>();
        for (Set<Integer> before : order.needs()) {
            Set<String> names = new LinkedHashSet<>();
            before.forEach(b -> names.add(walkedSeams.get(b).name()));
            needs.add(List.copyOf(names));
        }
        return new Sewing(walkedSeams, findings, needs, wrong, Hem.of(all, sewn));
    }
}
