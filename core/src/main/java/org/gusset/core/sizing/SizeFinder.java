package org.gusset.core.sizing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.draft.NeededMeasure;
import org.gusset.core.draft.Needs;
import org.gusset.core.measure.ChartCode;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.SizeChart;

/**
 * Finds the size of a chart that fits a body. Each size covers half a step on either side of its measures (EN 13402-3: in steps of
 * 4 cm bust 88 covers 86 to 90). The size is chosen by key measures: bust or chest, waist and hip, as far as the draft uses them
 * (common practice: tops go by the bust, skirts and trousers by hip and waist); all measures of a draft that uses none of these; or
 * those that were told. Sizes are ranked
 *
 * <ol>
 *   <li>by how many key measures the size lacks;
 *   <li>then by the worst key girth that is larger than the size covers, in steps, for what is too small cannot be worn;
 *   <li>then by how far girths and widths are off, those of the key measures and of the draft: the sum of the squares of their
 *       differences, in steps;
 *   <li>then by how far lengths are off, in the same way, for lengths are let down or taken up;
 *   <li>then by how much girths would have to be let out, so that midway between two sizes the larger is taken, for taking in is easier;
 *   <li>then by their order in the chart.
 * </ol>
 *
 * <p>Immutable.
 */
public final class SizeFinder {
    /** By the keys of their names. */
    private static final List<List<String>> USUAL_KEYS = List.of(
            List.of("bust", "bust_girth", "chest", "chest_girth"),
            List.of("waist", "waist_girth"),
            List.of("hip", "hips", "hip_girth"));

    private final SizeChart chart;
    private final Map<String, Wanted> wanted;
    private final From from;
    private final Map<String, List<String>> pieces;

    /** A measure that matters: all its names, and its kind if that was told. */
    private record Wanted(List<String> names, Optional<MeasureKind> kind) {}

    /** Who told what matters. */
    private enum From {
        NOBODY,
        DRAFT,
        HOST
    }

    private SizeFinder(SizeChart chart, Map<String, Wanted> wanted, From from, Map<String, List<String>> pieces) {
        this.chart = chart;
        this.wanted = wanted;
        this.from = from;
        this.pieces = pieces;
    }

    public static SizeFinder of(SizeChart chart) {
        return new SizeFinder(chart, Map.of(), From.NOBODY, Map.of());
    }

    /** The measures that a draft needs matter, under any name that the draft knows for them. */
    public SizeFinder forDraft(Needs needs) {
        Map<String, Wanted> keys = new LinkedHashMap<>();
        Map<String, List<String>> byPiece = new LinkedHashMap<>();
        for (NeededMeasure needed : needs.measures()) {
            List<String> names = new ArrayList<>(List.of(needed.name()));
            names.addAll(needed.measure().also());
            MeasureKind kind = MeasureKind.of(
                    needed.name(),
                    needed.measure().dimension(),
                    needed.measure().howTo());
            keys.put(needed.name(), new Wanted(List.copyOf(names), Optional.of(kind)));
            for (String piece : needed.pieces()) {
                byPiece.computeIfAbsent(piece, p -> new ArrayList<>()).add(needed.name());
            }
        }
        return new SizeFinder(chart, keys, From.DRAFT, byPiece);
    }

    /** Only these measures choose the size; the others are told. */
    public SizeFinder withKeys(List<String> measures) {
        Map<String, Wanted> keys = new LinkedHashMap<>();
        for (String measure : measures) {
            keys.put(measure, find(measure).orElse(new Wanted(List.of(measure), Optional.empty())));
        }
        return new SizeFinder(chart, keys, From.HOST, pieces);
    }

    private boolean told() {
        return from != From.NOBODY;
    }

    private Optional<Wanted> find(String measure) {
        return wanted.values().stream()
                .filter(w ->
                        w.names().stream().anyMatch(n -> Measurements.key(n).equals(Measurements.key(measure))))
                .findFirst();
    }

    /**
     * The sizes in the order in which they fit the body.
     *
     * @return GRD013 if the body has no key measure that the chart has too; a warning where a key measure lies outside the chart
     *     (GRD021), a note where key measures are those of different sizes (GRD022)
     */
    public Outcome<SizeChoice> find(Measurements body) {
        List<Common> all = common(body);
        List<Common> used = used(all);
        if (used.isEmpty()) {
            return Outcome.none(List.of(nothingInCommon(body)));
        }
        List<Common> keys = keys(used);
        List<Diagnostic> diagnostics = new ArrayList<>();
        List<SizeFit> ranked = ranked(all, keys, used);
        Map<String, String> own = new LinkedHashMap<>();
        for (Common key : keys) {
            own.put(
                    key.name(),
                    ranked(all, List.of(key), List.of(key)).get(0).size().body());
            outside(body, key).ifPresent(diagnostics::add);
        }
        Map<String, String> byPiece = new LinkedHashMap<>();
        pieces.forEach((piece, measures) -> {
            List<Common> resting = used.stream()
                    .filter(k -> measures.stream().anyMatch(m -> named(k, m)))
                    .toList();
            if (!resting.isEmpty()) {
                byPiece.put(
                        piece, ranked(all, keys(resting), resting).get(0).size().body());
            }
        });
        SizeChoice choice =
                new SizeChoice(body, ranked, keys.stream().map(Common::name).toList(), own, lacking(body), byPiece);
        if (choice.split()) {
            diagnostics.add(split(body, choice));
        }
        return Outcome.of(choice, diagnostics);
    }

    private boolean named(Common common, String measure) {
        return Measurements.key(common.name()).equals(Measurements.key(measure))
                || (find(measure).isPresent() && find(measure).equals(find(common.name())));
    }

    private List<Common> common(Measurements body) {
        Map<String, Common> found = new LinkedHashMap<>();
        for (Measurements size : chart.sizes()) {
            size.entries().forEach((name, entry) -> {
                Dimension dimension = entry.quantity().dimension();
                Optional<Wanted> known = find(name);
                Optional<Measurements.Entry> hers = body.entry(name)
                        .or(() -> known.stream()
                                .flatMap(w -> w.names().stream())
                                .flatMap(n -> body.entry(n).stream())
                                .findFirst())
                        .filter(e -> e.quantity().dimension().equals(dimension));
                hers.ifPresent(mine -> found.putIfAbsent(
                        Measurements.key(name),
                        new Common(
                                name,
                                known.flatMap(Wanted::kind).orElseGet(() -> MeasureKind.of(name, dimension)),
                                mine,
                                Cover.of(chart, name, dimension))));
            });
        }
        return List.copyOf(found.values());
    }

    /** What the draft uses or was told; the usual key measures if neither is given, or the first measure of all if there is none. */
    private List<Common> used(List<Common> all) {
        if (told()) {
            return all.stream().filter(c -> find(c.name()).isPresent()).toList();
        }
        List<Common> usual = usual(all);
        return usual.isEmpty() ? all.stream().limit(1).toList() : usual;
    }

    private List<Common> keys(List<Common> used) {
        List<Common> usual = from == From.DRAFT ? usual(used) : used;
        return usual.isEmpty() ? used : usual;
    }

    private static List<Common> usual(List<Common> all) {
        List<Common> usual = new ArrayList<>();
        for (List<String> names : USUAL_KEYS) {
            all.stream()
                    .filter(c -> names.contains(Measurements.key(c.name())))
                    .findFirst()
                    .ifPresent(usual::add);
        }
        return usual;
    }

    /** What was told, or the usual key measures that the chart has, and the body lacks. */
    private List<String> lacking(Measurements body) {
        Set<String> lacking = new LinkedHashSet<>();
        if (told()) {
            wanted.forEach((name, w) -> {
                boolean charted = w.names().stream()
                        .anyMatch(n ->
                                chart.sizes().stream().anyMatch(s -> s.entry(n).isPresent()));
                if (charted && w.names().stream().noneMatch(n -> body.entry(n).isPresent())) {
                    lacking.add(name);
                }
            });
        } else {
            for (List<String> names : USUAL_KEYS) {
                names.stream()
                        .filter(n ->
                                chart.sizes().stream().anyMatch(s -> s.entry(n).isPresent()))
                        .findFirst()
                        .filter(n -> body.entry(n).isEmpty())
                        .ifPresent(lacking::add);
            }
        }
        return List.copyOf(lacking);
    }

    private Diagnostic nothingInCommon(Measurements body) {
        String measures = told()
                ? String.join(", ", wanted.keySet())
                : chart.sizes().stream()
                        .flatMap(s -> s.entries().keySet().stream())
                        .distinct()
                        .collect(Collectors.joining(", "));
        return Diagnostic.of(
                        ChartCode.NOTHING_IN_COMMON,
                        Place.named(body.body()),
                        "body",
                        body.body(),
                        "chart",
                        chart.name(),
                        "measures",
                        measures)
                .with(Hint.of("GRD013.hint", "Take one of them, or look whether it goes by another name there."));
    }

    private Optional<Diagnostic> outside(Measurements body, Common key) {
        for (int i = 0; i < chart.sizes().size(); i++) {
            Optional<Measurements.Entry> entry = key.cover().entry(i);
            if (entry.isEmpty()) {
                continue;
            }
            double size = entry.get().quantity().value();
            double up = size + key.cover().stepUp(size) / 2;
            double down = size - key.cover().stepDown(size) / 2;
            boolean above = key.cover().isLargest(size) && key.value() > up;
            boolean below = key.cover().isSmallest(size) && key.value() < down;
            if (above || below) {
                return Optional.of(Diagnostic.of(
                        ChartCode.OUTSIDE,
                        key.body().place(),
                        "measure",
                        key.name(),
                        "body",
                        body.body(),
                        "value",
                        fact(key, key.value()),
                        "chart",
                        chart.name(),
                        "size",
                        chart.sizes().get(i).body(),
                        "end",
                        Phrase.of(above ? "chart.largest" : "chart.smallest", above ? "largest" : "smallest"),
                        "figure",
                        fact(key, size),
                        "covers",
                        fact(key, above ? up : down)));
            }
        }
        return Optional.empty();
    }

    private static Fact fact(Common common, double value) {
        return common.body().quantity().dimension().equals(Dimension.ANGLE) ? Fact.angle(value) : Fact.length(value);
    }

    private static Diagnostic split(Measurements body, SizeChoice choice) {
        Map<String, List<String>> bySize = new LinkedHashMap<>();
        choice.own()
                .forEach((measure, size) ->
                        bySize.computeIfAbsent(size, s -> new ArrayList<>()).add(measure));
        List<Phrase> told = new ArrayList<>();
        bySize.forEach((size, measures) -> told.add(
                Phrase.of("chart.own", "{measures} {size}", "measures", String.join(", ", measures), "size", size)));
        return Diagnostic.of(
                ChartCode.SPLIT,
                Place.named(body.body()),
                "body",
                body.body(),
                "told",
                Phrase.joined("chart.owns", "; ", told));
    }

    private List<SizeFit> ranked(List<Common> all, List<Common> keys, List<Common> used) {
        return Ranking.of(chart, keys, used).stream()
                .map(ranked -> new SizeFit(
                        chart.sizes().get(ranked.index()), fits(all, keys, ranked.index()), ranked.shortage()))
                .toList();
    }

    private static List<MeasureFit> fits(List<Common> all, List<Common> keys, int index) {
        List<MeasureFit> fits = new ArrayList<>();
        for (Common common : all) {
            common.cover().entry(index).ifPresent(size -> {
                double value = size.quantity().value();
                boolean below = common.value() <= value + common.cover().stepUp(value) / 2;
                boolean above = common.value() >= value - common.cover().stepDown(value) / 2;
                fits.add(MeasureFit.of(
                        common.name(),
                        common.kind(),
                        keys.contains(common),
                        common.body(),
                        size,
                        below && above,
                        below));
            });
        }
        return fits;
    }
}
