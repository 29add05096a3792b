package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.gusset.core.check.Finding;
import org.gusset.core.check.Tested;
import org.gusset.core.construct.Compute;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.graph.Bounds;
import org.gusset.core.graph.Effort;
import org.gusset.core.graph.Graph;
import org.gusset.core.graph.Handle;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;

/**
 * Seeks what would settle a finding: for every value or choice on which its figure rests, the secant method finds how far it has to
 * be changed, each step by evaluating anew only what depends on it. The body's measures stay as they are. A change is offered only if
 * the finding then passes and nothing else is worse than before. Choices and values that are given stand before values that are worked
 * out, and of either those on which the least of the draft rests: a slip sits where it moves one seam, seldom where it moves them all.
 * A value that would have to be more than doubled or turned round comes later.
 */
final class Settling {
    /** Remedies told of one finding. */
    private static final int MOST = 3;

    private static final int ROUNDS = 24;

    /** Remedies are sought within so many times the steps of an evaluation. */
    static final int ROUNDS_OF_STEPS = 5;

    /** The figure is brought this far inside what is wanted, in mm or degrees. */
    private static final double INSIDE = 0.02;

    /** Values are given to this, in mm or degrees, if that settles it. */
    private static final double[] STEPS = {1, 0.5, 0.1, 0.01};

    /** Plain numbers are given to this. */
    private static final double[] NUMBER_STEPS = {0.1, 0.01, 0.001, 1e-4, 1e-5};

    /** A figure within this of its target is settled, in mm or degrees. */
    private static final double SETTLED = 0.1;

    /** Steps of trying a value that are taken for every node, beside those of working out anew what changes. */
    private static final int NODE = 10;

    private final Drawing drawing;
    private final Draft draft;
    private final Evaluation evaluation;

    /** What may be tried; used up for all findings together. */
    private final Effort effort;

    Settling(Drawing drawing, Evaluation evaluation) {
        this.drawing = drawing;
        this.draft = drawing.draft();
        this.evaluation = evaluation;
        Bounds bounds = draft.graph().bounds();
        this.effort = Effort.within(bounds.withSteps(most(bounds)));
    }

    /** The most steps that are taken to seek remedies. */
    private static long most(Bounds bounds) {
        return bounds.steps() > Long.MAX_VALUE / ROUNDS_OF_STEPS ? Long.MAX_VALUE : ROUNDS_OF_STEPS * bounds.steps();
    }

    /** True if the steps were used up before all was tried. */
    boolean exhausted() {
        return effort.exhausted();
    }

    /** The most steps that may be taken. */
    long most() {
        return effort.bounds().steps();
    }

    /** A value that may be changed. */
    private record Lever(String name, Handle<?> node, Dimension dimension, Optional<Draft.Option> option, int rank) {}

    /** @param reach how many other things of the draft rest on the value */
    private record Found(Remedy remedy, int rank, int reach) {
        /** True if the value is more than doubled, or turned round. */
        boolean drastic() {
            return Math.abs(remedy.change()) > Math.abs(remedy.from().value());
        }
    }

    List<Remedy> of(Finding finding) {
        int index = drawing.findings().indexOf(finding);
        Optional<Tested> worst =
                finding.tested().stream().filter(t -> !t.holds()).min(Comparator.comparingDouble(Tested::margin));
        Optional<Handle<?>> node = node(finding);
        if (index < 0 || worst.isEmpty() || node.isEmpty()) {
            return List.of();
        }
        int figure = finding.tested().indexOf(worst.get());
        List<Found> found = new ArrayList<>();
        try {
            effort.spend(draft.graph().size());
            for (Lever lever : levers(node.get())) {
                new Seeking(lever, index, figure, target(worst.get()))
                        .remedy()
                        .ifPresent(r -> found.add(new Found(r, lever.rank(), reach(lever.node()))));
            }
        } catch (Fault fault) {
            // What was found until the steps were used up holds all the same.
            if (!effort.exhausted()) {
                throw fault;
            }
        }
        found.sort(Comparator.comparingInt(Found::rank)
                .thenComparing(Found::drastic)
                .thenComparingInt(Found::reach)
                .thenComparingDouble(f -> Math.abs(f.remedy().change()) * weight(f.remedy())));
        return found.stream().limit(MOST).map(Found::remedy).toList();
    }

    /** Changes of plain numbers and angles count as lengths of this many mm for each unit. */
    private static double weight(Remedy remedy) {
        return remedy.from().dimension().equals(Dimension.LENGTH) ? 1 : 10;
    }

    /** The nearest figure that is wanted, a little inside. */
    private static double target(Tested tested) {
        double room = (tested.most() - tested.least()) / 2;
        double inside = Math.min(INSIDE, room);
        return tested.value() > tested.most() ? tested.most() - inside : tested.least() + inside;
    }

    private Optional<Handle<?>> node(Finding finding) {
        for (Draft.CheckNode check : draft.checks()) {
            if (check.name().equals(finding.name()) && check.place().equals(finding.place())) {
                return Optional.of(check.node());
            }
        }
        return Optional.empty();
    }

    /** Values and choices on which a node rests: choices and plain numbers of the text first, then values that are worked out. */
    private List<Lever> levers(Handle<?> node) {
        Set<Integer> below = ancestors(node);
        Map<Integer, Lever> levers = new TreeMap<>();
        for (Draft.Option option : draft.options()) {
            if (option.kind() == Draft.Option.Kind.AMOUNT
                    && below.contains(option.value().index())) {
                levers.put(
                        option.value().index(),
                        new Lever(option.name(), option.value(), option.dimension(), Optional.of(option), 0));
            }
        }
        for (Draft.Named named : draft.values()) {
            lever("", named, below, levers);
        }
        for (Draft.PieceNodes piece : draft.pieces()) {
            for (Draft.Named named : piece.named()) {
                lever(piece.name() + ".", named, below, levers);
            }
        }
        return new ArrayList<>(levers.values());
    }

    private void lever(String prefix, Draft.Named named, Set<Integer> below, Map<Integer, Lever> levers) {
        Handle<?> node = named.node();
        boolean worked = node.type().equals(Double.class)
                && draft.graph().definition(node).operation() instanceof Compute;
        if (worked && below.contains(node.index())) {
            int rank = draft.graph().definition(node).inputs().isEmpty() ? 0 : 1;
            levers.putIfAbsent(
                    node.index(), new Lever(prefix + named.name(), node, named.dimension(), Optional.empty(), rank));
        }
    }

    private Set<Integer> ancestors(Handle<?> node) {
        Graph graph = draft.graph();
        Set<Integer> below = new HashSet<>();
        below.add(node.index());
        for (int i = node.index(); i >= 0; i--) {
            if (below.contains(i)) {
                graph.definitions().get(i).inputs().forEach(in -> below.add(in.index()));
            }
        }
        return below;
    }

    /** How many nodes rest on one, directly or over others. */
    private int reach(Handle<?> node) {
        effort.spend(draft.graph().size());
        Set<Integer> above = new HashSet<>();
        above.add(node.index());
        for (int i = node.index() + 1; i < draft.graph().definitions().size(); i++) {
            if (draft.graph().definitions().get(i).inputs().stream().anyMatch(in -> above.contains(in.index()))) {
                above.add(i);
            }
        }
        return above.size() - 1;
    }

    /** The search along one value. */
    private final class Seeking {
        private final Lever lever;
        private final int index;
        private final int figure;
        private final double target;

        Seeking(Lever lever, int index, int figure, double target) {
            this.lever = lever;
            this.index = index;
            this.figure = figure;
            this.target = target;
        }

        Optional<Remedy> remedy() {
            Object value = evaluation.value(lever.node()).orElse(null);
            if (!(value instanceof Double now)) {
                return Optional.empty();
            }
            double step = lever.dimension().equals(Dimension.NUMBER) ? Math.max(1e-3, Math.abs(now) * 1e-3) : 0.5;
            double x0 = now;
            double g0 = off(drawing);
            double x1 = now + step;
            double g1 = off(at(x1));
            double effect = (g1 - g0) / step;
            if (Double.isNaN(g1) || Math.abs(effect) < 1e-4) {
                return Optional.empty();
            }
            for (int i = 0; i < ROUNDS && Math.abs(g1) > 1e-6 && g1 != g0; i++) {
                double next = x1 - g1 * (x1 - x0) / (g1 - g0);
                double g = off(at(next));
                // A step too far may leave no drawing at all; then half of it.
                for (int half = 0; half < 6 && Double.isNaN(g); half++) {
                    next = (x1 + next) / 2;
                    g = off(at(next));
                }
                if (Double.isNaN(g)) {
                    return Optional.empty();
                }
                x0 = x1;
                g0 = g1;
                x1 = next;
                g1 = g;
            }
            return Math.abs(g1) > SETTLED ? Optional.empty() : tried(now, x1, effect);
        }

        /** The change, to a round value if that settles it too; nothing if something else is worse then. */
        private Optional<Remedy> tried(double now, double wanted, double effect) {
            for (double step : lever.dimension().equals(Dimension.NUMBER) ? NUMBER_STEPS : STEPS) {
                double round = Math.rint(wanted / step) * step;
                Drawing then = at(round);
                boolean settled = Math.abs(off(then)) <= SETTLED
                        && then.findings().get(index).verdict() == Finding.Verdict.PASSED;
                if (settled && !worse(then)) {
                    return Optional.of(new Remedy(
                            lever.name(),
                            lever.option().isPresent(),
                            new Quantity(now, lever.dimension()),
                            new Quantity(round, lever.dimension()),
                            effect,
                            place()));
                }
            }
            return Optional.empty();
        }

        private Place place() {
            return draft.graph().definition(lever.node()).place();
        }

        private Drawing at(double value) {
            effort.spend((long) NODE * draft.graph().size() + drawing.walked());
            Evaluation tried = evaluation.forcing(Map.of(lever.node(), value));
            effort.spend(tried.renewed());
            return new Drafting(draft).forced(drawing, tried);
        }

        /** How far the figure is from its target; NaN if it cannot be worked out. */
        private double off(Drawing of) {
            Finding finding = of.findings().get(index);
            return figure < finding.tested().size()
                    ? finding.tested().get(figure).value() - target
                    : Double.NaN;
        }

        private boolean worse(Drawing then) {
            if (then.refused().size() > drawing.refused().size() || then.errors() >= drawing.errors()) {
                return true;
            }
            for (int i = 0; i < then.findings().size(); i++) {
                boolean passed = drawing.findings().get(i).verdict() == Finding.Verdict.PASSED;
                if (passed && then.findings().get(i).verdict() != Finding.Verdict.PASSED) {
                    return true;
                }
            }
            return false;
        }
    }
}
