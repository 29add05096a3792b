package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.JoinPlan;
import org.gusset.core.pattern.Piece;

/**
 * Answers whether a length of cloth is enough, and if not, what would make it so. Nothing is guessed: each change is planned again with all
 * that it asks for, and told only if it then fits.
 */
public final class Having {
    /** So many changes are told at the most. */
    private static final int MOST = 6;

    /** All changes together may take so many times the steps that one plan may take. */
    private static final int SHARE = 5;

    /** Of hems and strips this share is kept when they are made less. */
    private static final double[] SHARES = {0.75, 0.5};

    /** By these parts of what is missing the draft's own lengths are lessened: pieces may lie one behind the other, or askew. */
    private static final double[] PARTS = {0.25, 0.5, 1, 1.5};

    /** Lengths of a draft are lessened by whole centimetres. */
    private static final double WHOLE = 10;

    private final LayPlanner planner;
    private final Drawing drawing;
    private final LayCloth cloth;
    private final boolean first;
    private final Effort effort;

    /**
     * Asks for one cloth of a drawing.
     *
     * @param cloth with its length at hand
     * @param first true if cuts that name no cloth are of this one
     * @throws IllegalArgumentException if the cloth has no length at hand
     */
    public Having(LayPlanner planner, Drawing drawing, LayCloth cloth, boolean first) {
        if (cloth.atHand().isEmpty()) {
            throw new IllegalArgumentException("nobody says how much of " + cloth.name() + " there is");
        }
        this.planner = planner;
        this.drawing = drawing;
        this.cloth = cloth;
        this.first = first;
        this.effort = new Effort(SHARE * planner.options().most());
    }

    /**
     * The answer for a plan of this cloth.
     *
     * @param napByChoice true if only the host asks for one way, so that it may be given up
     */
    public HaveAnswer answer(LayPlan plan, boolean napByChoice) {
        double have = cloth.atHand().orElseThrow();
        double missing = plan.needed() - have;
        if (missing <= Sale.HAIR) {
            return new HaveAnswer(HaveAnswer.Verdict.YES, plan, have, 0, List.of());
        }
        HaveAnswer.Verdict verdict =
                plan.leastByArea() > have + Sale.HAIR ? HaveAnswer.Verdict.IMPOSSIBLE : HaveAnswer.Verdict.NO;
        List<HaveAnswer.Change> changes = new ArrayList<>();
        if (verdict == HaveAnswer.Verdict.NO) {
            folding(changes);
            if (napByChoice && cloth.oneWay()) {
                add(
                        changes,
                        Phrase.of("lay.change.nap", "pieces turned end for end, if the cloth allows it"),
                        planned(planner, cloth.withOneWay(false), Trial.NONE));
            }
            strips(changes);
        }
        hems(changes);
        choices(changes, missing);
        return new HaveAnswer(
                verdict, plan, have, missing, changes.stream().limit(MOST).toList());
    }

    private Optional<LayPlan> planned(LayPlanner with, LayCloth of, Trial trial) {
        return with.plan(drawing, of, first, trial, 1, effort).value();
    }

    private boolean add(List<HaveAnswer.Change> changes, Phrase words, Optional<LayPlan> plan) {
        boolean fits = plan.isPresent() && plan.get().needed() <= cloth.atHand().orElseThrow() + Sale.HAIR;
        if (fits) {
            changes.add(new HaveAnswer.Change(words, plan.get()));
        }
        return fits;
    }

    private void folding(List<HaveAnswer.Change> changes) {
        if (planner.options().only().isEmpty()) {
            return;
        }
        Optional<LayPlan> plan = planned(planner.with(planner.options().withAnyFolding()), cloth, Trial.NONE);
        plan.ifPresent(
                p -> add(changes, Phrase.of("lay.change.fold", "the cloth {folding}", "folding", p.words()), plan));
    }

    private void strips(List<HaveAnswer.Change> changes) {
        List<Piece> along = strips(JoinPlan.Lie.ALONG);
        if (!along.isEmpty()) {
            for (int lengths = 2; lengths <= 3; lengths++) {
                Phrase words = Phrase.of(
                        "lay.change.join",
                        "{strips} joined of {count} lengths",
                        "strips",
                        names(along),
                        "count",
                        lengths);
                if (add(changes, words, planned(planner, cloth, Trial.NONE.withAlongLengths(lengths)))) {
                    break;
                }
            }
        }
        List<Piece> all = new ArrayList<>(along);
        all.addAll(strips(JoinPlan.Lie.ACROSS));
        all.addAll(strips(JoinPlan.Lie.BIAS));
        if (!all.isEmpty()) {
            for (double share : SHARES) {
                Phrase words = Phrase.of(
                        "lay.change.narrow",
                        "{strips} cut {widths} wide",
                        "strips",
                        names(all),
                        "widths",
                        Phrase.joined(
                                "lay.change.widths",
                                " and ",
                                all.stream()
                                        .map(p -> Phrase.of(
                                                "lay.change.width",
                                                "{new} instead of {old}",
                                                "new",
                                                Fact.length(p.cutting().bounds().height() * share),
                                                "old",
                                                Fact.length(p.cutting().bounds().height())))
                                        .toList()));
                if (add(changes, words, planned(planner, cloth, Trial.NONE.withStripWidth(share)))) {
                    break;
                }
            }
        }
    }

    private List<Piece> strips(JoinPlan.Lie lie) {
        List<String> names = drawing.draft().pieces().stream()
                .filter(Draft.PieceNodes::strip)
                .map(Draft.PieceNodes::name)
                .toList();
        return drawing.pieces().stream()
                .filter(p -> names.contains(p.name()) && CutReading.lie(p) == lie)
                .filter(p -> p.cuts().stream()
                        .anyMatch(
                                c -> c.cloth().map(n -> n.equals(cloth.name())).orElse(first)))
                .toList();
    }

    private static String names(List<Piece> pieces) {
        return pieces.stream().map(p -> p.name().replace('_', ' ')).collect(Collectors.joining(" and "));
    }

    private void hems(List<HaveAnswer.Change> changes) {
        List<Piece> hemmed = drawing.pieces().stream()
                .filter(p -> p.edges().stream().anyMatch(CutReading::isHem))
                .filter(p -> p.cuts().stream()
                        .anyMatch(
                                c -> c.cloth().map(n -> n.equals(cloth.name())).orElse(first)))
                .toList();
        if (hemmed.isEmpty()) {
            return;
        }
        for (double share : SHARES) {
            List<Phrase> each = hemmed.stream()
                    .map(p -> {
                        Edge hem = p.edges().stream()
                                .filter(CutReading::isHem)
                                .findFirst()
                                .orElseThrow();
                        double width = hem.allowance().width();
                        return Phrase.of(
                                "lay.change.hem",
                                "{piece} {new} instead of {old}",
                                "piece",
                                p.name().replace('_', ' '),
                                "new",
                                Fact.length(Math.max(CutReading.LEAST_HEM, width * share)),
                                "old",
                                Fact.length(width));
                    })
                    .toList();
            Phrase words = Phrase.of(
                    "lay.change.hems", "shorter hems: {each}", "each", Phrase.joined("lay.change.each", ", ", each));
            if (add(changes, words, planned(planner, cloth, Trial.NONE.withHems(share)))) {
                return;
            }
        }
    }

    /** The draft's own lengths, one at a time made less as far as the draft allows. */
    private void choices(List<HaveAnswer.Change> changes, double missing) {
        for (Draft.Option option : drawing.draft().options()) {
            boolean length = option.kind() == Draft.Option.Kind.AMOUNT
                    && option.dimension().equals(Dimension.LENGTH)
                    && !option.fit();
            Optional<NamedValue> value = drawing.values().stream()
                    .filter(v -> v.name().equals(option.name()))
                    .findFirst();
            if (!length || !(value.orElse(null) instanceof NamedValue.Amount amount)) {
                continue;
            }
            double now = amount.quantity().value();
            for (double part : PARTS) {
                double less = Math.ceil(part * missing / WHOLE) * WHOLE;
                if (now - less <= 0) {
                    break;
                }
                Drawing changed = drawing.with(drawing.choices().with(option.name(), Quantity.length(now - less)));
                if (!changed.proved()) {
                    break;
                }
                Optional<LayPlan> plan = planner.plan(changed, cloth, first, Trial.NONE, 1, effort)
                        .value();
                Phrase words = Phrase.of(
                        "lay.change.choice",
                        "{name} {new} instead of {old}",
                        "name",
                        option.name().replace('_', ' '),
                        "new",
                        Fact.length(now - less),
                        "old",
                        Fact.length(now));
                if (add(changes, words, plan)) {
                    break;
                }
            }
        }
    }
}
