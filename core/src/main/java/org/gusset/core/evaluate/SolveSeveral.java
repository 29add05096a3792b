package org.gusset.core.evaluate;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;
import org.gusset.core.measure.Dimension;

/**
 * Several unknowns from as many equations, by Newton's method with differences for derivatives and steps halved until they help. It
 * starts from the middle of the ranges, then from the points a quarter of the way in from their corners, in that order, and keeps
 * within the ranges.
 *
 * <p>Inputs: the values from outside, then the two ends of each range.
 *
 * @param part what depends on the unknowns
 * @param names the unknowns' names
 * @param dimensions their dimensions
 * @param most how often the equations may be tried
 */
public record SolveSeveral(SolvedPart part, List<String> names, List<Dimension> dimensions, int most)
        implements Operation<SolveSeveral.Solution> {
    /** The values of the unknowns, in order. */
    public record Solution(List<Double> values) {
        public Solution {
            values = List.copyOf(values);
        }
    }

    /** One value of a solution. Inputs: the solution. */
    public record Picked(int index) implements Operation<Double> {
        @Override
        public Double apply(Values in) {
            return ((Solution) in.get(0)).values().get(index);
        }
    }

    private static final int ROUNDS = 60;
    private static final int HALVINGS = 30;

    public SolveSeveral {
        names = List.copyOf(names);
        dimensions = List.copyOf(dimensions);
    }

    @Override
    public Solution apply(Values in) {
        int n = names.size();
        int first = part.outer().size();
        double[] low = new double[n];
        double[] high = new double[n];
        for (int i = 0; i < n; i++) {
            low[i] = in.number(first + 2 * i);
            high[i] = in.number(first + 2 * i + 1);
            if (!(low[i] < high[i])) {
                throw Fault.of(
                        SolveCode.RANGE_TURNED,
                        "name",
                        names.get(i),
                        "low",
                        Facts.of(low[i], dimensions.get(i)),
                        "high",
                        Facts.of(high[i], dimensions.get(i)));
            }
        }
        Search search = new Search(part.outside(in, most), low, high);
        for (int start = 0; start <= 1 << Math.min(n, 4); start++) {
            double[] x = new double[n];
            for (int i = 0; i < n; i++) {
                double share = start == 0 ? 0.5 : ((start - 1) >> i & 1) == 0 ? 0.25 : 0.75;
                x[i] = low[i] + (high[i] - low[i]) * share;
            }
            if (search.from(x)) {
                List<Double> values = new ArrayList<>();
                for (double value : search.best) {
                    values.add(value);
                }
                if (search.rank(search.best) < n) {
                    throw Fault.of(SolveCode.REDUNDANT, "names", String.join(", ", names));
                }
                return new Solution(values);
            }
        }
        throw search.nothing();
    }

    /** One search; the scratch space of Newton's method is its own. */
    private final class Search {
        private final SolvedPart.Outside outside;
        private final double[] low;
        private final double[] high;
        private double[] best = new double[0];
        private double leastMiss = Double.POSITIVE_INFINITY;

        Search(SolvedPart.Outside outside, double[] low, double[] high) {
            this.outside = outside;
            this.low = low;
            this.high = high;
        }

        private double[] misses(double[] x) {
            List<Double> values = new ArrayList<>();
            for (double value : x) {
                values.add(value);
            }
            Evaluation at = part.at(outside, values);
            double[] misses = new double[x.length];
            for (int i = 0; i < x.length; i++) {
                misses[i] = part.miss(at, i);
            }
            return misses;
        }

        private static double size(double[] misses) {
            double size = 0;
            for (double miss : misses) {
                size = Double.isNaN(miss) ? Double.POSITIVE_INFINITY : Math.max(size, Math.abs(miss));
                if (Double.isInfinite(size)) {
                    return size;
                }
            }
            return size;
        }

        boolean from(double[] start) {
            double[] x = start;
            double[] miss = misses(x);
            keep(x, miss);
            for (int round = 0; round < ROUNDS && size(miss) > SolveOne.TOLERANCE; round++) {
                double[] step = Elimination.solve(jacobian(x, miss), miss);
                if (step.length == 0) {
                    return false;
                }
                double share = 1;
                double[] next = x;
                double[] nextMiss = miss;
                for (int half = 0; half < HALVINGS; half++, share /= 2) {
                    next = moved(x, step, share);
                    nextMiss = misses(next);
                    if (size(nextMiss) < size(miss)) {
                        break;
                    }
                }
                if (!(size(nextMiss) < size(miss))) {
                    break;
                }
                x = next;
                miss = nextMiss;
                keep(x, miss);
            }
            return size(miss) <= 1e-7;
        }

        private void keep(double[] x, double[] miss) {
            if (size(miss) < leastMiss || best.length == 0) {
                best = x.clone();
                leastMiss = size(miss);
            }
        }

        private double[] moved(double[] x, double[] step, double share) {
            double[] next = new double[x.length];
            for (int i = 0; i < x.length; i++) {
                next[i] = Math.max(low[i], Math.min(high[i], x[i] - share * step[i]));
            }
            return next;
        }

        private double[][] jacobian(double[] x, double[] miss) {
            int n = x.length;
            double[][] rows = new double[n][n];
            for (int j = 0; j < n; j++) {
                double h = (high[j] - low[j]) * 1e-6;
                double[] beside = x.clone();
                beside[j] = x[j] + h <= high[j] ? x[j] + h : x[j] - h;
                double[] there = misses(beside);
                for (int i = 0; i < n; i++) {
                    rows[i][j] = (there[i] - miss[i]) / (beside[j] - x[j]);
                }
            }
            return rows;
        }

        int rank(double[] x) {
            return Elimination.rank(jacobian(x, misses(x)));
        }

        Fault nothing() {
            if (Double.isInfinite(leastMiss)) {
                List<Double> middle = new ArrayList<>();
                for (int i = 0; i < low.length; i++) {
                    middle.add((low[i] + high[i]) / 2);
                }
                return Fault.of(
                        SolveCode.NO_VALUE_ANYWHERE,
                        "name",
                        String.join(", ", names),
                        "low",
                        values("{value}", low),
                        "high",
                        values("{value}", high),
                        "why",
                        part.why(outside, middle));
            }
            boolean singular = rank(best) < best.length;
            return Fault.of(
                    singular ? SolveCode.CONTRADICTORY : SolveCode.NOT_FOUND,
                    "names",
                    String.join(", ", names),
                    "miss",
                    Fact.number(leastMiss),
                    "nearest",
                    values("{name} {value}", best));
        }

        private Phrase values(String template, double[] of) {
            List<Phrase> phrases = new ArrayList<>();
            for (int i = 0; i < of.length; i++) {
                phrases.add(Phrase.of(
                        "solve.value", template, "name", names.get(i), "value", Facts.of(of[i], dimensions.get(i))));
            }
            return Phrase.joined("solve.values", ", ", phrases);
        }
    }
}
