package org.gusset.core.stress;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;

/** Narrower ranges that keep out all rows of one set, ranked by what they keep out of another. */
final class Candidates {
    /** A change that keeps out more than this is none. */
    static final double MOST_LOST = 0.5;

    /** An end that rests on another measure is harder to say, and has to earn it by losing this much less. */
    private static final double PRICE_OF_ANOTHER = 0.02;
    /** A choice is seldom told by a measure. */
    private static final double PRICE_FOR_A_CHOICE = 0.1;

    private final List<Axis> axes;
    private final List<Ledger.Row> failing;
    private final List<Ledger.Row> kept;

    /** A change and the share of the rows to be kept that it loses. */
    record Ranked(Tightening change, double lost) {}

    /** A figure of a row that a range may bound. */
    private record Figure(int axis, Tightening.Form form, int other) {
        double of(Ledger.Row row) {
            double value = row.values[axis];
            return switch (form) {
                case AMOUNT -> value;
                case TIMES -> value / row.values[other];
                case MORE_THAN -> value - row.values[other];
            };
        }
    }

    Candidates(List<Axis> axes, List<Ledger.Row> failing, List<Ledger.Row> kept) {
        this.axes = axes;
        this.failing = failing;
        this.kept = kept;
    }

    /** The change that loses least, if one loses little enough. */
    Optional<Ranked> best() {
        List<Ranked> all = new ArrayList<>();
        for (int i = 0; i < axes.size(); i++) {
            if (lacked(i)) {
                continue;
            }
            if (!axes.get(i).variable().amount()) {
                without(i).ifPresent(all::add);
                continue;
            }
            all.addAll(bounds(new Figure(i, Tightening.Form.AMOUNT, -1)));
            for (int other = 0; other < i; other++) {
                if (comparable(i, other)) {
                    all.addAll(bounds(new Figure(i, Tightening.Form.TIMES, other)));
                    all.addAll(bounds(new Figure(i, Tightening.Form.MORE_THAN, other)));
                }
            }
        }
        return all.stream().filter(r -> r.lost() <= MOST_LOST).min(Comparator.comparingDouble(this::price));
    }

    private double price(Ranked ranked) {
        if (!(ranked.change() instanceof Tightening.Bound bound) || bound.form() == Tightening.Form.AMOUNT) {
            return ranked.lost();
        }
        Variable variable = axes.get(axisOf(axes, bound.variable())).variable();
        boolean measure = variable.kind() == Variable.Kind.MEASURE;
        return ranked.lost() + (measure ? PRICE_OF_ANOTHER : PRICE_FOR_A_CHOICE);
    }

    /** A range does not bind a body that lacks the measure. */
    private boolean lacked(int axis) {
        return failing.stream().anyMatch(r -> r.lacks(axis) || Double.isNaN(r.values[axis]));
    }

    private boolean comparable(int axis, int other) {
        Variable first = axes.get(axis).variable();
        Variable second = axes.get(other).variable();
        return second.kind() == Variable.Kind.MEASURE
                && second.dimension().equals(Dimension.LENGTH)
                && first.dimension().equals(Dimension.LENGTH)
                && (first.kind() == Variable.Kind.MEASURE || !lacked(other));
    }

    private Optional<Ranked> without(int axis) {
        Variable variable = axes.get(axis).variable();
        double word = failing.get(0).values[axis];
        if (variable.words().size() < 2 || failing.stream().anyMatch(r -> r.values[axis] != word)) {
            return Optional.empty();
        }
        Tightening change =
                new Tightening.Without(variable.name(), variable.words().get((int) word));
        return Optional.of(new Ranked(change, lost(axes, kept, change)));
    }

    private List<Ranked> bounds(Figure figure) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Ledger.Row row : failing) {
            double value = figure.of(row);
            if (Double.isNaN(value) || Double.isInfinite(value)) {
                return List.of();
            }
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        double lowest = least;
        double highest = most;
        double below = Double.NEGATIVE_INFINITY;
        double above = Double.POSITIVE_INFINITY;
        for (Ledger.Row row : kept) {
            double value = figure.of(row);
            if (Double.isNaN(value) || Double.isInfinite(value)) {
                continue;
            }
            lowest = Math.min(lowest, value);
            highest = Math.max(highest, value);
            if (value < least) {
                below = Math.max(below, value);
            }
            if (value > most) {
                above = Math.min(above, value);
            }
        }
        List<Ranked> found = new ArrayList<>();
        if (Double.isFinite(below)) {
            found.add(ranked(figure, Tightening.End.MOST, highest, Roundest.below(least, below)));
        }
        if (Double.isFinite(above)) {
            found.add(ranked(figure, Tightening.End.LEAST, lowest, Roundest.above(most, above)));
        }
        return found;
    }

    private Ranked ranked(Figure figure, Tightening.End end, double from, double to) {
        Variable variable = axes.get(figure.axis()).variable();
        Dimension dimension = figure.form() == Tightening.Form.TIMES ? Dimension.NUMBER : variable.dimension();
        Tightening change = new Tightening.Bound(
                variable.name(),
                end,
                figure.form(),
                figure.other() < 0 ? "" : axes.get(figure.other()).variable().name(),
                new Quantity(from, dimension),
                new Quantity(to, dimension));
        return new Ranked(change, lost(axes, kept, change));
    }

    /** The share of rows that a change keeps out. */
    static double lost(List<Axis> axes, List<Ledger.Row> rows, Tightening change) {
        if (rows.isEmpty()) {
            return 1;
        }
        int lost = 0;
        for (Ledger.Row row : rows) {
            lost += admits(axes, row, change) ? 0 : 1;
        }
        return (double) lost / rows.size();
    }

    /** True if a body may be as it is with the narrower range. */
    static boolean admits(List<Axis> axes, Ledger.Row row, Tightening change) {
        int axis = axisOf(axes, change.variable());
        if (row.lacks(axis) || Double.isNaN(row.values[axis])) {
            return true;
        }
        if (change instanceof Tightening.Without without) {
            List<String> words = axes.get(axis).variable().words();
            return !words.get((int) row.values[axis]).equals(without.word());
        }
        Tightening.Bound bound = (Tightening.Bound) change;
        int other = bound.other().isEmpty() ? -1 : axisOf(axes, bound.other());
        double value = new Figure(axis, bound.form(), other).of(row);
        double hair = 1e-9 * Math.max(1, Math.abs(value));
        double to = bound.to().value();
        return bound.end() == Tightening.End.MOST ? value <= to + hair : value >= to - hair;
    }

    private static int axisOf(List<Axis> axes, String name) {
        for (int i = 0; i < axes.size(); i++) {
            if (axes.get(i).variable().name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException(name);
    }
}
