package org.gusset.core.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;

/**
 * Fills in what a body lacks out of a chart of sizes. One of her measures leads: where it falls between two sizes, a measure that she
 * lacks falls between the same two, at the same share (linear interpolation; common practice, no source). The first measure of the
 * chart that she has leads, unless another is told; a single measure can have a lead of its own, as the hip depth may follow the hip, and
 * follows the first if she lacks that.
 * Immutable.
 *
 * @param chart the sizes
 * @param lead the measure that leads; empty for the first of the chart that a body has
 * @param leads measures that follow one of their own, by name
 * @param carryOn true if beyond the first and the last size the nearest step is carried on; else a body beyond them is refused
 */
public record FillingIn(SizeChart chart, Optional<String> lead, Map<String, String> leads, boolean carryOn) {
    public FillingIn {
        Map<String, String> byKey = new LinkedHashMap<>();
        leads.forEach((measure, of) -> byKey.put(Measurements.key(measure), of));
        leads = Collections.unmodifiableMap(byKey);
    }

    public static FillingIn from(SizeChart chart) {
        return new FillingIn(chart, Optional.empty(), Map.of(), false);
    }

    /** Led by this measure. */
    public FillingIn ledBy(String measure) {
        return new FillingIn(chart, Optional.of(measure), leads, carryOn);
    }

    /** One measure follows this one, whatever leads the others. */
    public FillingIn withLead(String measure, String of) {
        Map<String, String> all = new LinkedHashMap<>(leads);
        all.put(Measurements.key(measure), of);
        return new FillingIn(chart, lead, all, carryOn);
    }

    /** Beyond the first and the last size the nearest step is carried on. */
    public FillingIn carriedOn() {
        return new FillingIn(chart, lead, leads, true);
    }

    /** Where a value falls: from the place {@code at} of a series by {@code share} of the step to the next. */
    private record Spot(int at, double share) {}

    /**
     * The body with every measure of the chart. Her own are left as they are.
     *
     * @return GRD013 if she has none of the chart's measures, GRD018 if the lead that was told is not hers or not the chart's, GRD014
     *     if it lies beyond the sizes; warnings where the lead has several places (GRD015) and where a measure stays blank (GRD017)
     */
    public Outcome<FilledIn> fill(Measurements body) {
        List<Diagnostic> diagnostics = new ArrayList<>();
        try {
            return Outcome.of(filled(body, diagnostics), diagnostics);
        } catch (Fault fault) {
            diagnostics.add(fault.diagnostic());
            return Outcome.none(diagnostics);
        }
    }

    private FilledIn filled(Measurements body, List<Diagnostic> diagnostics) {
        String first = lead.orElseGet(() -> firstCommon(body));
        Map<String, String> own = new LinkedHashMap<>();
        leads.forEach((measure, leader) -> own.put(measure, lacks(body, leader) ? first : leader));
        Set<String> leaders = new LinkedHashSet<>(List.of(first));
        leaders.addAll(own.values());
        for (String leader : leaders) {
            findPlace(body, leader, diagnostics);
        }
        Measurements all = body;
        List<FilledIn.Taken> taken = new ArrayList<>();
        for (ChartSeries series : ChartSeries.of(chart)) {
            if (body.entry(series.measure()).isPresent()) {
                continue;
            }
            String leader = own.getOrDefault(Measurements.key(series.measure()), first);
            Quantity value = body.entry(leader).orElseThrow().quantity();
            Both both = both(ChartSeries.of(chart, leader), series);
            List<Spot> spots = spots(both.lead(), value.value());
            if (spots.isEmpty()) {
                diagnostics.add(Diagnostic.of(
                        ChartCode.STAYS_BLANK,
                        series.get(0).entry().place(),
                        "measure",
                        series.measure(),
                        "body",
                        body.body(),
                        "chart",
                        chart.name(),
                        "lead",
                        leader,
                        "value",
                        ChartSeries.fact(value)));
                continue;
            }
            Spot spot = spots.get(0);
            ChartSeries follower = both.follower();
            int next = Math.min(spot.at() + 1, follower.count() - 1);
            double result = SizeChart.line(
                    follower.get(spot.at()).value(), follower.get(next).value(), spot.share());
            FilledIn.Taken how = new FilledIn.Taken(
                    series.measure(),
                    leader,
                    follower.get(spot.at()).size(),
                    follower.get(next).size(),
                    spot.share());
            taken.add(how);
            all = all.with(
                    series.measure(),
                    new Quantity(result, follower.get(0).entry().quantity().dimension()),
                    Place.named(how.words()));
        }
        return new FilledIn(all, taken);
    }

    private String firstCommon(Measurements body) {
        List<String> names =
                ChartSeries.of(chart).stream().map(ChartSeries::measure).toList();
        return names.stream()
                .filter(name -> leads(body, name))
                .findFirst()
                .orElseThrow(() -> new Fault(Diagnostic.of(
                                ChartCode.NOTHING_IN_COMMON,
                                Place.named(body.body()),
                                "body",
                                body.body(),
                                "chart",
                                chart.name(),
                                "measures",
                                String.join(", ", names))
                        .with(Hint.of(
                                "GRD013.hint", "Take one of them, or look whether it goes by another name there."))));
    }

    /** True for a measure of the chart that she has not; it would be filled in itself. */
    private boolean lacks(Measurements body, String measure) {
        return body.entry(measure).isEmpty() && ChartSeries.of(chart, measure).count() > 0;
    }

    private boolean leads(Measurements body, String measure) {
        ChartSeries series = ChartSeries.of(chart, measure);
        return series.count() > 0
                && body.entry(measure)
                        .filter(e -> e.quantity()
                                .dimension()
                                .equals(series.get(0).entry().quantity().dimension()))
                        .isPresent();
    }

    /** Refuses a lead that has no place in the chart, and tells of one that has several. */
    private void findPlace(Measurements body, String leader, List<Diagnostic> diagnostics) {
        if (!leads(body, leader)) {
            boolean hers = body.entry(leader).isPresent();
            throw new Fault(Diagnostic.of(
                            ChartCode.NO_LEAD,
                            Place.named(hers ? chart.name() : body.body()),
                            "measure",
                            leader,
                            "body",
                            body.body(),
                            "who",
                            hers ? chart.name() : body.body())
                    .with(Hint.of("GRD018.hint", "Let a measure lead that the chart and the body both have.")));
        }
        Measurements.Entry entry = body.entry(leader).orElseThrow();
        ChartSeries series = ChartSeries.of(chart, leader);
        List<Spot> spots = spots(series, entry.quantity().value());
        if (spots.isEmpty()) {
            throw new Fault(beyond(body, entry, series));
        }
        if (spots.size() > 1) {
            diagnostics.add(Diagnostic.of(
                    ChartCode.SEVERAL_PLACES,
                    entry.place(),
                    "measure",
                    leader,
                    "body",
                    body.body(),
                    "value",
                    ChartSeries.fact(entry.quantity()),
                    "chart",
                    chart.name(),
                    "places",
                    spots.stream().map(s -> words(series, s)).collect(Collectors.joining(", "))));
        }
    }

    private static String words(ChartSeries series, Spot spot) {
        int next = Math.min(spot.at() + 1, series.count() - 1);
        return new FilledIn.Taken(
                        series.measure(),
                        series.measure(),
                        series.get(spot.at()).size(),
                        series.get(next).size(),
                        spot.share())
                .words();
    }

    private Diagnostic beyond(Measurements body, Measurements.Entry entry, ChartSeries series) {
        ChartSeries.At low = series.get(0);
        ChartSeries.At high = series.get(0);
        for (ChartSeries.At at : series.at()) {
            low = at.value() < low.value() ? at : low;
            high = at.value() > high.value() ? at : high;
        }
        return Diagnostic.of(
                        ChartCode.BEYOND_CHART,
                        entry.place(),
                        "measure",
                        series.measure(),
                        "body",
                        body.body(),
                        "value",
                        ChartSeries.fact(entry.quantity()),
                        "chart",
                        chart.name(),
                        "low",
                        low.fact(),
                        "first",
                        low.size(),
                        "high",
                        high.fact(),
                        "last",
                        high.size())
                .with(Hint.of(
                        "GRD014.hint",
                        "Let another measure lead, or ask for the nearest step to be carried on beyond the chart."));
    }

    /** Two measures in the sizes that have both. */
    private record Both(ChartSeries lead, ChartSeries follower) {}

    private static Both both(ChartSeries lead, ChartSeries follower) {
        Set<Integer> common =
                lead.at().stream().map(ChartSeries.At::index).collect(Collectors.toCollection(LinkedHashSet::new));
        common.retainAll(follower.at().stream().map(ChartSeries.At::index).toList());
        return new Both(only(lead, common), only(follower, common));
    }

    private static ChartSeries only(ChartSeries series, Set<Integer> sizes) {
        return new ChartSeries(
                series.measure(),
                series.at().stream().filter(at -> sizes.contains(at.index())).toList());
    }

    /** Every place that a value has in a series, from its start on; beyond its ends only if steps are carried on. */
    private List<Spot> spots(ChartSeries series, double value) {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < series.count(); i++) {
            double here = series.get(i).value();
            if (here == value) {
                spots.add(new Spot(i, 0));
            } else if (i + 1 < series.count()) {
                double next = series.get(i + 1).value();
                if ((here < value && value < next) || (next < value && value < here)) {
                    spots.add(new Spot(i, (value - here) / (next - here)));
                }
            }
        }
        if (spots.isEmpty() && carryOn) {
            carried(series, value).ifPresent(spots::add);
        }
        return spots;
    }

    /** On the line of the outermost step in which the lead moves, at the end that is nearer to the value. */
    private static Optional<Spot> carried(ChartSeries series, double value) {
        int last = series.count() - 1;
        if (last < 1) {
            return Optional.empty();
        }
        boolean atStart = Math.abs(value - series.get(0).value())
                < Math.abs(value - series.get(last).value());
        for (int k = 0; k < last; k++) {
            int i = atStart ? k : last - 1 - k;
            if (series.step(i) != 0) {
                return Optional.of(new Spot(i, (value - series.get(i).value()) / series.step(i)));
            }
        }
        return Optional.empty();
    }
}
