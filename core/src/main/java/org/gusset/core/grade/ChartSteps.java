package org.gusset.core.grade;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.draft.NeededMeasure;
import org.gusset.core.draft.Needs;

/**
 * By how much the measures that a piece rests on grow from each size to the next: those of the chart, those that the draft's rules
 * estimate, and fitting corrections that stand among a size's measures.
 */
final class ChartSteps {
    private final List<Grade.Sized> sizes;
    private final List<NeededMeasure> needed;
    private final List<String> fits;

    ChartSteps(List<Grade.Sized> sizes) {
        this.sizes = sizes;
        Drawing first = sizes.get(0).drawing();
        this.needed = Needs.of(first.draft(), first.choices()).measures();
        this.fits = first.draft().options().stream()
                .filter(Draft.Option::fit)
                .map(Draft.Option::name)
                .toList();
    }

    /** The step into each size, none into the first, in shares of the largest step of each measure; NaN where a measure is not known. */
    List<double[]> of(String piece) {
        List<String> names = names(piece);
        List<double[]> steps = new ArrayList<>();
        steps.add(new double[names.size()]);
        double[] largest = new double[names.size()];
        for (int i = 1; i < sizes.size(); i++) {
            double[] step = new double[names.size()];
            for (int m = 0; m < step.length; m++) {
                step[m] = value(i, names.get(m)) - value(i - 1, names.get(m));
                largest[m] = Math.max(largest[m], Math.abs(step[m]));
            }
            steps.add(step);
        }
        for (double[] step : steps) {
            for (int m = 0; m < step.length; m++) {
                step[m] = largest[m] == 0 ? 0 : step[m] / largest[m];
            }
        }
        return steps;
    }

    private List<String> names(String piece) {
        Set<String> estimated = new LinkedHashSet<>();
        sizes.forEach(size -> estimated.addAll(size.drawing().estimated()));
        List<String> names = new ArrayList<>(fits);
        for (NeededMeasure measure : needed) {
            boolean asked = measure.standsInFor().isEmpty()
                    || measure.standsInFor().stream().anyMatch(estimated::contains);
            if (asked && measure.pieces().contains(piece)) {
                names.add(measure.name());
            }
        }
        return names;
    }

    private double value(int size, String name) {
        for (NamedValue value : sizes.get(size).drawing().values()) {
            if (value.name().equals(name) && value instanceof NamedValue.Amount amount) {
                return amount.quantity().value();
            }
        }
        return Double.NaN;
    }

    /** Steps and the moves that came with them, one after the other; tells whether a further step explains its move. */
    static final class Explained {
        /** Steps that are this near to a combination of others are one, as a share of the largest step. */
        private static final double DEPENDS = 1e-9;

        private final double tolerance;
        private final List<double[]> rows = new ArrayList<>();

        Explained(double tolerance) {
            this.tolerance = tolerance;
        }

        /**
         * Takes a step: true if it is new, or if its move is what the steps before give for it. A step that is the sum of others, or
         * one and a half of another, has to move a corner by the sum, or by one and a half. Otherwise all that was taken before is
         * forgotten.
         */
        boolean take(double[] step, double right, double down) {
            if (Arrays.stream(step).anyMatch(Double::isNaN) || added(step, right, down)) {
                return true;
            }
            rows.clear();
            added(step, right, down);
            return false;
        }

        /** Elimination: what the known steps leave of this one is nothing, or it becomes a known step. False if the move is not theirs. */
        private boolean added(double[] step, double right, double down) {
            int width = step.length;
            double[] row = Arrays.copyOf(step, width + 2);
            row[width] = right;
            row[width + 1] = down;
            double combined = 1;
            for (double[] known : rows) {
                int pivot = pivot(known, width);
                double share = row[pivot] / known[pivot];
                combined += Math.abs(share);
                for (int i = 0; i < row.length; i++) {
                    row[i] -= share * known[i];
                }
                row[pivot] = 0;
            }
            if (width > 0 && Math.abs(row[pivot(row, width)]) > DEPENDS * combined) {
                rows.add(row);
                return true;
            }
            double allowed = tolerance * combined;
            return Math.abs(row[width]) <= allowed && Math.abs(row[width + 1]) <= allowed;
        }

        /** Where the largest of the first numbers stands. */
        private static int pivot(double[] row, int width) {
            int at = 0;
            for (int i = 1; i < width; i++) {
                if (Math.abs(row[i]) > Math.abs(row[at])) {
                    at = i;
                }
            }
            return at;
        }
    }
}
