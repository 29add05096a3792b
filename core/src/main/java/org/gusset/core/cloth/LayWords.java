package org.gusset.core.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;

/** What is said of a plan, in the order in which a cutter wants to know it. */
public final class LayWords {
    /** Lengths that differ by less are not told apart, in mm. */
    private static final double SAME = 1;

    private LayWords() {}

    /** How much it takes, and what is bought. */
    public static Phrase needed(LayPlan plan) {
        return Phrase.of(
                "lay.needed",
                "needs {needed}; sold by {step}, so buy {buy}",
                "needed",
                Fact.length(plan.needed()),
                "step",
                Fact.length(plan.sale().step()),
                "buy",
                Fact.length(plan.toBuy()));
    }

    /** All else that there is to say of a plan. */
    public static List<Phrase> told(LayPlan plan) {
        List<Phrase> told = new ArrayList<>();
        told.add(cloth(plan.cloth()));
        if (plan.cloth().shrinksAlong() > 0) {
            told.add(Phrase.of(
                    "lay.wash",
                    "wash it first: of {bought} there are {washed} left, which is what is laid",
                    "bought",
                    Fact.length(plan.needed()),
                    "washed",
                    Fact.length(plan.length())));
        }
        told.add(Phrase.of("lay.folded", "lay it {folding}", "folding", plan.words()));
        if (plan.sections().stream().anyMatch(s -> s.folding() == Folding.TWICE)) {
            told.add(Phrase.of(
                    "lay.twice",
                    "four layers at once save cutting, not cloth: {cuts} cuts give all {copies} pieces",
                    "cuts",
                    plan.cuts(),
                    "copies",
                    plan.laid().stream()
                            .mapToInt(p -> p.gives().all() + (p.inner().isPresent() ? 1 : 0))
                            .sum()));
        }
        told.add(Phrase.of("lay.share", "{share} of the cloth becomes pieces", "share", percent(plan.share())));
        plan.costOfNap()
                .ifPresent(cost -> told.add(
                        cost < SAME
                                ? Phrase.of("lay.nap.nothing", "that all pieces run one way costs nothing here")
                                : Phrase.of(
                                        "lay.nap",
                                        "that all pieces run one way costs {more}",
                                        "more",
                                        Fact.length(cost))));
        for (LayPlan.Compared other : plan.compared()) {
            if (!other.taken()) {
                Phrase length = Phrase.of(
                        "lay.other.length",
                        "{length}",
                        "length",
                        Fact.length(plan.cloth().bought(other.length())));
                told.add(Phrase.of(
                        other.asked() ? "lay.other.asked" : "lay.other",
                        other.asked() ? "as asked, {folding}: {length}" : "laid otherwise, {folding}: {length}",
                        "folding",
                        other.words(),
                        "length",
                        length));
            }
        }
        return told;
    }

    private static Phrase cloth(LayCloth cloth) {
        List<Phrase> parts = new ArrayList<>();
        parts.add(Phrase.of("lay.cloth.width", "{width} wide", "width", Fact.length(cloth.width())));
        if (Math.abs(cloth.usable() - cloth.width()) > 1e-9) {
            parts.add(Phrase.of("lay.cloth.usable", "{usable} of that to use", "usable", Fact.length(cloth.usable())));
        }
        if (cloth.shrinksAlong() > 0 || cloth.shrinksAcross() > 0) {
            parts.add(Phrase.of(
                    "lay.cloth.shrinks",
                    "shrinks {along} along and {across} across",
                    "along",
                    percent(cloth.shrinksAlong()),
                    "across",
                    percent(cloth.shrinksAcross())));
        }
        if (cloth.oneWay()) {
            parts.add(Phrase.of("lay.cloth.one-way", "one way"));
        }
        cloth.repeatAlong()
                .ifPresent(r -> parts.add(
                        Phrase.of("lay.cloth.repeat-along", "pattern every {length} along", "length", Fact.length(r))));
        cloth.repeatAcross()
                .ifPresent(r -> parts.add(Phrase.of(
                        "lay.cloth.repeat-across", "pattern every {length} across", "length", Fact.length(r))));
        return Phrase.joined("lay.cloth", ", ", parts);
    }

    /** The answer to how much there is; what is told of changes is one phrase each. */
    public static List<Phrase> answer(HaveAnswer answer) {
        List<Phrase> told = new ArrayList<>();
        Fact have = Fact.length(answer.have());
        switch (answer.verdict()) {
            case YES ->
                told.add(Phrase.of(
                        "lay.have.yes",
                        "yes: {have} are enough, {left} are left over",
                        "have",
                        have,
                        "left",
                        Fact.length(Math.max(0, answer.have() - answer.plan().needed()))));
            case NO ->
                told.add(Phrase.of(
                        "lay.have.no",
                        "no: {have} are short by {missing}; no plan was found that is shorter than {needed}",
                        "have",
                        have,
                        "missing",
                        Fact.length(answer.missing()),
                        "needed",
                        Fact.length(answer.plan().needed())));
            default ->
                told.add(Phrase.of(
                        "lay.have.impossible",
                        "no: the pieces alone cover more than {have} of this cloth, however they are laid; the plan is longer"
                                + " by {missing}",
                        "have",
                        have,
                        "missing",
                        Fact.length(answer.missing())));
        }
        if (answer.verdict() != HaveAnswer.Verdict.YES) {
            told.add(
                    answer.changes().isEmpty()
                            ? Phrase.of("lay.change.none", "none of the changes that were tried makes it fit")
                            : Phrase.of("lay.change.some", "it would fit with one of these, each planned again:"));
            answer.changes()
                    .forEach(c -> told.add(Phrase.of(
                            "lay.change",
                            "{change}: needs {needed}",
                            "change",
                            c.words(),
                            "needed",
                            Fact.length(c.plan().needed()))));
        }
        return told;
    }

    private static String percent(double share) {
        String text = String.format(Locale.ROOT, "%.1f", share * 100);
        return (text.endsWith(".0") ? text.substring(0, text.length() - 2) : text) + "%";
    }
}
