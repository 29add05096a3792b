package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.SizeChart;
import org.gusset.core.sizing.MeasureFit;
import org.gusset.core.sizing.SizeChoice;
import org.gusset.core.sizing.SizeFit;

/** A chart of sizes and the sizes of bodies as text. */
final class SizesText {
    private final PrintWriter out;
    private final Wording wording;

    SizesText(PrintWriter out, LengthStyle style) {
        this.out = out;
        this.wording = style.wording();
    }

    /** Every measure in the first size that has it, and its step to each size behind. */
    void steps(SizeChart chart) {
        Set<String> names = new LinkedHashSet<>();
        Map<String, String> byKey = new LinkedHashMap<>();
        chart.sizes()
                .forEach(size ->
                        size.entries().keySet().forEach(name -> byKey.putIfAbsent(Measurements.key(name), name)));
        names.addAll(byKey.values());
        out.println(chart.name() + ": " + Messages.count(chart.sizes().size(), "size") + ", "
                + Messages.count(names.size(), "measure") + "; each with its step from the size before");
        List<List<String>> rows = new ArrayList<>();
        List<String> heads = new ArrayList<>(List.of("measure"));
        heads.addAll(chart.names());
        rows.add(heads);
        for (String name : names) {
            List<String> row = new ArrayList<>(List.of(name));
            Optional<Quantity> before = Optional.empty();
            for (Measurements size : chart.sizes()) {
                Optional<Quantity> here = size.entry(name).map(Measurements.Entry::quantity);
                row.add(here.isEmpty() ? "-" : step(before, here.get()));
                before = here.isPresent() ? here : before;
            }
            rows.add(row);
        }
        columns(rows);
        out.println();
    }

    private String step(Optional<Quantity> before, Quantity here) {
        if (before.isEmpty() || !before.get().dimension().equals(here.dimension())) {
            return figure(here);
        }
        double step = here.value() - before.get().value();
        String words = figure(new Quantity(Math.abs(step), here.dimension()));
        return step == 0 ? "same" : (step > 0 ? "+" : "-") + words;
    }

    /** Which size fits a body, and what is left to alter in the best and the next. */
    void choice(SizeChoice choice) {
        out.println(choice.body().body() + ": " + choice.best().size().body()
                + choice.second()
                        .map(s -> ", and next to it " + s.size().body())
                        .orElse("")
                + "; by " + String.join(", ", choice.keys()));
        List<SizeFit> shown = new ArrayList<>(List.of(choice.best()));
        choice.second().ifPresent(shown::add);
        List<List<String>> rows = new ArrayList<>();
        List<String> heads = new ArrayList<>(List.of("measure", "body"));
        shown.forEach(fit -> heads.addAll(List.of(fit.size().body(), "left to do")));
        rows.add(heads);
        Set<String> names = new LinkedHashSet<>();
        shown.forEach(fit -> fit.measures().forEach(m -> names.add(m.measure())));
        for (String name : names) {
            rows.add(row(name, shown));
        }
        columns(rows);
        if (!choice.best().canBeWorn()) {
            out.println("  No size can be worn as it is: something is larger than "
                    + choice.best().size().body() + " covers.");
        }
        if (!choice.lacking().isEmpty()) {
            out.println("  Not taken, though the size goes by it: " + String.join(", ", choice.lacking()) + ".");
        }
        if (new LinkedHashSet<>(choice.pieces().values()).size() > 1) {
            Map<String, List<String>> bySize = new LinkedHashMap<>();
            choice.pieces()
                    .forEach((piece, size) ->
                            bySize.computeIfAbsent(size, s -> new ArrayList<>()).add(piece));
            bySize.forEach((size, pieces) ->
                    out.println("  By its own measures alone: " + String.join(", ", pieces) + " in " + size + "."));
        }
        out.println();
    }

    private List<String> row(String name, List<SizeFit> shown) {
        List<String> row = new ArrayList<>();
        for (SizeFit fit : shown) {
            Optional<MeasureFit> measure = fit.measure(name);
            if (row.isEmpty()) {
                MeasureFit any = measure.or(() -> shown.get(shown.size() - 1).measure(name))
                        .orElseThrow();
                row.add(name + (any.key() ? " *" : ""));
                row.add(figure(any.body().quantity()));
            }
            row.add(measure.map(m -> figure(m.size().quantity())).orElse("-"));
            row.add(measure.map(m -> wording.say(m.words())).orElse(""));
        }
        return row;
    }

    private String figure(Quantity quantity) {
        Fact fact = quantity.dimension().equals(Dimension.ANGLE)
                ? Fact.angle(quantity.value())
                : Fact.length(quantity.value());
        return wording.say(Phrase.of("figure", "{value}", "value", fact));
    }

    private void columns(List<List<String>> rows) {
        int[] widths = new int[rows.get(0).size()];
        for (List<String> row : rows) {
            for (int c = 0; c < row.size(); c++) {
                widths[c] = Math.max(
                        widths[c], row.get(c).codePointCount(0, row.get(c).length()));
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < row.size(); c++) {
                String cell = row.get(c);
                line.append("  ").append(cell).append(" ".repeat(widths[c] - cell.codePointCount(0, cell.length())));
            }
            out.println(line.toString().stripTrailing());
        }
    }
}
