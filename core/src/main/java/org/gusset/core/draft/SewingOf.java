package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.geometry.Path;
import org.gusset.core.pattern.Assembly;
import org.gusset.core.pattern.Corner;
import org.gusset.core.pattern.Piece;
import org.gusset.core.seam.Sewing;
import org.gusset.core.seam.Walk;
import org.gusset.core.seam.WalkedSeams;
import org.gusset.core.seam.Walking;
import org.jspecify.annotations.Nullable;

/** Gathers from an evaluated draft what its sewing is worked out from. */
final class SewingOf {
    private final Draft draft;
    private final Evaluation evaluation;

    SewingOf(Draft draft, Evaluation evaluation) {
        this.draft = draft;
        this.evaluation = evaluation;
    }

    /**
     * @param pieces the sound pieces
     * @param before the seams of another drawing of the draft, of which what is the same is taken over
     */
    WalkedSeams of(List<Piece> pieces, @Nullable WalkedSeams before) {
        List<Walk> walks = new ArrayList<>();
        Set<String> unknown = new LinkedHashSet<>();
        Map<String, List<String>> leftOut = new LinkedHashMap<>();
        for (Draft.CheckNode check : draft.checks()) {
            Object value = evaluation.value(check.node()).orElse(null);
            if (value instanceof Walk walk) {
                walks.add(walk);
            } else if (evaluation.graph().definition(check.node()).operation() instanceof Walking walking) {
                Set<String> named = new LinkedHashSet<>();
                walking.first().forEach(r -> named.add(r.piece()));
                walking.second().forEach(r -> named.add(r.piece()));
                if (evaluation.state(check.node()) == Evaluation.State.LEFT_OUT) {
                    named.forEach(p ->
                            leftOut.computeIfAbsent(p, k -> new ArrayList<>()).add(check.name()));
                } else {
                    unknown.addAll(named);
                }
            }
        }
        Map<String, Place> places = new LinkedHashMap<>();
        Set<String> strips = new LinkedHashSet<>();
        Map<String, List<Sewing.Inner>> inner = new LinkedHashMap<>();
        Set<Sewing.Pointed> pointed = new LinkedHashSet<>();
        for (Draft.PieceNodes piece : draft.pieces()) {
            places.put(piece.name(), evaluation.graph().definition(piece.made()).place());
            if (piece.strip()) {
                strips.add(piece.name());
            }
            inner.put(piece.name(), inner(piece));
            if (evaluation.graph().definition(piece.made()).operation() instanceof Assembly assembly) {
                for (Corner corner : assembly.corners()) {
                    if (corner.form() == Corner.Form.POINTED) {
                        pointed.add(new Sewing.Pointed(piece.name(), corner.first()));
                        pointed.add(new Sewing.Pointed(piece.name(), corner.second()));
                    }
                }
            }
        }
        Sewing.Known known = new Sewing.Known(places, strips, inner, pointed, unknown, leftOut);
        return before == null ? WalkedSeams.of(pieces, walks, known) : before.with(pieces, walks, known);
    }

    private List<Sewing.Inner> inner(Draft.PieceNodes piece) {
        List<Sewing.Inner> lines = new ArrayList<>();
        for (Draft.Named named : piece.named()) {
            Object value = evaluation.value(named.node()).orElse(null);
            if (value instanceof Path path
                    && !path.endless()
                    && !piece.outline().contains(named.name())) {
                lines.add(new Sewing.Inner(named.name(), path));
            }
        }
        return lines;
    }
}
