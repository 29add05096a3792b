package org.gusset.core.stress;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.check.Tested;

/**
 * Drives a check toward failure from a body: one coordinate after the other is moved by a step, forth and back, and what makes the
 * margin smaller is kept; where nothing does, the step is halved (the coordinate pattern search of R. Hooke and T. A. Jeeves,
 * "Direct search solution of numerical and statistical problems", Journal of the ACM 8, 1961, without its pattern moves).
 */
final class Descent {
    private static final double FIRST_STEP = 0.25;
    private static final double LAST_STEP = 1.0 / 1024;

    private final Space space;
    private final Trial trial;
    private final Work work;
    private final Optional<Tightening> narrower;
    private final Ledger ledger;
    private int left;

    /** @param ledger takes every body that is tried on the way */
    Descent(Space space, Trial trial, Work work, Optional<Tightening> narrower, Ledger ledger) {
        this.space = space;
        this.trial = trial;
        this.work = work;
        this.narrower = narrower;
        this.ledger = ledger;
    }

    /** The worst body found with at most so many trials. */
    Ledger.Ranked from(Ledger.Ranked start, int check, int trials) {
        left = trials;
        Ledger.Ranked best = start;
        double step = FIRST_STEP;
        while (left > 0 && step >= LAST_STEP && work.goingOn()) {
            Ledger.Ranked before = best;
            for (int i = 0; i < space.size() && left > 0; i++) {
                best = moved(best, i, step, check);
            }
            if (best.equals(before)) {
                step /= 2;
            }
        }
        return best;
    }

    private Ledger.Ranked moved(Ledger.Ranked best, int axis, double step, int check) {
        if (best.sample().lacks(axis)) {
            return best;
        }
        for (double to : targets(axis, best.sample().unit[axis], step)) {
            if (left <= 0) {
                break;
            }
            double[] unit = best.sample().unit.clone();
            unit[axis] = to;
            left--;
            Optional<Sample> sample =
                    space.place("body of the search", unit, narrower).sample();
            if (sample.isEmpty()) {
                continue;
            }
            Verdict verdict = trial.of(sample.get().body);
            ledger.add(sample.get(), verdict);
            Tested figure = verdict.figures.get(check);
            if (figure != null && figure.margin() < best.margin()) {
                return new Ledger.Ranked(sample.get(), figure);
            }
        }
        return best;
    }

    private List<Double> targets(int axis, double from, double step) {
        Variable variable = space.axes().get(axis).variable();
        List<Double> targets = new ArrayList<>();
        if (!variable.amount()) {
            int words = variable.words().size();
            int now = Math.min(words - 1, (int) (from * words));
            // A word has no half steps: all others are tried, in the first round only.
            for (int w = 0; w < words && step == FIRST_STEP; w++) {
                if (w != now) {
                    targets.add((w + 0.5) / words);
                }
            }
            return targets;
        }
        double up = Math.min(1, from + step);
        double down = Math.max(0, from - step);
        if (up > from) {
            targets.add(up);
        }
        if (down < from) {
            targets.add(down);
        }
        return targets;
    }
}
