package org.gusset.core.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Related;

/**
 * What is doubtful in a chart of sizes. All are warnings: such a chart can be used, and may be meant.
 *
 * <p>Sizes run from small to large, and a length grows from size to size or stands still; steps may be as uneven as they like. Angles are
 * not looked at. A chart that runs from large to small is told of once and then read from its end.
 */
public final class ChartFaults {
    /** Lengths that are no further apart, in mm, count as the same. */
    private static final double SAME = 1e-6;

    /** A step must be this many times the largest other step to be doubted; published tables stay below 3. */
    private static final double MANY = 4;

    /** Up and down again by this many times the largest step round it: one figure stands out. */
    private static final double SPIKE = 2;

    /** Smaller steps, in mm, are never doubted for their size. */
    private static final double SMALL = 20;

    /** Neighbouring sizes whose measures have a greater ratio are doubted, whatever the other steps are... */
    private static final double RATIO = 1.5;

    /** ... if they are also further apart than this, in mm. */
    private static final double APART = 50;

    private final SizeChart chart;
    private final List<Diagnostic> found = new ArrayList<>();

    private ChartFaults(SizeChart chart) {
        this.chart = chart;
    }

    /** The warnings, those about the whole chart first; empty if nothing is doubtful. */
    public static List<Diagnostic> of(SizeChart chart) {
        ChartFaults given = new ChartFaults(chart);
        Optional<Diagnostic> reversed = given.largeToSmall();
        ChartFaults faults = given;
        if (reversed.isPresent()) {
            List<Measurements> turned = new ArrayList<>(chart.sizes());
            Collections.reverse(turned);
            faults = new ChartFaults(new SizeChart(chart.name(), turned));
            faults.found.add(reversed.get());
        }
        faults.look();
        return List.copyOf(faults.found);
    }

    private void look() {
        List<ChartSeries> lengths =
                ChartSeries.of(chart).stream().filter(ChartSeries::isLength).toList();
        twoKinds();
        gaps();
        Map<String, Set<Integer>> slips = new HashMap<>();
        for (ChartSeries series : lengths) {
            slips.put(series.measure(), slips(series));
        }
        falls(lengths, slips);
        Set<Integer> same = sameSizes();
        for (int i = 0; i + 1 < chart.sizes().size(); i++) {
            if (!same.contains(i)) {
                crowded(lengths, i);
            }
        }
    }

    /** More lengths are smaller in the last size than in the first. */
    private Optional<Diagnostic> largeToSmall() {
        int falling = 0;
        int growing = 0;
        Optional<ChartSeries> first = Optional.empty();
        for (ChartSeries series : ChartSeries.of(chart)) {
            if (series.isLength() && series.count() > 1) {
                double whole =
                        series.get(series.count() - 1).value() - series.get(0).value();
                if (whole < -SAME) {
                    falling++;
                    first = first.isPresent() ? first : Optional.of(series);
                } else if (whole > SAME) {
                    growing++;
                }
            }
        }
        if (falling <= growing || first.isEmpty()) {
            return Optional.empty();
        }
        ChartSeries shown = first.get();
        ChartSeries.At start = shown.get(0);
        ChartSeries.At end = shown.get(shown.count() - 1);
        return Optional.of(Diagnostic.of(
                        ChartCode.LARGE_TO_SMALL,
                        start.entry().place(),
                        "chart",
                        chart.name(),
                        "measure",
                        shown.measure(),
                        "from",
                        start.fact(),
                        "first",
                        start.size(),
                        "to",
                        end.fact(),
                        "last",
                        end.size())
                .with(there(end))
                .with(Hint.of("GRD002.hint", "Write the smallest size first.")));
    }

    private void twoKinds() {
        for (ChartSeries series : ChartSeries.of(chart)) {
            ChartSeries.At first = series.get(0);
            for (Measurements size : chart.sizes()) {
                Optional<Measurements.Entry> other = size.entry(series.measure())
                        .filter(e -> !e.quantity()
                                .dimension()
                                .equals(first.entry().quantity().dimension()));
                if (other.isPresent()) {
                    found.add(Diagnostic.of(
                                    ChartCode.TWO_KINDS,
                                    other.get().place(),
                                    "measure",
                                    series.measure(),
                                    "kind",
                                    first.entry().quantity().dimension().words(),
                                    "first",
                                    first.size(),
                                    "other",
                                    other.get().quantity().dimension().words(),
                                    "second",
                                    size.body())
                            .with(there(first))
                            .with(Hint.of("GRD008.hint", "Look at the units.")));
                    break;
                }
            }
        }
    }

    /** Which sizes lack what others have; measures that the same sizes lack are told together. */
    private void gaps() {
        Map<List<String>, List<ChartSeries>> lacking = new LinkedHashMap<>();
        for (ChartSeries series : ChartSeries.of(chart)) {
            List<String> without = chart.sizes().stream()
                    .filter(s -> s.entry(series.measure()).isEmpty())
                    .map(Measurements::body)
                    .toList();
            if (!without.isEmpty()) {
                lacking.computeIfAbsent(without, k -> new ArrayList<>()).add(series);
            }
        }
        lacking.forEach((sizes, series) -> found.add(Diagnostic.of(
                        ChartCode.GAPS,
                        series.get(0).get(0).entry().place(),
                        "sizes",
                        String.join(", ", sizes),
                        "measures",
                        series.stream().map(ChartSeries::measure).collect(Collectors.joining(", ")))
                .with(Hint.of("GRD007.hint", "Fill in the blank cells, or leave the measure out."))));
    }

    /** Tells of steps that are many times the others; the places in the series of the steps that are explained by them. */
    private Set<Integer> slips(ChartSeries series) {
        Set<Integer> explained = new HashSet<>();
        for (int j = 1; j + 1 < series.count(); j++) {
            double in = series.step(j - 1);
            double out = series.step(j);
            double least = Math.min(Math.abs(in), Math.abs(out));
            if (in * out < 0
                    && least > SMALL
                    && least > SPIKE * Math.max(Math.abs(in + out), others(series, j - 1, j))) {
                explained.add(j - 1);
                explained.add(j);
                slip(series, j - 1, j, j);
            }
        }
        for (int i = 0; i + 1 < series.count(); i++) {
            double step = Math.abs(series.step(i));
            double other = others(series, i, i);
            double low = Math.min(series.get(i).value(), series.get(i + 1).value());
            boolean jump = series.count() > 3 && step > SMALL && other > SAME && step > MANY * other;
            boolean ratio = step > APART && low > 0 && low * RATIO < low + step;
            if (!explained.contains(i) && (jump || ratio)) {
                explained.add(i);
                slip(series, i, i + 1, i == 0 && series.count() > 2 ? 0 : i + 1);
            }
        }
        return explained;
    }

    /** The largest step other than those from {@code from} to {@code to}; 0 if there is none. */
    private static double others(ChartSeries series, int from, int to) {
        double largest = 0;
        for (int i = 0; i + 1 < series.count(); i++) {
            if (i < from || i > to) {
                largest = Math.max(largest, Math.abs(series.step(i)));
            }
        }
        return largest;
    }

    private void slip(ChartSeries series, int i, int j, int doubtful) {
        found.add(step(ChartCode.SLIP, series, series.get(i), series.get(j))
                .at(series.get(doubtful).entry().place())
                .with(there(series.get(doubtful == j ? i : j)))
                .with(Hint.of("GRD006.hint", "Look for a slip of the pen: digits turned round, a unit, a point.")));
    }

    private void falls(List<ChartSeries> lengths, Map<String, Set<Integer>> slips) {
        for (int i = 0; i + 1 < chart.sizes().size(); i++) {
            List<Diagnostic> falling = new ArrayList<>();
            List<String> names = new ArrayList<>();
            int growing = 0;
            for (ChartSeries series : lengths) {
                for (int k = 0; k + 1 < series.count(); k++) {
                    boolean here = series.get(k + 1).index() == i + 1;
                    if (here && !slips.getOrDefault(series.measure(), Set.of()).contains(k)) {
                        if (series.step(k) < -SAME) {
                            names.add(series.measure());
                            falling.add(step(ChartCode.FALLS, series, series.get(k), series.get(k + 1))
                                    .at(series.get(k + 1).entry().place())
                                    .with(there(series.get(k)))
                                    .with(Hint.of(
                                            "GRD001.hint", "Look at both figures; they may have changed places.")));
                        } else if (series.step(k) > SAME) {
                            growing++;
                        }
                    }
                }
            }
            if (falling.size() > 1 && falling.size() > growing) {
                Measurements first = chart.sizes().get(i);
                Measurements second = chart.sizes().get(i + 1);
                Diagnostic shown = falling.get(0);
                Diagnostic told = Diagnostic.of(
                        ChartCode.OUT_OF_ORDER,
                        shown.place(),
                        "first",
                        first.body(),
                        "second",
                        second.body(),
                        "measures",
                        String.join(", ", names));
                for (Diagnostic one : falling) {
                    told = told.with(new Related(one.phrase(), one.place()));
                }
                found.add(told.with(Hint.of("GRD003.hint", "Put the sizes in their order, the smallest first.")));
            } else {
                found.addAll(falling);
            }
        }
    }

    /** Tells of sizes that are alike; the places of those that are like the size behind them. */
    private Set<Integer> sameSizes() {
        Map<Map<String, Quantity>, Integer> seen = new HashMap<>();
        Set<Integer> same = new HashSet<>();
        for (int i = 0; i < chart.sizes().size(); i++) {
            Measurements size = chart.sizes().get(i);
            Map<String, Quantity> values = new HashMap<>();
            size.entries().forEach((name, entry) -> values.put(Measurements.key(name), entry.quantity()));
            Integer before = values.isEmpty() ? null : seen.putIfAbsent(values, i);
            if (before != null) {
                same.add(i - 1);
                Measurements first = chart.sizes().get(before);
                found.add(Diagnostic.of(
                                ChartCode.SAME_SIZE, placeOf(size), "first", first.body(), "second", size.body())
                        .with(new Related(Phrase.of("first", "The first of them stands here."), placeOf(first)))
                        .with(Hint.of(
                                "GRD004.hint", "Leave one of them out, or look for a column copied by mistake.")));
            }
        }
        return same;
    }

    private static Place placeOf(Measurements size) {
        return size.entries().values().iterator().next().place();
    }

    /**
     * Tells if every length that moves goes from this size to the next by less than half of the smaller step beside it: each size
     * covers half a step on either side of it (EN 13402-3), so that one of the two is covered by the other.
     */
    private void crowded(List<ChartSeries> lengths, int i) {
        Optional<Diagnostic> shown = Optional.empty();
        for (ChartSeries series : lengths) {
            for (int k = 0; k + 1 < series.count(); k++) {
                boolean here = series.get(k).index() == i && series.get(k + 1).index() == i + 1;
                double step = here ? series.step(k) : 0;
                if (Math.abs(step) <= SAME) {
                    continue;
                }
                double beside = Double.POSITIVE_INFINITY;
                beside = k > 0 ? Math.min(beside, Math.abs(series.step(k - 1))) : beside;
                beside = k + 2 < series.count() ? Math.min(beside, Math.abs(series.step(k + 1))) : beside;
                if (beside == Double.POSITIVE_INFINITY || step < 0 || step >= beside / 2 - SAME) {
                    return;
                }
                if (shown.isEmpty()) {
                    Diagnostic plain = step(ChartCode.CROWDED, series, series.get(k), series.get(k + 1));
                    Map<String, Fact> facts = new LinkedHashMap<>(plain.phrase().facts());
                    facts.put("step", Fact.length(step));
                    facts.put("beside", Fact.length(beside));
                    shown = Optional.of(new Diagnostic(
                                    plain.code(),
                                    new Phrase(
                                            plain.phrase().key(), plain.phrase().english(), facts),
                                    series.get(k + 1).entry().place(),
                                    List.of(),
                                    List.of())
                            .with(there(series.get(k)))
                            .with(Hint.of("GRD005.hint", "Keep one of the two, unless both are meant.")));
                }
            }
        }
        shown.ifPresent(found::add);
    }

    private static Diagnostic step(ChartCode code, ChartSeries series, ChartSeries.At first, ChartSeries.At second) {
        return Diagnostic.of(
                code,
                Place.nowhere(),
                "measure",
                series.measure(),
                "from",
                first.fact(),
                "first",
                first.size(),
                "to",
                second.fact(),
                "second",
                second.size());
    }

    private static Related there(ChartSeries.At at) {
        return new Related(
                Phrase.of("chart.there", "{size} has {value}.", "size", at.size(), "value", at.fact()),
                at.entry().place());
    }
}
