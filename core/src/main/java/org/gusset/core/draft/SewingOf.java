package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.geometry.Path;
import org.gusset.core.graph.Effort;
import org.gusset.core.pattern.Assembly;
import org.gusset.core.pattern.Corner;
import org.gusset.core.pattern.Piece;
import org.gusset.core.seam.Sewing;
import org.gusset.core.seam.Walk;
import org.gusset.core.seam.WalkSteps;
import org.gusset.core.seam.WalkedSeams;
import org.gusset.core.seam.Walking;
import org.jspecify.annotations.Nullable;

/** Gathers from an evaluated draft what its sewing is worked out from. */
final class SewingOf {
    private final Draft draft;
    private final Evaluation evaluation;

    /** Walking seams may take as many steps again as working out what they join. */
    private final Effort effort;

    private final Set<Walk> unwalked = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<Diagnostic> diagnostics = new ArrayList<>();

    SewingOf(Draft draft, Evaluation evaluation) {
        this.draft = draft;
        this.evaluation = evaluation;
        this.effort = Effort.within(draft.graph().bounds());
    }

    /** True if a seam was not walked since that would take too many steps. */
    boolean unwalked(Walk walk) {
        return unwalked.contains(walk);
    }

    /** What was too much. */
    List<Diagnostic> diagnostics() {
        return diagnostics;
    }

    /** The steps that it took. */
    long steps() {
        return effort.spent();
    }

    /** Takes steps if there are so many; else tells once what was too much. */
    private boolean takes(long steps, String name, Place place) {
        if (effort.has(steps)) {
            effort.spend(steps);
            return true;
        }
        if (diagnostics.isEmpty()) {
            diagnostics.add(
                    Diagnostic.of(
                                    OutputCode.NOT_WALKED,
                                    place,
                                    "name",
                                    name,
                                    "most",
                                    Fact.number(effort.bounds().steps()))
                            .with(
                                    Hint.of(
                                            "walk.fewer",
                                            "Look for seams of very many copies, edges or matched points, and for pieces with very many lines.")));
        }
        return false;
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
        WalkSteps steps = new WalkSteps(pieces, walks);
        for (Walk walk : List.copyOf(walks)) {
            if (!takes(steps.of(walk), walk.name(), walk.place())) {
                unwalked.add(walk);
                walk.first().forEach(r -> unknown.add(r.piece()));
                walk.second().forEach(r -> unknown.add(r.piece()));
            }
        }
        walks.removeIf(unwalked::contains);
        Map<String, Piece> sound = new HashMap<>();
        pieces.forEach(p -> sound.put(p.name(), p));
        Map<String, Place> places = new LinkedHashMap<>();
        Set<String> strips = new LinkedHashSet<>();
        Map<String, List<Sewing.Inner>> inner = new LinkedHashMap<>();
        Set<Sewing.Pointed> pointed = new LinkedHashSet<>();
        for (Draft.PieceNodes piece : draft.pieces()) {
            places.put(piece.name(), evaluation.graph().definition(piece.made()).place());
            if (piece.strip()) {
                strips.add(piece.name());
            }
            List<Sewing.Inner> lines = inner(piece);
            long beside = sound.containsKey(piece.name()) ? WalkSteps.beside(sound.get(piece.name()), lines) : 0;
            if (takes(beside, piece.name(), places.getOrDefault(piece.name(), Place.nowhere()))) {
                inner.put(piece.name(), lines);
            }
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
