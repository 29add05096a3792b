package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;

/** Reads off how a cloth is laid and behaves. Amounts that no cloth has are told and left out. */
final class ClothReading {
    /** What shrinks by more than this when it is washed is felt, not cloth: a slip, mostly a missing decimal point. */
    private static final double MOST_SHRUNK = 0.5;

    private final Draft.ClothNodes cloth;
    private final Evaluation evaluation;
    private final List<Diagnostic> told;

    ClothReading(Draft.ClothNodes cloth, Evaluation evaluation, List<Diagnostic> told) {
        this.cloth = cloth;
        this.evaluation = evaluation;
        this.told = told;
    }

    ClothWays ways() {
        Draft.ClothWaysNodes nodes = cloth.ways();
        return new ClothWays(
                nodes.laid(),
                nodes.oneWay(),
                amount(Draft.ClothAmount.Kind.REPEAT, true),
                amount(Draft.ClothAmount.Kind.REPEAT, false),
                amount(Draft.ClothAmount.Kind.SHRINKS, true).orElse(0.0),
                amount(Draft.ClothAmount.Kind.SHRINKS, false).orElse(0.0),
                amount(Draft.ClothAmount.Kind.STRETCH, true).orElse(0.0),
                amount(Draft.ClothAmount.Kind.STRETCH, false).orElse(0.0),
                matched());
    }

    private Optional<Double> amount(Draft.ClothAmount.Kind kind, boolean along) {
        for (Draft.ClothAmount amount : cloth.ways().amounts()) {
            if (amount.kind() == kind && amount.along() == along) {
                return evaluation.value(amount.node()).filter(value -> possible(amount, value));
            }
        }
        return Optional.empty();
    }

    private boolean possible(Draft.ClothAmount amount, double value) {
        boolean possible = switch (amount.kind()) {
            case REPEAT -> value > 0;
            case SHRINKS -> value >= 0 && value < MOST_SHRUNK;
            case STRETCH -> value >= 0;
        };
        if (!possible) {
            Fact shown =
                    amount.kind() == Draft.ClothAmount.Kind.REPEAT ? Fact.length(value) : Fact.words(percent(value));
            told.add(Diagnostic.of(
                    DraftCode.CLOTH_AMOUNT,
                    evaluation.graph().definition(cloth.width()).place(),
                    "name",
                    cloth.name(),
                    "what",
                    switch (amount.kind()) {
                        case REPEAT -> "repeats its pattern every";
                        case SHRINKS -> "shrinks by";
                        case STRETCH -> "gives by";
                    },
                    "amount",
                    shown,
                    "way",
                    amount.along() ? "along" : "across",
                    "wanted",
                    switch (amount.kind()) {
                        case REPEAT -> "more than nothing";
                        case SHRINKS -> "at least 0% and less than 50%";
                        case STRETCH -> "at least 0%";
                    }));
        }
        return possible;
    }

    private static String percent(double share) {
        double rounded = Math.round(share * 1000) / 10.0;
        return (rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded)) + "%";
    }

    private List<ClothWays.Matched> matched() {
        List<ClothWays.Matched> all = new ArrayList<>();
        for (Draft.MatchedNodes nodes : cloth.ways().matched()) {
            Optional<Point> point = evaluation.value(nodes.point());
            Optional<Path> mirror = nodes.mirror().flatMap(evaluation::value);
            boolean whole = nodes.mirror().isPresent() == mirror.isPresent();
            if (point.isPresent() && whole) {
                Point at = mirror.map(
                                m -> Transform.mirror(m.start(), m.tangent(0)).apply(point.get()))
                        .orElse(point.get());
                all.add(new ClothWays.Matched(nodes.piece(), nodes.name(), at));
            }
        }
        return all;
    }
}
