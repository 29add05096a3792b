package org.gusset.core.evaluate;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.rootfinder.BrentSolver;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;
import org.gusset.core.measure.Dimension;

/**
 * One unknown from one equation. The range is looked over in 64 equal steps, and each change of sign is closed in on by Brent's
 * method (R. P. Brent, Algorithms for Minimization without Derivatives, 1973). The search starts from the range alone, so that the
 * same inputs give the same bits.
 *
 * <p>Inputs: the values from outside, then the ends of the range, then the value that picks among several if {@code picks}.
 *
 * @param part what depends on the unknown
 * @param name the unknown's name
 * @param dimension its dimension
 * @param missDimension the dimension of the equation's sides
 * @param left the equation's left side as written
 * @param picks true if one is picked among several
 * @param most how often the equation may be tried
 */
public record SolveOne(
        SolvedPart part,
        String name,
        Dimension dimension,
        Dimension missDimension,
        String left,
        boolean picks,
        int most)
        implements Operation<Double> {
    /** How often equations are tried at most, unless somebody says otherwise. */
    public static final int USUAL_TRIALS = 200_000;

    /** The steps in which the range is looked over. */
    public static final int STEPS = 64;

    /** Equations hold within this, in mm or degrees. */
    public static final double TOLERANCE = 1e-9;

    @Override
    public Double apply(Values in) {
        int first = part.outer().size();
        double low = in.number(first);
        double high = in.number(first + 1);
        if (!(low < high)) {
            throw Fault.of(SolveCode.RANGE_TURNED, "name", name, "low", fact(low), "high", fact(high));
        }
        SolvedPart.Outside outside = part.outside(in, most);
        double[] at = new double[STEPS + 1];
        double[] miss = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            at[i] = i == STEPS ? high : low + (high - low) * i / STEPS;
            miss[i] = miss(outside, at[i]);
        }
        List<Double> roots = roots(outside, at, miss);
        if (roots.isEmpty()) {
            throw none(outside, at, miss);
        }
        if (roots.size() == 1) {
            return roots.get(0);
        }
        if (!picks) {
            Phrase all = Phrase.joined(
                    "roots",
                    ", ",
                    roots.stream()
                            .map(r -> Phrase.of("root", "{r}", "r", fact(r)))
                            .toList());
            throw new Fault(Diagnostic.of(SolveCode.MANY_ROOTS, Place.nowhere(), "name", name, "roots", all)
                    .with(Hint.of(
                            "solve.nearest", "Say which: end the line with `nearest {r}`.", "r", fact(roots.get(0)))));
        }
        double wanted = in.number(first + 2);
        double best = roots.get(0);
        for (double root : roots) {
            if (Math.abs(root - wanted) < Math.abs(best - wanted)) {
                best = root;
            }
        }
        return best;
    }

    private double miss(SolvedPart.Outside outside, double value) {
        return part.miss(part.at(outside, List.of(value)), 0);
    }

    private List<Double> roots(SolvedPart.Outside outside, double[] at, double[] miss) {
        List<Double> roots = new ArrayList<>();
        BrentSolver brent = new BrentSolver(1e-15, 1e-13, TOLERANCE / 1000);
        for (int i = 0; i <= STEPS; i++) {
            if (Math.abs(miss[i]) <= TOLERANCE) {
                // An equation that holds at a step and at the one before has no single root there to name twice.
                if (roots.isEmpty() || at[i] - roots.get(roots.size() - 1) > 1e-9) {
                    roots.add(at[i]);
                }
            } else if (i > 0 && miss[i - 1] * miss[i] < 0 && Math.abs(miss[i - 1]) > TOLERANCE) {
                double root = brent.findRoot(x -> miss(outside, x), at[i - 1], at[i]);
                // A jump changes the sign without passing through nought.
                if (Math.abs(miss(outside, root)) <= 1e-6) {
                    roots.add(root);
                }
            }
        }
        return roots;
    }

    private Fault none(SolvedPart.Outside outside, double[] at, double[] miss) {
        int best = -1;
        for (int i = 0; i <= STEPS; i++) {
            if (!Double.isNaN(miss[i]) && (best < 0 || Math.abs(miss[i]) < Math.abs(miss[best]))) {
                best = i;
            }
        }
        if (best < 0) {
            Phrase why = part.why(outside, List.of(at[STEPS / 2]));
            return Fault.of(
                    SolveCode.NO_VALUE_ANYWHERE, "name", name, "low", fact(at[0]), "high", fact(at[STEPS]), "why", why);
        }
        return Fault.of(
                SolveCode.NO_ROOT,
                "name",
                name,
                "low",
                fact(at[0]),
                "high",
                fact(at[STEPS]),
                "left",
                "`" + left + "`",
                "lowMiss",
                off(miss[0]),
                "highMiss",
                off(miss[STEPS]),
                "nearest",
                fact(at[best]),
                "miss",
                off(miss[best]));
    }

    private Phrase off(double miss) {
        if (Double.isNaN(miss)) {
            return Phrase.of("miss.none", "not to be drawn");
        }
        Fact amount = Facts.of(Math.abs(miss), missDimension);
        return miss > 0
                ? Phrase.of("miss.over", "{amount} over", "amount", amount)
                : Phrase.of("miss.short", "{amount} short", "amount", amount);
    }

    private Fact fact(double value) {
        return Facts.of(value, dimension);
    }
}
