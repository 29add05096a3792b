package org.gusset.core.stress;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Seeks for one way to fail the range that, made narrower, keeps all such bodies out. What the bodies seen so far suggest is tried on
 * others; those that fail nevertheless are driven to the edge of failing and join the ones to be kept out.
 */
final class CureSearch {
    private static final int ROUNDS = 8;
    /** What loses more of all bodies than this is no cure. */
    private static final double MOST_LOST = 0.75;

    private static final int CORNERS = 32;
    private static final int SPREAD = 32;
    private static final int SEARCHED = 60;
    private static final int HALVINGS = 12;
    /** So many bodies that fail nevertheless are enough to choose anew. */
    private static final int ENOUGH = 4;
    /** Rows to be kept that candidates are ranked by. */
    private static final int RANKING_ROWS = 4000;

    private final Space space;
    private final Trial trial;
    private final Work work;
    private final long seed;

    CureSearch(Space space, Trial trial, Work work, long seed) {
        this.space = space;
        this.trial = trial;
        this.work = work;
        this.seed = seed;
    }

    /**
     * The cure, if a single range is one.
     *
     * @param trouble the way to fail
     * @param check the check that fails, -1 if it is none
     * @param all every legal body
     * @param spread those that are spread evenly
     * @param known bodies that fail so, or nearly
     */
    Optional<Cure> of(Trouble trouble, int check, List<Ledger.Row> all, List<Ledger.Row> spread, List<Sample> known) {
        List<Ledger.Row> failing = new ArrayList<>();
        for (Ledger.Row row : all) {
            if (row.troubles.contains(trouble)) {
                failing.add(row);
            }
        }
        List<Ledger.Row> kept = new ArrayList<>();
        for (Ledger.Row row : spread) {
            if (!row.troubles.contains(trouble) && kept.size() < RANKING_ROWS) {
                kept.add(row);
            }
        }
        if (failing.isEmpty() || kept.isEmpty()) {
            return Optional.empty();
        }
        int tried = 0;
        for (int round = 0; round < ROUNDS && work.goingOn(); round++) {
            Optional<Candidates.Ranked> best = new Candidates(space.axes(), failing, kept).best();
            if (best.isEmpty()) {
                return Optional.empty();
            }
            Tightening change = best.get().change();
            Ledger bodies = new Ledger(space.size(), trial.checks());
            List<Ledger.Row> more = failures(trouble, check, change, known, bodies, round);
            tried = bodies.tally().legal();
            if (more.isEmpty()) {
                double lost = Candidates.lost(space.axes(), spread, change);
                return lost > MOST_LOST ? Optional.empty() : Optional.of(new Cure(change, lost, tried));
            }
            failing.addAll(more);
        }
        return Optional.empty();
    }

    /** Bodies that the narrower range lets in and that fail all the same. */
    private List<Ledger.Row> failures(
            Trouble trouble, int check, Tightening change, List<Sample> known, Ledger bodies, int round) {
        Points points = new Points(space.axes(), Mixing.bits(seed, round, 7));
        List<double[]> units = new ArrayList<>();
        for (Sample sample : known) {
            units.add(sample.unit);
        }
        for (int i = 0; i < CORNERS; i++) {
            units.add(points.corner(i));
        }
        for (int i = 0; i < SPREAD; i++) {
            units.add(points.spread(i));
        }
        List<Ledger.Row> failures = new ArrayList<>();
        for (double[] unit : units) {
            if (failures.size() >= ENOUGH || !work.goingOn()) {
                return failures;
            }
            Optional<Sample> sample =
                    space.place("body of the trial", unit, Optional.of(change)).sample();
            if (sample.isPresent()) {
                tryOne(sample.get(), trouble, change, bodies, failures);
            }
        }
        if (check >= 0 && !bodies.worst(check).isEmpty()) {
            Ledger way = new Ledger(space.size(), trial.checks());
            Descent descent = new Descent(space, trial, work, Optional.of(change), way);
            Ledger.Ranked worst = descent.from(bodies.worst(check).get(0), check, SEARCHED);
            tryOne(worst.sample(), trouble, change, bodies, failures);
            way.rows().stream().filter(r -> fails(r, trouble, change)).forEach(failures::add);
            bodies.append(way);
        }
        return failures;
    }

    private boolean fails(Ledger.Row row, Trouble trouble, Tightening change) {
        return row.troubles.contains(trouble) && Candidates.admits(space.axes(), row, change);
    }

    private void tryOne(Sample sample, Trouble trouble, Tightening change, Ledger bodies, List<Ledger.Row> failures) {
        Ledger.Row row = row(sample, bodies);
        if (fails(row, trouble, change)) {
            failures.add(row);
            edge(sample, trouble, change, bodies).ifPresent(failures::add);
        }
    }

    private Ledger.Row row(Sample sample, Ledger bodies) {
        bodies.add(sample, trial.of(sample.body));
        return bodies.rows().get(bodies.rows().size() - 1);
    }

    /** The body that only just fails, on the way from one that fails to the other end of the narrower range. */
    private Optional<Ledger.Row> edge(Sample sample, Trouble trouble, Tightening change, Ledger bodies) {
        int axis = space.axisOf(change.variable());
        if (!(change instanceof Tightening.Bound bound) || sample.lacks(axis)) {
            return Optional.empty();
        }
        double fails = sample.unit[axis];
        double safe = bound.end() == Tightening.End.MOST ? 0 : 1;
        Optional<Ledger.Row> edge = Optional.empty();
        for (int i = 0; i < HALVINGS && work.goingOn(); i++) {
            double[] unit = sample.unit.clone();
            unit[axis] = i == 0 ? safe : (fails + safe) / 2;
            Optional<Sample> moved =
                    space.place("body of the trial", unit, Optional.of(change)).sample();
            Optional<Ledger.Row> row = moved.map(m -> row(m, bodies));
            boolean failing = row.isPresent() && fails(row.get(), trouble, change);
            if (failing) {
                edge = row;
                fails = unit[axis];
                if (i == 0) {
                    return edge;
                }
            } else {
                safe = unit[axis];
            }
        }
        return edge;
    }
}
