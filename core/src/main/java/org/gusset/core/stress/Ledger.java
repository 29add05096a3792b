package org.gusset.core.stress;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.check.Tested;
import org.gusset.core.diagnostic.Place;

/**
 * What came of a run of bodies, in their order. Ledgers of stretches of a run, put together in order, are the ledger of the run,
 * whatever thread wrote them.
 */
final class Ledger {
    /** So many of the worst bodies are kept for each check. */
    private static final int WORST_KEPT = 3;

    /** So many examples are kept of each way to fail. */
    private static final int EXAMPLES_KEPT = 6;

    /** The values of one legal body, and how it fails. */
    static final class Row {
        final double[] values;
        /** One bit for each axis: the body lacks the measure, the value is a rule's. */
        final long lacks;

        final Set<Trouble> troubles;

        Row(double[] values, long lacks, Set<Trouble> troubles) {
            this.values = values;
            this.lacks = lacks;
            this.troubles = troubles;
        }

        boolean lacks(int axis) {
            return axis < Long.SIZE && (lacks >>> axis & 1) == 1;
        }
    }

    /** A body with the figure of one check. */
    record Ranked(Sample sample, Tested figure) {
        double margin() {
            return figure.margin();
        }
    }

    /** All bodies that fail in one way. */
    record Seen(Verdict.Told told, int check, Body first, Body worst, double margin, int bodies) {
        Seen plus(Seen later) {
            boolean worse = later.margin < margin;
            return new Seen(
                    worse ? later.told : told,
                    check,
                    first,
                    worse ? later.worst : worst,
                    Math.min(margin, later.margin),
                    bodies + later.bodies);
        }
    }

    private Tally tally = Tally.none();
    private final List<Row> rows = new ArrayList<>();
    private final int[] stuck;
    private final List<List<Ranked>> worst = new ArrayList<>();
    private final Map<Trouble, List<Sample>> examples = new LinkedHashMap<>();
    private final Map<Trouble, Seen> seen = new LinkedHashMap<>();

    Ledger(int axes, int checks) {
        stuck = new int[axes];
        for (int i = 0; i < checks; i++) {
            worst.add(new ArrayList<>());
        }
    }

    /** A point at which a range has no room. */
    void addStuck(int axis) {
        tally = tally.plusOutside();
        stuck[axis]++;
    }

    void add(Sample sample, Verdict verdict) {
        tally = tally.plus(verdict);
        long lacks = 0;
        for (int i = 0; i < Math.min(stuck.length, Long.SIZE); i++) {
            lacks |= sample.lacks(i) ? 1L << i : 0;
        }
        rows.add(new Row(verdict.values, lacks, Set.copyOf(verdict.troubles.keySet())));
        for (int i = 0; i < worst.size(); i++) {
            Tested figure = verdict.figures.get(i);
            if (figure != null && !Double.isNaN(figure.margin())) {
                keep(i, new Ranked(sample, figure));
            }
        }
        verdict.troubles.keySet().forEach(t -> example(t, sample));
        add(sample.body, verdict);
    }

    private void example(Trouble trouble, Sample sample) {
        List<Sample> kept = examples.computeIfAbsent(trouble, t -> new ArrayList<>());
        if (kept.size() < EXAMPLES_KEPT) {
            kept.add(sample);
        }
    }

    /** Counts the ways in which a body fails. */
    void add(Body body, Verdict verdict) {
        verdict.troubles.forEach((trouble, told) -> {
            double margin = told.check() < 0 ? Double.POSITIVE_INFINITY : verdict.margin(told.check());
            seen.merge(trouble, new Seen(told, told.check(), body, body, margin, 1), Seen::plus);
        });
    }

    private void keep(int check, Ranked ranked) {
        List<Ranked> kept = worst.get(check);
        kept.add(ranked);
        kept.sort(Comparator.comparingDouble(Ranked::margin));
        if (kept.size() > WORST_KEPT) {
            kept.remove(WORST_KEPT);
        }
    }

    /** Puts the ledger of what comes next at the end of this one. */
    void append(Ledger next) {
        tally = tally.plus(next.tally);
        rows.addAll(next.rows);
        for (int i = 0; i < stuck.length; i++) {
            stuck[i] += next.stuck[i];
        }
        for (int i = 0; i < worst.size(); i++) {
            for (Ranked ranked : next.worst.get(i)) {
                keep(i, ranked);
            }
        }
        next.examples.forEach((trouble, samples) -> samples.forEach(s -> example(trouble, s)));
        next.seen.forEach((trouble, there) -> seen.merge(trouble, there, Seen::plus));
    }

    Tally tally() {
        return tally;
    }

    List<Row> rows() {
        return rows;
    }

    int stuck(int axis) {
        return stuck[axis];
    }

    /** The bodies with the worst figures of a check, the worst first. */
    List<Ranked> worst(int check) {
        return worst.get(check);
    }

    /** Some of the bodies that fail so. */
    List<Sample> examples(Trouble trouble) {
        return examples.getOrDefault(trouble, List.of());
    }

    Map<Trouble, Seen> seen() {
        return seen;
    }

    int bodiesWith(Trouble trouble) {
        Seen there = seen.get(trouble);
        return there == null ? 0 : there.bodies();
    }

    /** The ways to fail, the commonest first; {@code spread} counts those that are spread evenly. */
    List<Failure> failures(Ledger spread) {
        List<Failure> failures = new ArrayList<>();
        order(spread).forEach(trouble -> {
            Seen there = seen.get(trouble);
            if (there != null) {
                failures.add(new Failure(
                        trouble.kind(),
                        trouble.code(),
                        there.told().subject(),
                        there.told().message().map(m -> m.place()).orElse(Place.nowhere()),
                        there.bodies(),
                        spread.bodiesWith(trouble),
                        there.first(),
                        there.worst(),
                        there.told().message(),
                        there.told().words(),
                        Optional.empty()));
            }
        });
        return failures;
    }

    /** The ways to fail in the order of {@link #failures}. */
    List<Trouble> order(Ledger spread) {
        List<Trouble> order = new ArrayList<>(seen.keySet());
        order.sort(Comparator.<Trouble>comparingInt(t -> t.kind() == Failure.Kind.MESSAGE ? 1 : 0)
                .thenComparingInt(t -> -spread.bodiesWith(t))
                .thenComparingInt(t -> -bodiesWith(t)));
        return order;
    }
}
